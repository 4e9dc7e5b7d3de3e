package weekwright.files.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.ImportProject;
import weekwright.testkit.PlainProject;
import weekwright.testkit.SettableClock;

/** The clock begins on Wednesday 25 November 2026, 09:00 UTC. */
class BackupsTest {
    @TempDir
    Path temp;

    private final SettableClock clock = new SettableClock(PlainProject.CLOCK);
    private Folder project;
    private Db db;
    private Backups backups;

    @BeforeEach
    void open() throws Exception {
        project = new Folder(temp.resolve("project"));
        Path files = PlainProject.in(temp.resolve("files")).folder();
        ImportProject.into(files, project, false, PlainProject.TODAY, clock);
        db = project.open(clock);
        backups = new Backups(project, db, clock);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private List<String> days() {
        return backups.list().stream().map(one -> one.name().substring(0, 10)).toList();
    }

    @Test
    void one_is_made_each_day_and_of_earlier_ones_the_newest_of_days_weeks_and_months_stay() throws Exception {
        Files.createDirectories(backups.place().resolve("before-import-2026-01-01-080000"));
        assertThat(backups.daily()).isPresent();
        clock.step(Duration.ofHours(1));
        assertThat(backups.daily()).isEmpty();
        for (int day = 0; day < 40; day++) {
            clock.step(Duration.ofDays(1));
            assertThat(backups.daily()).isPresent();
        }
        // seven days, Sundays of three weeks before this one, the last of November; 40 days after 25 November is 4
        // January
        assertThat(days())
                .containsExactly(
                        "2027-01-04",
                        "2027-01-03",
                        "2027-01-02",
                        "2027-01-01",
                        "2026-12-31",
                        "2026-12-30",
                        "2026-12-29",
                        "2026-12-27",
                        "2026-12-20",
                        "2026-11-30");
        assertThat(backups.place().resolve("before-import-2026-01-01-080000")).isDirectory();
        RestoreBackup.into(backups.place().resolve(backups.list().get(9).name()), new Folder(temp.resolve("old")));
    }

    @Test
    void of_two_years_twelve_months_stay_and_pauses_cost_nothing() {
        List<Instant> all = new ArrayList<>();
        Instant now = Instant.parse("2026-11-25T09:00:00Z");
        for (int day = 0; day < 730; day++) {
            all.add(now.minus(Duration.ofDays(day)));
        }
        // 7 days, of which 25 and 22 November are the newest of two weeks too; 2 weeks more; 11 months more
        assertThat(Backups.kept(all, now)).hasSize(20).contains(Instant.parse("2025-12-31T09:00:00Z"));
        assertThat(Backups.kept(all, now)).doesNotContain(Instant.parse("2025-11-30T09:00:00Z"));
        assertThat(Backups.kept(all, now.plus(Duration.ofDays(300)))).hasSize(20);
        List<Instant> sameDay = List.of(now, now.minusSeconds(60), now.minusSeconds(120));
        assertThat(Backups.kept(sameDay, now)).containsExactlyInAnyOrderElementsOf(sameDay);
        assertThat(Backups.kept(sameDay, now.plus(Duration.ofDays(2)))).containsExactly(now);
    }

    @Test
    void the_crew_is_warned_when_two_days_have_passed_without_one() throws Exception {
        assertThat(backups.warning()).isEmpty();
        clock.step(Duration.ofDays(2));
        assertThat(backups.warning()).isEmpty();
        clock.step(Duration.ofSeconds(1));
        assertThat(backups.warning()).isEqualTo("There is no backup of this project yet.");
        backups.make();
        assertThat(backups.warning()).isEmpty();
        clock.step(Duration.ofDays(3));
        assertThat(backups.warning()).isEqualTo("The last good backup is 3 days old.");
    }
}
