package weekwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.FixedWork;
import weekwright.testkit.FixedProjects;

/**
 * Measures the plan on standard instances of the resource-constrained project scheduling problem (files {@code .sm} of Kolisch &amp;
 * Sprecher 1996; not part of the project). Each becomes a project of waits that need equipment in quantity; counted is the day on which
 * the daily dispatch, following the plan found, is done. Every schedule is validated. Prints for each budget the mean deviation from
 * the best known value and from the longest path. Run it with {@code mvn -q test-compile exec:java -Dexec.classpathScope=test
 * -Dexec.mainClass=weekwright.bench.PlanBench -Dexec.args="FOLDER BOUNDS.csv 0 1000 5000"}; the columns of the bounds are instance,
 * jobs with the two empty ones, resources, longest path, capacity bound, best known.
 */
public final class PlanBench {
    private static final int DAYS_A_MONTH = 28;

    private PlanBench() {}

    private record Instance(String name, FixedWork work, int best) {}

    public static void main(String[] arguments) throws IOException {
        if (arguments.length < 3) {
            System.err.println("FOLDER BOUNDS.csv PASSES… are needed, such as: j30 j30_bounds.csv 0 1000 5000");
            System.exit(2);
        }
        List<Instance> instances;
        try (Stream<String> rows = Files.lines(Path.of(arguments[1])).skip(1)) {
            instances = rows.map(row -> row.split(","))
                    .map(cells -> new Instance(
                            cells[0],
                            read(Path.of(arguments[0], cells[0] + ".sm")),
                            Integer.parseInt(cells[cells.length - 1].trim())))
                    .toList();
        }
        for (String passes : Arrays.copyOfRange(arguments, 2, arguments.length)) {
            measure(instances, Integer.parseInt(passes));
        }
    }

    private static void measure(List<Instance> instances, int passes) {
        double overBest = 0;
        double overPath = 0;
        int reached = 0;
        long began = System.nanoTime();
        for (Instance instance : instances) {
            FixedWork work = instance.work;
            int sum = Arrays.stream(work.days()).sum();
            Inputs inputs =
                    FixedProjects.of(work).horizonMonths(1 + sum / DAYS_A_MONTH).inputs();
            Plan plan = Planner.plan(inputs, 1, passes);
            int[] start = FixedProjects.starts(inputs, plan);
            List<String> broken = FixedProjects.broken(work, start);
            if (!broken.isEmpty() || plan.landing().contains(Outcome.LATER)) {
                throw new IllegalStateException(instance.name + ": " + broken);
            }
            int end = FixedProjects.end(work, start);
            int path = FixedProjects.longestPath(work);
            if (end < path) {
                throw new IllegalStateException(instance.name + " is done before its longest path");
            }
            overBest += (double) (end - instance.best) / instance.best;
            overPath += (double) (end - path) / path;
            reached += end <= instance.best ? 1 : 0;
        }
        int n = instances.size();
        System.out.printf(
                Locale.ROOT,
                "%d passes: %.2f %% over the best known (%d of %d reached), %.2f %% over the longest path, %.1f ms each%n",
                passes,
                100 * overBest / n,
                reached,
                n,
                100 * overPath / n,
                (System.nanoTime() - began) / 1e6 / n);
    }

    /** Reads one file: precedence relations, requests and durations, availabilities. */
    private static FixedWork read(Path file) {
        try {
            return FixedProjects.read(Files.readAllLines(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
