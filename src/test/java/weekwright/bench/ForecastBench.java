package weekwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.files.ImportProject;
import weekwright.files.SampleFiles;
import weekwright.forecast.Basis;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.InputsBuilder;

/**
 * Measures the sample's forecast: time of 10,000 futures with both funding answers after a warm-up, and how much happens in a
 * future. Ends with status 1 if anything that must happen never did. Run it with
 * {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=weekwright.bench.ForecastBench}.
 */
public final class ForecastBench {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final int TRIALS = 10_000;
    private static final int ROUNDS = 3;

    private ForecastBench() {}

    public static void main(String[] arguments) throws Exception {
        int threads = arguments.length > 0
                ? Integer.parseInt(arguments[0])
                : Runtime.getRuntime().availableProcessors();
        Basis basis = sample();
        Setup setup = new Setup(basis.inputs());
        long began = System.nanoTime();
        Plan plan = Planner.plan(setup, 1, ForecastRun.passes(basis.inputs()));
        System.out.printf(Locale.ROOT, "plan, cold: %.0f ms%n", millisSince(began));
        Outcome outcome = Simulation.run(setup, plan, TRIALS, 1, threads, Progress.NONE);
        for (int round = 1; round <= ROUNDS; round++) {
            began = System.nanoTime();
            outcome = Simulation.run(setup, plan, TRIALS, 1, threads, Progress.NONE);
            double millis = millisSince(began);
            System.out.printf(
                    Locale.ROOT,
                    "%d futures, both answers, %d threads: %.0f ms (%.0f microseconds a future)%n",
                    TRIALS,
                    threads,
                    millis,
                    millis * 1000 / TRIALS);
        }
        boolean zero = false;
        for (Outcome.Count count : Outcome.Count.values()) {
            long all = Arrays.stream(outcome.counts[count.ordinal()])
                    .asLongStream()
                    .sum();
            System.out.printf(
                    Locale.ROOT,
                    "%s a future: %.2f%n",
                    count.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    (double) all / TRIALS);
            zero |= all == 0;
        }
        if (zero) {
            System.err.println("Something that must happen never did.");
            System.exit(1);
        }
    }

    private static double millisSince(long began) {
        return (System.nanoTime() - began) / 1e6;
    }

    static Basis sample() throws Exception {
        Clock clock = Clock.fixed(DAY.atTime(8, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
        Path temporary = Files.createTempDirectory("weekwright-bench");
        Folder folder = new Folder(temporary.resolve("sample"));
        try (SampleFiles files = SampleFiles.unpack()) {
            ImportProject.into(files.folder(), folder, false, DAY, clock);
        }
        try (Db db = folder.open(clock)) {
            return db.read(read -> InputsBuilder.build(read, DAY));
        } finally {
            remove(temporary);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (var all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
