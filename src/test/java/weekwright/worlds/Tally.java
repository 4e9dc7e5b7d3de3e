package weekwright.worlds;

import java.util.Arrays;
import java.util.Locale;
import weekwright.engine.Outcome;
import weekwright.engine.Score;

/** Adds up how forecasts of worlds did. */
public final class Tally {
    private int worlds;
    private int stages;
    private int within;
    private int early;
    private double crps;
    private double planOff;
    private double length;
    private int balances;
    private int balancesWithin;
    private int ratiosWithin;
    private int chances;
    private double brier;
    private final int[] places = new int[5];

    /** Adds a world. */
    public synchronized void add(Lived lived) {
        worlds++;
        Outcome outcome = lived.outcome;
        for (int s : lived.openStages()) {
            int landed = lived.landed(s);
            int[] drawn = outcome.held.stageLanding[s].clone();
            for (int i = 0; i < drawn.length; i++) {
                drawn[i] = Math.min(drawn[i], outcome.horizon);
            }
            int[] range = Outcome.quantiles(drawn, 0.1, 0.9);
            stages++;
            within += range[0] <= landed && landed <= range[1] ? 1 : 0;
            early += landed < range[0] ? 1 : 0;
            length += range[1] - range[0];
            crps += Score.crps(Arrays.stream(drawn).asDoubleStream().toArray(), landed);
            planOff += Math.abs(lived.planned(s) - landed);
        }
        double[] ratio = Outcome.quantiles(outcome.effortRatio, 0.1, 0.9);
        ratiosWithin += ratio[0] <= lived.ratio() && lived.ratio() <= ratio[1] ? 1 : 0;
        double below = Arrays.stream(outcome.effortRatio)
                        .filter(r -> r < lived.ratio())
                        .count()
                / (double) outcome.trials;
        places[Math.min(4, (int) (5 * below))]++;
        int[] cash = lived.cash();
        balances += cash.length;
        balancesWithin += Arrays.stream(cash).sum();
        for (double[] row : lived.episodes()) {
            chances++;
            brier += (row[0] - row[1]) * (row[0] - row[1]);
        }
    }

    /** Share of the landings that lay in their range from P10 to P90. */
    public double coverage() {
        return within / (double) stages;
    }

    /** Mean ranked score in days. */
    public double crps() {
        return crps / stages;
    }

    /** Mean ranked score of the plan as one date: its distance. */
    public double planOff() {
        return planOff / stages;
    }

    /** Mean squared error of the episodes' chances. */
    public double brier() {
        return brier / chances;
    }

    /** How many stages were scored. */
    public int stages() {
        return stages;
    }

    /** One line. */
    public String text() {
        double c = coverage();
        return String.format(
                Locale.ROOT,
                "%d worlds, %d stages: %.1f %% within (± %.1f), %.1f %% earlier; balance %.1f %% within; CRPS %.1f"
                        + " days, of the plan's date %.1f (%.2f); range %.1f days; effort ratio %.0f %% within, by fifths"
                        + " %s; %d episodes, Brier %.3f",
                worlds,
                stages,
                100 * c,
                100 * Math.sqrt(c * (1 - c) / stages),
                100.0 * early / stages,
                100.0 * balancesWithin / balances,
                crps(),
                planOff(),
                crps() / planOff(),
                length / stages,
                100.0 * ratiosWithin / worlds,
                Arrays.toString(places),
                chances,
                brier());
    }
}
