package weekwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.testkit.PlainProject;

class ProjectSourceTest {
    @TempDir
    Path temp;

    @Test
    void rule_109_without_a_day_it_is_today_in_the_zone_of_the_project() throws Exception {
        PlainProject files = PlainProject.in(temp.resolve("files"));
        // half past eleven at night in Greenwich is half past midnight in Berlin, the zone of the project
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T23:30:00Z"), ZoneOffset.UTC);
        try (ProjectSource source = ProjectSource.open(files.folder(), clock)) {
            assertThat(source.day(null)).isEqualTo(LocalDate.of(2026, 11, 26));
            assertThat(source.day(LocalDate.of(2026, 11, 20))).isEqualTo(LocalDate.of(2026, 11, 20));
        }
    }
}
