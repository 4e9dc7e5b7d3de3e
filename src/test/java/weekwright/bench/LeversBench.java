package weekwright.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import weekwright.engine.explain.Levers;
import weekwright.engine.plan.Plan;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.forecast.Basis;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.Forecasts;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/**
 * Measures the levers on the sample over loopback: how long the first answer (1,000 futures) takes when a lever that was never asked for
 * is pulled as soon as the last first answer has come, as a slider does; then how long it takes until an answer has settled at 10,000.
 * After that, without the server, what of it is the table of inputs and what the futures. Run it with
 * {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=weekwright.bench.LeversBench}.
 */
public final class LeversBench {
    private static final int WARM = 15;
    private static final int TIMES = 25;

    private LeversBench() {}

    public static void main(String[] args) throws Exception {
        try (ServerFixture server = ServerFixture.sample()) {
            Visitor ilse = server.as("ilse");
            settled(ilse, "/ahead/levers?prices=99");
            double[] millis = new double[TIMES];
            for (int i = 0; i < WARM + TIMES; i++) {
                long began = System.nanoTime();
                Visitor.Reply reply = ilse.get("/ahead/levers?prices=" + (i + 1) + "&supporters=" + -i);
                if (!reply.text().contains("1,000 futures of each")) {
                    throw new IllegalStateException("not a first answer: " + reply.text());
                }
                millis[Math.max(0, i - WARM)] = millisSince(began);
            }
            Arrays.sort(millis);
            System.out.printf(
                    Locale.ROOT,
                    "first answer, 1,000 futures: median %.0f ms, longest %.0f ms%n",
                    millis[TIMES / 2],
                    millis[TIMES - 1]);
            long began = System.nanoTime();
            settled(ilse, "/ahead/levers?prices=98");
            System.out.printf(Locale.ROOT, "settled at 10,000 after %.1f s%n", millisSince(began) / 1000);
        }
        parts();
    }

    private static void settled(Visitor visitor, String path) throws InterruptedException {
        while (!visitor.get(path)
                .page()
                .select("[data-answer]")
                .attr("data-settling")
                .equals("false")) {
            Thread.sleep(50);
        }
    }

    private static void parts() throws Exception {
        Basis basis = ForecastBench.sample();
        Plan plan = new ForecastRun.Planned(basis, Forecasts.SEED).plan();
        Levers dearer = new Levers(
                Map.of(), Levers.Helper.NOBODY, 0, 30, Set.of(), Map.of(), 0, Levers.NONE.grant(), 100, false, 0);
        double tables = Double.MAX_VALUE;
        double futures = Double.MAX_VALUE;
        int threads = Runtime.getRuntime().availableProcessors();
        for (int i = 0; i < WARM; i++) {
            long began = System.nanoTime();
            Setup setup = new Setup(dearer.over(basis.inputs()));
            tables = Math.min(tables, millisSince(began));
            began = System.nanoTime();
            Simulation.runWithoutReasons(setup, plan, Forecasts.FIRST_LOOK, Forecasts.SEED, threads, Progress.NONE);
            futures = Math.min(futures, millisSince(began));
        }
        System.out.printf(
                Locale.ROOT, "at best: tables of the inputs %.0f ms, 1,000 futures %.0f ms%n", tables, futures);
    }

    private static double millisSince(long began) {
        return (System.nanoTime() - began) / 1e6;
    }
}
