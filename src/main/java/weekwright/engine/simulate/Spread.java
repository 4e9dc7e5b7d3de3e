package weekwright.engine.simulate;

import weekwright.engine.Inputs;

/**
 * A range as a lognormal number with the three-point mean and deviation, its logarithm's mean and deviation computed once
 * (rule 26: waits, link waits, leads, prices and edit hours, without the effort ratio; deviation 0 means that value). What received
 * lines teach of prices and leads (rule 124) comes as β and κ.
 */
record Spread(double mean, double mu, double sigma) {
    static Spread of(Inputs.Range range) {
        double mean = range.mean();
        double deviation = range.deviation();
        if (!(mean > 0) || !(deviation > 0)) {
            return new Spread(mean, 0, 0);
        }
        double v = ThreePoint.logVariance(mean, deviation);
        return new Spread(mean, ThreePoint.logMean(mean, v), StrictMath.sqrt(v));
    }

    double draw(double u) {
        return sigma > 0 ? StrictMath.exp(mu + sigma * Inverse.normal(u)) : mean;
    }

    /** Given that it is more than {@code beyond}; without spread the value itself, which may be less. */
    double drawBeyond(double beyond, double u) {
        return sigma > 0 ? ThreePoint.lognormalBeyond(mu, sigma, beyond, u) : mean;
    }

    /** e^β times as much, its spread κ times as wide. */
    double draw(double u, double kappa, double beta) {
        return sigma > 0 ? StrictMath.exp(mu + beta + kappa * sigma * Inverse.normal(u)) : mean * StrictMath.exp(beta);
    }

    double drawBeyond(double beyond, double u, double kappa, double beta) {
        return sigma > 0
                ? ThreePoint.lognormalBeyond(mu + beta, kappa * sigma, beyond, u)
                : mean * StrictMath.exp(beta);
    }

    /** The number read with the u of a trial, or its mean where the plan is made with expected values. */
    double take(double u, boolean expected) {
        return expected ? mean : draw(u);
    }
}
