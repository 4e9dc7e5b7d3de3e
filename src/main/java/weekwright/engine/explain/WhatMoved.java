package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;

/**
 * Why the middle landing dates of two forecasts differ: the difference split over the {@link Cause}s by Shapley values over their 2⁵
 * mixtures, all with the same luck and the same order of work (rules 52, 96). The parts of a stage sum to its difference exactly.
 */
public final class WhatMoved {
    private WhatMoved() {}

    /**
     * A stage that both forecasts hold.
     *
     * @param then middle landing as epoch day, by the earlier inputs; {@link Outcome#LATER} for after the horizon
     * @param now by the newer ones
     * @param days by cause, in the order of {@link Cause}; their sum is the difference, a landing after the horizon taken as the
     *     horizon's day
     */
    public record Stage(String id, int then, int now, double[] days) {
        /** The part of a cause, in days, later counting up. */
        public double of(Cause cause) {
            return days[cause.ordinal()];
        }
    }

    /**
     * Splits.
     *
     * @param order of work for all mixtures; the newer forecast's
     * @param goesOn told how many of the 32 mixtures are drawn; false stops
     * @throws weekwright.engine.simulate.Stopped if it was stopped
     */
    public static List<Stage> between(
            Inputs then, Inputs now, Inputs.Kept order, int trials, long seed, int threads, IntPredicate goesOn) {
        int mixtures = 1 << Cause.values().length;
        int[][] middles = new int[mixtures][];
        // where nothing of a cause has changed its mixtures are the same
        Map<Inputs, int[]> drawn = new HashMap<>();
        int horizon = Outcome.LATER;
        for (int causes = 0; causes < mixtures; causes++) {
            int drawnBefore = causes;
            Inputs mixture = Mixture.of(then, now, causes);
            int[] same = drawn.get(mixture);
            if (same != null) {
                middles[causes] = same;
                continue;
            }
            Setup setup = new Setup(mixture);
            Outcome outcome = Simulation.run(
                    setup, Planner.follow(setup, order), trials, seed, threads, done -> goesOn.test(drawnBefore));
            middles[causes] = middles(outcome, trials);
            drawn.put(mixture, middles[causes]);
            horizon = Math.min(horizon, outcome.horizon);
        }
        List<Stage> stages = new ArrayList<>();
        for (int a = 0; a < then.stages().size(); a++) {
            for (int b = 0; b < now.stages().size(); b++) {
                if (then.stages().get(a).id().equals(now.stages().get(b).id())) {
                    stage(then, a, b, middles, horizon).ifPresent(stages::add);
                }
            }
        }
        return stages;
    }

    private static Optional<Stage> stage(Inputs then, int a, int b, int[][] middles, int horizon) {
        double[] value = new double[middles.length];
        for (int causes = 0; causes < middles.length; causes++) {
            boolean plan = (causes >> Cause.PLAN.ordinal() & 1) == 1;
            int day = middles[causes][plan ? b : a];
            if (day == Inputs.NONE) {
                return Optional.empty();
            }
            value[causes] = Math.min(day, horizon);
        }
        int last = middles.length - 1;
        return Optional.of(new Stage(then.stages().get(a).id(), middles[0][a], middles[last][b], Shapley.parts(value)));
    }

    /** The middle landing of each stage: the smallest day by which half of the trials have landed (rule 7). */
    private static int[] middles(Outcome outcome, int trials) {
        int[] middles = new int[outcome.held.stageLanding.length];
        for (int s = 0; s < middles.length; s++) {
            int[] sorted = outcome.held.stageLanding[s].clone();
            Arrays.sort(sorted);
            middles[s] = sorted[(trials + 1) / 2 - 1];
        }
        return middles;
    }
}
