package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept: the first of each day for fourteen days, then the first of each ISO week, any by hand. */
class SavedForecastStoreTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path folder;

    private static SavedForecast on(LocalDate day, String name) {
        return new SavedForecast(
                day,
                Instant.parse("2026-11-25T08:00:00Z"),
                1,
                60,
                "1",
                3,
                !name.isEmpty(),
                name,
                "[]",
                "{}",
                new byte[0]);
    }

    private static List<String> after(SmallProject project) {
        return project
                .db()
                .write("test", write -> {
                    SavedForecastStore.thin(write, TODAY);
                    return SavedForecastStore.lines(write);
                })
                .stream()
                .map(line -> (line.day() + " " + line.name()).strip())
                .toList();
    }

    @Test
    void every_day_of_a_fortnight_stays_then_the_first_of_each_week_and_all_that_have_a_name() throws Exception {
        try (SmallProject project = new SmallProject(folder)) {
            project.db().write("test", write -> {
                for (LocalDate day = LocalDate.of(2026, 10, 30); !day.isAfter(TODAY); day = day.plusDays(1)) {
                    SavedForecastStore.insert(write, on(day, ""));
                }
                SavedForecastStore.insert(write, on(LocalDate.of(2026, 11, 4), "before the storm"));
                return null;
            });
            // Friday 30 October is the first of its week, then Mondays 2 and 9 November; 12 November is thirteen days
            // ago
            assertThat(after(project))
                    .containsExactly(
                            "2026-11-25",
                            "2026-11-24",
                            "2026-11-23",
                            "2026-11-22",
                            "2026-11-21",
                            "2026-11-20",
                            "2026-11-19",
                            "2026-11-18",
                            "2026-11-17",
                            "2026-11-16",
                            "2026-11-15",
                            "2026-11-14",
                            "2026-11-13",
                            "2026-11-12",
                            "2026-11-09",
                            "2026-11-04 before the storm",
                            "2026-11-02",
                            "2026-10-30");
            // a second time nothing more goes
            assertThat(after(project)).hasSize(18);
        }
    }

    @Test
    void an_iso_week_goes_on_over_new_year_and_begins_on_monday() throws Exception {
        try (SmallProject project = new SmallProject(folder)) {
            project.db().write("test", write -> {
                // Sunday, Monday, Thursday and Friday about new year 2026: 2026-W01 begins on Monday 29 December (ISO
                // 8601)
                for (String day : List.of("2025-12-28", "2025-12-29", "2026-01-01", "2026-01-02", "2026-01-05")) {
                    SavedForecastStore.insert(write, on(LocalDate.parse(day), ""));
                }
                return null;
            });
            assertThat(after(project)).containsExactly("2026-01-05", "2025-12-29", "2025-12-28");
        }
    }

    @Test
    void one_kept_by_hand_is_not_the_first_of_its_day_and_only_such_a_one_is_let_go() throws Exception {
        try (SmallProject project = new SmallProject(folder)) {
            project.db().write("test", write -> {
                SavedForecastStore.insert(write, on(TODAY, "as planned"));
                assertThat(SavedForecastStore.has(write, TODAY)).isFalse();
                SavedForecastStore.insert(write, on(TODAY, ""));
                assertThat(SavedForecastStore.has(write, TODAY)).isTrue();
                long self = SavedForecastStore.lines(write).get(0).id();
                long hand = SavedForecastStore.lines(write).get(1).id();
                assertThat(SavedForecastStore.letGo(write, self)).isFalse();
                assertThat(SavedForecastStore.letGo(write, hand)).isTrue();
                return null;
            });
            assertThat(after(project)).containsExactly("2026-11-25");
        }
    }
}
