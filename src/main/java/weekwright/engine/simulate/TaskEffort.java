package weekwright.engine.simulate;

import java.util.Arrays;

/**
 * How the person-minutes that a work task still takes are drawn; made once for a forecast, asked once a trial. Which of the ways
 * applies: {@link #estimated}, {@link #said}, {@link #piecesEstimated}, {@link #piecesFitted}, {@link #almostDone}, {@link #guessed}.
 */
public abstract sealed class TaskEffort {
    /** What is left of a task that is not done although its pieces or its hours are: a quarter of an hour. */
    public static final double LEAST_LEFT = 15;

    private static final double FIT_RESIDUAL = 0.15;
    private static final double FIT_SLOPE_DEVIATION = 0.1;
    private static final double UNKNOWN_MEDIAN = 12 * 60;
    private static final double UNKNOWN_FACTOR = 2.5;

    private TaskEffort() {}

    /**
     * Person-minutes left.
     *
     * @param beta of the trial
     * @param kappa of the trial
     * @param u the task's own uniform
     */
    public abstract double left(double beta, double kappa, double u);

    /**
     * Person-minutes left as the plan expects them (rule 54): κ = 1 and β = β_n; the mean of what nobody has begun, the middle of a
     * draw that depends on what is logged.
     */
    public abstract double expectedLeft(double betaN);

    /**
     * A task with an estimate, begun or not: total = exp(m + β + κ √v z), given that it is more than what is logged (rules 11, 19).
     *
     * @param low person-minutes
     * @param cameraExtraPercent for camera {@code fixed} its percent on top of the estimate, else 0 (rule 17)
     * @param logged hands' minutes so far
     */
    public static TaskEffort estimated(
            double low, double likely, double high, double cameraExtraPercent, double logged) {
        double mean = ThreePoint.mean(low, likely, high);
        double variance = EffortRatio.variance(mean, ThreePoint.deviation(low, high));
        return new Estimated(mean * (1 + cameraExtraPercent / 100), variance, logged);
    }

    /**
     * The crew said how much is left (rule 20): the range scaled so that its likely value is what was said, its own relative spread,
     * without β, given that it is more than what was logged on later dates, less that. 0 said of a task that is not done reads as a
     * quarter of an hour. The camera's extra is not added: it was said with the work in sight.
     *
     * @param said person-minutes left when it was said
     * @param loggedSince hands' minutes on dates after it was said
     */
    public static TaskEffort said(double low, double likely, double high, double said, double loggedSince) {
        double mean = ThreePoint.mean(low, likely, high);
        double variance = EffortRatio.variance(mean, ThreePoint.deviation(low, high));
        double scale = (said > 0 ? said : LEAST_LEFT) / likely;
        return new Said(mean * scale, variance, loggedSince);
    }

    /**
     * Pieces of which fewer than three are logged (rules 18, 22, 23): the pieces left as estimated, with β and one deviate for all,
     * not conditioned on the log; minutes since the last finished piece count towards the next one.
     *
     * @param low person-minutes of the first piece
     * @param pieces how many there are
     */
    public static TaskEffort piecesEstimated(
            double low,
            double likely,
            double high,
            double cameraExtraPercent,
            int pieces,
            double learningPercent,
            PiecesLog log) {
        if (log.done() >= pieces) {
            return almostDone();
        }
        double first = ThreePoint.mean(low, likely, high);
        double variance = EffortRatio.variance(first, ThreePoint.deviation(low, high));
        double sum = PiecesLog.unitSum(log.done() + 1, pieces, learningPercent);
        double next = PiecesLog.unitSum(log.done() + 1, log.done() + 1, learningPercent) / sum;
        return new PiecesEstimated(first * (1 + cameraExtraPercent / 100) * sum, variance, next, log.minutesSince());
    }

    /**
     * Pieces of which three or more are logged (rule 22): ln h_k = A + s log₂ k is fitted with the prior A ~ N(m₁ + β_n, v + 1/k_n),
     * s ~ N(log₂ rate, 0.1²) and residual 0.15; what is left is lognormal about the fitted sum over the pieces left, with the fit's
     * variance (delta method, residuals of the pieces to come included), without β and κ.
     */
    public static TaskEffort piecesFitted(
            double low,
            double likely,
            double high,
            double cameraExtraPercent,
            int pieces,
            double learningPercent,
            PiecesLog log,
            EffortRatio ratio) {
        int done = log.done();
        if (done >= pieces) {
            return almostDone();
        }
        double first = ThreePoint.mean(low, likely, high);
        double variance = EffortRatio.variance(first, ThreePoint.deviation(low, high));
        double priorA = ThreePoint.logMean(first * (1 + cameraExtraPercent / 100), variance) + ratio.betaN();
        double priorS = PiecesLog.slope(learningPercent);
        // precision matrix [aa as; as ss] and the right side of the normal equations
        double aa = 1 / (variance + 1 / ratio.kn());
        double ss = 1 / (FIT_SLOPE_DEVIATION * FIT_SLOPE_DEVIATION);
        double as = 0;
        double a = aa * priorA;
        double s = ss * priorS;
        double weight = 1 / (FIT_RESIDUAL * FIT_RESIDUAL);
        for (int k = 1; k <= done; k++) {
            double minutes = log.minutesOfPiece()[k - 1];
            if (minutes > 0) {
                double x = StrictMath.log(k) / StrictMath.log(2);
                double y = StrictMath.log(minutes);
                aa += weight;
                as += weight * x;
                ss += weight * x * x;
                a += weight * y;
                s += weight * x * y;
            }
        }
        double determinant = aa * ss - as * as;
        double fittedA = (ss * a - as * s) / determinant;
        double fittedS = (aa * s - as * a) / determinant;
        double sum = 0;
        double moment = 0;
        double squares = 0;
        double next = 0;
        for (int k = done + 1; k <= pieces; k++) {
            double x = StrictMath.log(k) / StrictMath.log(2);
            double minutes = StrictMath.exp(fittedA + fittedS * x);
            next = k == done + 1 ? minutes : next;
            sum += minutes;
            moment += minutes * x;
            squares += minutes * minutes;
        }
        double g = moment / sum;
        double ofFit = (ss - 2 * as * g + aa * g * g) / determinant;
        double ofPieces = FIT_RESIDUAL * FIT_RESIDUAL * squares / (sum * sum);
        return new PiecesFitted(StrictMath.log(sum), StrictMath.sqrt(ofFit + ofPieces), next / sum, log.minutesSince());
    }

    /** All pieces logged but the task is not done (rule 24): a quarter of an hour. */
    public static TaskEffort almostDone() {
        return new PiecesFitted(StrictMath.log(LEAST_LEFT), 0, 1, 0);
    }

    /**
     * A task that nobody has estimated (rule 121): the hours of one of the crew's finished tasks, each as likely, of those that took
     * more than what is logged; without any, lognormal with the middle 12 h and a standard deviation of the logarithm of ln 2.5.
     *
     * @param finishedMinutes actual hands' minutes of the finished tasks of its stage, or of all if the stage has none
     * @param logged hands' minutes so far
     */
    public static TaskEffort guessed(double[] finishedMinutes, double logged) {
        return new Guessed(
                Arrays.stream(finishedMinutes)
                        .filter(minutes -> minutes > logged)
                        .sorted()
                        .toArray(),
                logged);
    }

    /** Minutes since the last piece come off the next piece, of which at least a quarter of an hour (or all) remains. */
    private static double lessSince(double left, double nextShare, double since) {
        double next = left * nextShare;
        return left - StrictMath.min(since, StrictMath.max(0, next - LEAST_LEFT));
    }

    private static final class Estimated extends TaskEffort {
        private final double mean;
        private final double m;
        private final double sigma;
        private final double logged;

        Estimated(double mean, double variance, double logged) {
            this.mean = mean;
            this.m = ThreePoint.logMean(mean, variance);
            this.sigma = StrictMath.sqrt(variance);
            this.logged = logged;
        }

        @Override
        public double left(double beta, double kappa, double u) {
            return ThreePoint.lognormalBeyond(m + beta, kappa * sigma, logged, u) - logged;
        }

        @Override
        public double expectedLeft(double betaN) {
            return logged > 0 ? left(betaN, 1, 0.5) : mean * StrictMath.exp(betaN);
        }
    }

    private static final class Said extends TaskEffort {
        private final double mean;
        private final double m;
        private final double sigma;
        private final double since;

        Said(double mean, double variance, double since) {
            this.mean = mean;
            this.m = ThreePoint.logMean(mean, variance);
            this.sigma = StrictMath.sqrt(variance);
            this.since = since;
        }

        @Override
        public double left(double beta, double kappa, double u) {
            return ThreePoint.lognormalBeyond(m, kappa * sigma, since, u) - since;
        }

        @Override
        public double expectedLeft(double betaN) {
            return since > 0 ? left(0, 1, 0.5) : mean;
        }
    }

    private static final class PiecesEstimated extends TaskEffort {
        private final double mean;
        private final double m;
        private final double sigma;
        private final double nextShare;
        private final double since;

        PiecesEstimated(double mean, double variance, double nextShare, double since) {
            this.mean = mean;
            this.m = ThreePoint.logMean(mean, variance);
            this.sigma = StrictMath.sqrt(variance);
            this.nextShare = nextShare;
            this.since = since;
        }

        @Override
        public double left(double beta, double kappa, double u) {
            return lessSince(StrictMath.exp(m + beta + kappa * sigma * Inverse.normal(u)), nextShare, since);
        }

        @Override
        public double expectedLeft(double betaN) {
            return lessSince(mean * StrictMath.exp(betaN), nextShare, since);
        }
    }

    private static final class PiecesFitted extends TaskEffort {
        private final double logMiddle;
        private final double sigma;
        private final double nextShare;
        private final double since;

        PiecesFitted(double logMiddle, double sigma, double nextShare, double since) {
            this.logMiddle = logMiddle;
            this.sigma = sigma;
            this.nextShare = nextShare;
            this.since = since;
        }

        @Override
        public double left(double beta, double kappa, double u) {
            return lessSince(StrictMath.exp(logMiddle + sigma * Inverse.normal(u)), nextShare, since);
        }

        @Override
        public double expectedLeft(double betaN) {
            return lessSince(StrictMath.exp(logMiddle + sigma * sigma / 2), nextShare, since);
        }
    }

    private static final class Guessed extends TaskEffort {
        private final double[] sorted;
        private final double logged;

        Guessed(double[] sorted, double logged) {
            this.sorted = sorted;
            this.logged = logged;
        }

        @Override
        public double left(double beta, double kappa, double u) {
            if (sorted.length > 0) {
                return sorted[(int) (u * sorted.length)] - logged;
            }
            return ThreePoint.lognormalBeyond(StrictMath.log(UNKNOWN_MEDIAN), StrictMath.log(UNKNOWN_FACTOR), logged, u)
                    - logged;
        }

        @Override
        public double expectedLeft(double betaN) {
            if (sorted.length > 0) {
                return Arrays.stream(sorted).average().orElseThrow() - logged;
            }
            double sigma = StrictMath.log(UNKNOWN_FACTOR);
            return logged > 0 ? left(0, 1, 0.5) : UNKNOWN_MEDIAN * StrictMath.exp(sigma * sigma / 2);
        }
    }
}
