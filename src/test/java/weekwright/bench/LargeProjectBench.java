package weekwright.bench;

import java.lang.management.ManagementFactory;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.testkit.ProjectInputs;

/**
 * Measures trials a second of large made-up projects: 3 people, everything on, both funding answers; 300 tasks over four years,
 * then fewer and more tasks and fewer years to show how the cost grows, then two threads against one, then what 10,000 futures of
 * it hold of memory. Run it with
 * {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=weekwright.bench.LargeProjectBench}; the argument is
 * how many trials (3,000).
 */
public final class LargeProjectBench {
    private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
    private static final int ROUNDS = 4;
    private static final int FUTURES = 10_000;

    private LargeProjectBench() {}

    public static void main(String[] arguments) {
        int trials = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3000;
        Measured whole = measure(300, 48, trials, 1);
        for (int tasks : new int[] {75, 150, 600, 1200}) {
            measure(tasks, 48, Math.max(1, trials * 75 / tasks), 1);
        }
        measure(300, 24, trials, 1);
        Measured two = measure(300, 48, trials, 2);
        System.out.printf(Locale.ROOT, "two threads: %.2f times one%n", whole.wall / two.wall);
        memory();
    }

    /** What is in use with all that a forecast keeps of 10,000 futures, less what was in use before. */
    private static void memory() {
        Setup setup = new Setup(project(300, 48));
        Plan plan = Planner.plan(setup, 1, 0);
        long before = inUse();
        Outcome outcome = Simulation.run(setup, plan, FUTURES, 1, 2, Progress.NONE);
        long after = inUse();
        System.out.printf(
                Locale.ROOT, "%d futures of 300 tasks, 48 months: %.0f MB%n", outcome.trials, (after - before) / 1e6);
    }

    private static long inUse() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
    }

    private record Measured(double wall) {}

    private static Measured measure(int tasks, int months, int trials, int threads) {
        Setup setup = new Setup(project(tasks, months));
        Plan plan = Planner.plan(setup, 1, 0);
        double wall = Double.MAX_VALUE;
        double processor = Double.MAX_VALUE;
        Outcome outcome = null;
        for (int round = 0; round < ROUNDS; round++) {
            outcome = null;
            long began = System.nanoTime();
            long used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            outcome = Simulation.run(setup, plan, trials, 1, threads, Progress.NONE);
            processor = Math.min(processor, ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - used);
            wall = Math.min(wall, System.nanoTime() - began);
        }
        double done = threads == 1 ? processor : wall;
        System.out.printf(
                Locale.ROOT,
                "%d tasks, %d months, %d threads: %.0f trials a second, %.0f microseconds a trial,"
                        + " %.2f nanoseconds a task and day%n",
                tasks,
                months,
                threads,
                trials / (done / 1e9),
                done / 1000 / trials,
                done / trials / tasks / setup.inputs().horizonMonths() * 12 / 365.25);
        for (Outcome.Count count : Outcome.Count.values()) {
            System.out.printf(
                    Locale.ROOT,
                    "  %s %.1f",
                    count.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    Arrays.stream(outcome.counts[count.ordinal()]).average().orElse(0));
        }
        System.out.println();
        return new Measured(wall);
    }

    /** Ten stages; each task follows one or two of the ten before it; the same for the same numbers. */
    public static Inputs project(int tasks, int months) {
        SplittableRandom random = new SplittableRandom(tasks);
        ProjectInputs project = ProjectInputs.project()
                .horizonMonths(months)
                .person("a", "timber", "iron", "camera")
                .paid(900)
                .person("b", "timber", "camera", "edit")
                .person("c", "iron", "timber")
                .equipment("saw", 1)
                .equipment("forge", 1)
                .weather(0.25, 2.5)
                .orders(14, 5000)
                .cash(800_000, 100_000)
                .fridays("2027-03-05")
                .level("month", 500, false)
                .level("film", 300, true)
                .regular("rent", -40_000, Inputs.Every.MONTH, "2026-01-01", "");
        for (int m = 0; m < 14; m++) {
            String month = DAY.minusMonths(14 - m).toString().substring(0, 7);
            project.supporters(month, "month", 300 + 4 * m, 12, 8).supporters(month, "film", 150 + 2 * m, 7, 5);
        }
        for (int s = 0; s < 10; s++) {
            project.stage("s" + s);
        }
        double hours = 3.0 * 40 * 52 * months / 12 * 0.6 / tasks;
        for (int t = 0; t < tasks; t++) {
            ProjectInputs.Task task = project.task("t" + t).stage("s" + t * 10 / tasks);
            boolean wait = t % 15 == 7;
            if (wait) {
                task.days(3, 7, 20);
            } else {
                task.hours(hours * 0.6, hours, hours * 1.9).story(6);
                task.trades(random.nextInt(3) == 0 ? "iron" : "timber").hands(1 + random.nextInt(2), 1);
                task.camera(
                        List.of(Inputs.Camera.FIXED, Inputs.Camera.OPERATOR, Inputs.Camera.NONE)
                                .get(t % 3),
                        20);
                if (random.nextInt(3) == 0) {
                    task.outdoors();
                }
                if (random.nextInt(5) == 0) {
                    task.needs(random.nextBoolean() ? "saw" : "forge", 1);
                }
                if (random.nextInt(12) == 0) {
                    task.season(401, 1031);
                }
            }
            if (t < tasks * 7 / 100) {
                task.logged("2027-01-11", "a", wait ? 1 : hours).done("2027-02-01");
            }
            for (int k = 0; k < 2 && t > 0; k++) {
                int before = Math.max(0, t - 1 - random.nextInt(20));
                if (k == 0 || before % 2 == 0) {
                    project.link("t" + t, "t" + before, random.nextInt(6) == 0 ? 0.5 : 1, 0);
                }
            }
            if (!wait && t % 2 == 0 && t >= tasks * 7 / 100) {
                project.material(
                        ProjectInputs.line("m" + t, "t" + t, 20_000 + random.nextInt(60_000), 20 + t % 50, 30));
            }
            if (!wait && t % 6 == 3 && t >= tasks * 7 / 100) {
                LocalDate slot = LocalDate.of(2027, 3, 5).plusWeeks((long) t * months * 4 / tasks);
                project.episode("e" + t, slot.toString(), 14, "t" + t);
            }
        }
        return project.inputs();
    }
}
