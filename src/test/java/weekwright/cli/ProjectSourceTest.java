package weekwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Problem;
import weekwright.db.Folder;
import weekwright.engine.simulate.Progress;
import weekwright.files.ImportProject;
import weekwright.files.SampleFiles;
import weekwright.forecast.Basis;
import weekwright.forecast.Forecast;
import weekwright.forecast.ForecastRun;
import weekwright.testkit.PlainProject;

class ProjectSourceTest {
    @TempDir
    Path temp;

    @Test
    void rule_109_without_a_day_it_is_today_in_the_zone_of_the_project() throws Exception {
        PlainProject files = PlainProject.in(temp.resolve("files"));
        // half past eleven at night in Greenwich is half past midnight in Berlin, the zone of the project
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T23:30:00Z"), ZoneOffset.UTC);
        try (ProjectSource source = ProjectSource.open(files.folder(), clock, null)) {
            assertThat(source.day(null)).isEqualTo(LocalDate.of(2026, 11, 26));
            assertThat(source.day(LocalDate.of(2026, 11, 20))).isEqualTo(LocalDate.of(2026, 11, 20));
        }
    }

    @Test
    void plain_files_are_judged_against_the_day_that_is_asked_for() throws Exception {
        PlainProject files = PlainProject.in(temp.resolve("files"));
        Clock clock = Clock.fixed(Instant.parse("2027-06-01T08:00:00Z"), ZoneOffset.UTC);
        try (ProjectSource today = ProjectSource.open(files.folder(), clock, null);
                ProjectSource then = ProjectSource.open(files.folder(), clock, PlainProject.TODAY)) {
            assertThat(today.remarks())
                    .extracting(Problem::text)
                    .anyMatch(text -> text.contains("is past and the episode is not published"));
            assertThat(then.remarks()).isEmpty();
        }
    }

    @Test
    void plain_files_give_the_same_forecast_and_week_as_the_store_that_they_are_imported_into() throws Exception {
        LocalDate day = LocalDate.of(2026, 11, 25);
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
        Folder folder = new Folder(temp.resolve("project"));
        try (SampleFiles files = SampleFiles.unpack()) {
            ImportProject.into(files.folder(), folder, false, day, clock);
            try (ProjectSource plain = ProjectSource.open(files.folder(), clock, null);
                    ProjectSource stored = ProjectSource.open(folder.path(), clock, null)) {
                Basis basis = plain.basis(day);
                assertThat(basis.inputs()).isEqualTo(stored.basis(day).inputs());
                assertThat(basis.names()).isEqualTo(stored.basis(day).names());
                assertThat(basis.currency()).isEqualTo(stored.basis(day).currency());
                ForecastRun.Planned planned = new ForecastRun.Planned(basis, 1);
                Forecast forecast = planned.run(20, 1, Progress.NONE).forecast();
                assertThat(plain.week(basis, planned, forecast)).isEqualTo(stored.week(basis, planned, forecast));
            }
        }
    }
}
