package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Simulation;
import weekwright.files.csv.PlainFiles;

/** The luck of the sample mill: shared by its variants, the same on any number of threads. */
class SampleLuckTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int TRIALS = 120;
    /** Nothing follows it: the machine beside the build runs once it is done. */
    private static final String LAST = "saw.8";

    @TempDir
    Path temp;

    private static Basis basis(Path files) {
        return InputsBuilder.build(PlainFiles.read(files, TODAY).data().orElseThrow(), TODAY);
    }

    private static int place(Inputs inputs, String id) {
        List<String> ids = inputs.tasks().stream().map(Inputs.Task::id).toList();
        return ids.indexOf(id);
    }

    private static Outcome run(Inputs inputs, int threads) {
        Plan plan = Planner.plan(inputs, 1, 0);
        return Simulation.run(inputs, plan, TRIALS, 1, threads, Progress.NONE);
    }

    /** The sample with its last task of the side stage dropped today. */
    private Path dropped() throws Exception {
        Path copy = temp.resolve("mill");
        try (Stream<Path> all = Files.walk(Path.of("sample-project"))) {
            for (Path from : all.toList()) {
                Path to =
                        copy.resolve(Path.of("sample-project").relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
            }
        }
        Path tasks = copy.resolve("tasks.csv");
        List<String> lines = Files.readAllLines(tasks).stream()
                .map(line -> line.startsWith(LAST + ",") ? line + TODAY : line)
                .toList();
        Files.write(tasks, lines);
        return copy;
    }

    @Test
    void rule_9_on_the_sample_a_task_that_nothing_follows_leaves_every_other_draw_as_it_was_when_dropped()
            throws Exception {
        Inputs with = basis(Path.of("sample-project")).inputs();
        Inputs without = basis(dropped()).inputs();
        Outcome before = run(with, 2);
        Outcome after = run(without, 2);
        assertThat(place(with, LAST)).isNotNegative();
        assertThat(before.effortRatio).isEqualTo(after.effortRatio);
        int compared = 0;
        for (Inputs.Task task : without.tasks()) {
            if (!task.id().equals(LAST) && place(with, task.id()) >= 0) {
                assertThat(after.taskDrawn[place(without, task.id())])
                        .as(task.id())
                        .isEqualTo(before.taskDrawn[place(with, task.id())]);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(40);
    }

    @Test
    void on_the_sample_one_two_and_eight_threads_give_the_same_json() throws Exception {
        Basis basis = basis(Path.of("sample-project"));
        ForecastJson json = new ForecastJson(2);
        String one =
                json.text(ForecastRun.run(basis, TRIALS, 1, 1, Progress.NONE).forecast());
        for (int threads : new int[] {2, 8}) {
            assertThat(json.text(ForecastRun.run(basis, TRIALS, 1, threads, Progress.NONE)
                            .forecast()))
                    .isEqualTo(one);
        }
    }
}
