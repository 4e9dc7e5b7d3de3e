package weekwright.engine.simulate;

import java.util.Arrays;

/**
 * The pieces of a task as its log shows them. An entry with n pieces gives each of them 1/n of the minutes logged since the last
 * entry with pieces, its own included; minutes after the last such entry count towards the next piece (rule 23).
 *
 * @param minutesOfPiece minutes of the 1st, 2nd … piece
 * @param minutesSince minutes logged after the last entry with pieces
 */
public record PiecesLog(double[] minutesOfPiece, double minutesSince) {
    /** Pieces from which on the log, not the estimate, gives the curve (rule 22). */
    public static final int ENOUGH_TO_FIT = 3;

    /**
     * Reads the hands' entries of a task in the order of their dates.
     *
     * @param minutes of each entry
     * @param pieces done in each entry, 0 for none
     */
    public static PiecesLog of(int[] minutes, int[] pieces) {
        double[] each = new double[Arrays.stream(pieces).sum()];
        int done = 0;
        double since = 0;
        for (int i = 0; i < minutes.length; i++) {
            since += minutes[i];
            if (pieces[i] > 0) {
                Arrays.fill(each, done, done + pieces[i], since / pieces[i]);
                done += pieces[i];
                since = 0;
            }
        }
        return new PiecesLog(each, since);
    }

    /** How many pieces are done. */
    public int done() {
        return minutesOfPiece.length;
    }

    /**
     * Σ k^(log₂ rate) for the pieces from {@code first} to {@code last}, both included: minutes of these pieces when the first
     * piece of all takes 1. The unit model of learning curves (Crawford), not the cumulative average.
     *
     * @param learningPercent what each doubling takes, 100 for no learning
     */
    public static double unitSum(int first, int last, double learningPercent) {
        double slope = slope(learningPercent);
        double sum = 0;
        for (int k = first; k <= last; k++) {
            sum += slope == 0 ? 1 : StrictMath.pow(k, slope);
        }
        return sum;
    }

    /** The share of the minutes of all pieces that the first k take, k from 0 on. */
    static double[] taken(int pieces, double learningPercent) {
        double slope = slope(learningPercent);
        double[] taken = new double[pieces + 1];
        for (int k = 1; k <= pieces; k++) {
            taken[k] = taken[k - 1] + (slope == 0 ? 1 : StrictMath.pow(k, slope));
        }
        double all = taken[pieces];
        for (int k = 1; k <= pieces; k++) {
            taken[k] /= all;
        }
        return taken;
    }

    /** log₂ of the learning rate. */
    static double slope(double learningPercent) {
        return learningPercent == 100 ? 0 : StrictMath.log(learningPercent / 100) / StrictMath.log(2);
    }
}
