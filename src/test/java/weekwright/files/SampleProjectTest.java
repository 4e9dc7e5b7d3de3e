package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Hours;
import weekwright.base.Problem;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.engine.simulate.Learned;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.SlotRules;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ProjectData;
import weekwright.forecast.InputsBuilder;
import weekwright.testkit.PlainProject;

/** The sample that goes with the program: whole, believable, and the same after a journey through a project folder. */
class SampleProjectTest {
    private static final Path SAMPLE = Path.of("sample-project");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path temp;

    private static ProjectData sample() {
        return PlainFiles.read(SAMPLE, TODAY).data().orElseThrow();
    }

    @Test
    void its_zone_is_that_of_the_clock_under_which_it_is_served() {
        assertThat(sample().settings().zone()).isEqualTo(weekwright.SampleClock.ZONE);
    }

    @Test
    void it_has_neither_fault_nor_remark() {
        assertThat(PlainFiles.read(SAMPLE, TODAY).problems())
                .extracting(Problem::text)
                .isEmpty();
    }

    @Test
    void its_files_have_the_rows_that_they_are_known_to_have() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        ProjectData sample = sample();
        ProjectData.tables()
                .forEach(table -> counts.put(table.name(), sample.list(table).size()));
        assertThat(counts)
                .containsExactlyInAnyOrderEntriesOf(Map.ofEntries(
                        Map.entry("crew", 3),
                        Map.entry("crew_hours", 3),
                        Map.entry("days_off", 16),
                        Map.entry("stopped", 20),
                        Map.entry("equipment", 8),
                        Map.entry("stages", 9),
                        Map.entry("tasks", 99),
                        Map.entry("links", 128),
                        Map.entry("hours", 915),
                        Map.entry("week", 18),
                        Map.entry("gatherings", 2),
                        Map.entry("materials", 83),
                        Map.entry("stock", 13),
                        Map.entry("suppliers", 2),
                        Map.entry("ledger", 262),
                        Map.entry("regular", 7),
                        Map.entry("pledge_levels", 3),
                        Map.entry("supporters", 60),
                        Map.entry("episodes", 61),
                        Map.entry("tells", 69),
                        Map.entry("shots", 48),
                        Map.entry("clips", 14),
                        Map.entry("bank_sources", 2),
                        Map.entry("bank_files", 0),
                        Map.entry("closed_months", 2),
                        Map.entry("statements", 50),
                        Map.entry("skipped", 2),
                        Map.entry("incidents", 3),
                        Map.entry("cautions", 7),
                        Map.entry("levers", 3),
                        Map.entry("day_words", 1),
                        Map.entry("hazards_read", 5),
                        Map.entry("segments", 7),
                        Map.entry("music", 2),
                        Map.entry("releases", 2),
                        Map.entry("step_by", 4),
                        Map.entry("notes", 55),
                        Map.entry("photos", 20)));
    }

    /** The likely hours of all pieces: those of the k-th are h k^(log2 rate), the unit model of learning curves. */
    private static double likelyHours(Task task) {
        double rate =
                task.learning().map(percent -> percent.doubleValue() / 100).orElse(1.0);
        double sum = 0;
        for (int k = 1; k <= task.piecesOrDefault(); k++) {
            sum += task.likely().orElseThrow().doubleValue() * Math.pow(k, Math.log(rate) / Math.log(2));
        }
        return sum;
    }

    @Test
    void every_done_task_took_between_a_third_and_three_times_its_likely_hours() {
        ProjectData sample = sample();
        List<Task> done = sample.list(TaskStore.TABLE).stream()
                .filter(task -> task.isWork()
                        && task.done().isPresent()
                        && task.likely().isPresent())
                .toList();
        assertThat(done).hasSizeGreaterThan(20);
        for (Task task : done) {
            int minutes = sample.list(HoursEntryStore.TABLE).stream()
                    .filter(entry -> entry.task().equals(Optional.of(task.id())))
                    .filter(entry -> entry.asOrDefault() == HoursEntry.As.HANDS)
                    .map(HoursEntry::hours)
                    .mapToInt(Hours::minutes)
                    .sum();
            assertThat(minutes / 60.0 / likelyHours(task)).as(task.id().value()).isBetween(1 / 3.0, 3.0);
        }
    }

    @Test
    void of_the_fridays_so_far_exactly_one_was_empty() {
        ProjectData sample = sample();
        List<LocalDate> published = sample.list(EpisodeStore.TABLE).stream()
                .map(Episode::published)
                .flatMap(Optional::stream)
                .toList();
        List<LocalDate> empty = Stream.iterate(
                        sample.settings().firstSlot(), day -> day.isBefore(TODAY), day -> day.plusDays(1))
                .filter(day -> SlotRules.isSlot(day, sample.settings()))
                .filter(day -> !published.contains(day))
                .toList();
        assertThat(empty).hasSize(1);
    }

    @Test
    void the_middle_of_its_effort_ratio_lies_between_1_1_and_1_5() throws Exception {
        Folder folder = new Folder(temp.resolve("project"));
        ImportProject.into(SAMPLE, folder, false, TODAY, PlainProject.CLOCK);
        try (Db db = folder.open(PlainProject.CLOCK)) {
            var inputs = db.read(read -> InputsBuilder.build(read, TODAY)).inputs();
            assertThat(new Learned(inputs).ratio().ratioQuantile(0.5)).isBetween(1.1, 1.5);
        }
    }

    @Test
    void rule_100_it_comes_back_byte_for_byte_from_a_project_folder() throws Exception {
        Folder folder = new Folder(temp.resolve("project"));
        ImportProject.into(SAMPLE, folder, false, TODAY, PlainProject.CLOCK);
        try (Db db = folder.open(PlainProject.CLOCK)) {
            ExportProject.into(db, folder, temp.resolve("exported"));
        }
        Map<String, String> exported = RoundTripTest.files(temp.resolve("exported"));
        Map<String, String> sample = RoundTripTest.files(SAMPLE);
        assertThat(exported.keySet()).isEqualTo(sample.keySet());
        sample.forEach((name, text) -> assertThat(exported.get(name)).as(name).isEqualTo(text));
    }
}
