package weekwright.engine.simulate;

/**
 * Normal, Poisson and binomial numbers from one uniform by inverting the distribution function, so that a number moves monotonically
 * with the uniform and with the parameters. All through {@link StrictMath}: the same bits on every machine. Nothing is allocated.
 */
public final class Inverse {
    private static final double SQRT_HALF = 0.70710678118654752440;
    private static final double INVERSE_SQRT_PI = 0.56418958354775628695;
    private static final double HALF_LN_TWO_PI = 0.91893853320467274178;

    /** Below this mode the sum starts at 0; the first term is then above e^−200. */
    private static final int SUM_FROM_ZERO_BELOW = 64;

    /** A term this small against the largest one no longer moves a sum in double precision. */
    private static final double NEGLIGIBLE = 1e-20;

    private static final double[] LN_FACTORIAL = lnFactorials(128);

    private Inverse() {}

    /**
     * The standard normal quantile of u in (0, 1): algorithm AS 241, routine PPND16 (Wichura 1988, Applied Statistics 37:477–484),
     * relative error about 1e-16. For u near 1 use {@code -normal(upper tail)} to keep the accuracy of the small tail.
     */
    public static double normal(double u) {
        double q = u - 0.5;
        if (q >= -0.425 && q <= 0.425) {
            double r = 0.180625 - q * q;
            return q
                    * (((((((2.5090809287301226727e3 * r + 3.3430575583588128105e4) * r + 6.7265770927008700853e4) * r
                                                                                            + 4.5921953931549871457e4)
                                                                                    * r
                                                                            + 1.3731693765509461125e4)
                                                                    * r
                                                            + 1.9715909503065514427e3)
                                                    * r
                                            + 1.3314166789178437745e2)
                                    * r
                            + 3.3871328727963666080)
                    / (((((((5.2264952788528545610e3 * r + 2.8729085735721942674e4) * r + 3.9307895800092710610e4) * r
                                                                                            + 2.1213794301586595867e4)
                                                                                    * r
                                                                            + 5.3941960214247511077e3)
                                                                    * r
                                                            + 6.8718700749205790830e2)
                                                    * r
                                            + 4.2313330701600911252e1)
                                    * r
                            + 1.0);
        }
        double r = StrictMath.sqrt(-StrictMath.log(q < 0 ? u : 1 - u));
        double z;
        if (r <= 5) {
            r -= 1.6;
            z = (((((((7.74545014278341407640e-4 * r + 2.27238449892691845833e-2) * r + 2.41780725177450611770e-1) * r
                                                                                            + 1.27045825245236838258)
                                                                                    * r
                                                                            + 3.64784832476320460504)
                                                                    * r
                                                            + 5.76949722146069140550)
                                                    * r
                                            + 4.63033784615654529590)
                                    * r
                            + 1.42343711074968357734)
                    / (((((((1.05075007164441684324e-9 * r + 5.47593808499534494600e-4) * r + 1.51986665636164571966e-2)
                                                                                                    * r
                                                                                            + 1.48103976427480074590e-1)
                                                                                    * r
                                                                            + 6.89767334985100004550e-1)
                                                                    * r
                                                            + 1.67638483018380384940)
                                                    * r
                                            + 2.05319162663775882187)
                                    * r
                            + 1.0);
        } else {
            r -= 5;
            z = (((((((2.01033439929228813265e-7 * r + 2.71155556874348757815e-5) * r + 1.24266094738807843860e-3) * r
                                                                                            + 2.65321895265761230930e-2)
                                                                                    * r
                                                                            + 2.96560571828504891230e-1)
                                                                    * r
                                                            + 1.78482653991729133580)
                                                    * r
                                            + 5.46378491116411436990)
                                    * r
                            + 6.65790464350110377720)
                    / (((((((2.04426310338993978564e-15 * r + 1.42151175831644588870e-7) * r
                                                                                                            + 1.84631831751005468180e-5)
                                                                                                    * r
                                                                                            + 7.86869131145613259100e-4)
                                                                                    * r
                                                                            + 1.48753612908506148525e-2)
                                                                    * r
                                                            + 1.36929880922735805310e-1)
                                                    * r
                                            + 5.99832206555887937690e-1)
                                    * r
                            + 1.0);
        }
        return q < 0 ? -z : z;
    }

    /** The standard normal distribution function Φ(z); relative error under 2e-14 for z over −8, 5e-13 down to −37. */
    public static double normalBelow(double z) {
        return 0.5 * erfc(-z * SQRT_HALF);
    }

    /** 1 − erf x: rational approximations of Cody 1969, Mathematics of Computation 23:631–637. */
    static double erfc(double x) {
        double y = x < 0 ? -x : x;
        double tail;
        if (y <= 0.46875) {
            double s = y * y;
            double top = 1.85777706184603153e-1 * s;
            double bottom = s;
            top = (top + 3.16112374387056560) * s;
            bottom = (bottom + 2.36012909523441209e1) * s;
            top = (top + 1.13864154151050156e2) * s;
            bottom = (bottom + 2.44024637934444173e2) * s;
            top = (top + 3.77485237685302021e2) * s;
            bottom = (bottom + 1.28261652607737228e3) * s;
            return 1 - x * (top + 3.20937758913846947e3) / (bottom + 2.84423683343917062e3);
        } else if (y <= 4) {
            double top = 2.15311535474403846e-8 * y;
            double bottom = y;
            top = (top + 5.64188496988670089e-1) * y;
            bottom = (bottom + 1.57449261107098347e1) * y;
            top = (top + 8.88314979438837594) * y;
            bottom = (bottom + 1.17693950891312499e2) * y;
            top = (top + 6.61191906371416295e1) * y;
            bottom = (bottom + 5.37181101862009858e2) * y;
            top = (top + 2.98635138197400131e2) * y;
            bottom = (bottom + 1.62138957456669019e3) * y;
            top = (top + 8.81952221241769090e2) * y;
            bottom = (bottom + 3.29079923573345963e3) * y;
            top = (top + 1.71204761263407058e3) * y;
            bottom = (bottom + 4.36261909014324716e3) * y;
            top = (top + 2.05107837782607147e3) * y;
            bottom = (bottom + 3.43936767414372164e3) * y;
            tail = (top + 1.23033935479799725e3) / (bottom + 1.23033935480374942e3) * expOfMinusSquare(y);
        } else if (y < 27) {
            double s = 1 / (y * y);
            double top = 1.63153871373020978e-2 * s;
            double bottom = s;
            top = (top + 3.05326634961232344e-1) * s;
            bottom = (bottom + 2.56852019228982242) * s;
            top = (top + 3.60344899949804439e-1) * s;
            bottom = (bottom + 1.87295284992346725) * s;
            top = (top + 1.25781726111229246e-1) * s;
            bottom = (bottom + 5.27905102951428412e-1) * s;
            top = (top + 1.60837851487422766e-2) * s;
            bottom = (bottom + 6.05183413124413191e-2) * s;
            double rest = s * (top + 6.58749161529837803e-4) / (bottom + 2.33520497626869185e-3);
            tail = (INVERSE_SQRT_PI - rest) / y * expOfMinusSquare(y);
        } else {
            tail = 0;
        }
        return x < 0 ? 2 - tail : tail;
    }

    /** e^(−y²), the square split at sixteenths so that its rounding does not reach the exponent. */
    private static double expOfMinusSquare(double y) {
        double whole = Math.floor(y * 16) / 16;
        double rest = (y - whole) * (y + whole);
        return StrictMath.exp(-whole * whole) * StrictMath.exp(-rest);
    }

    /**
     * The smallest k whose Poisson probability of at most k events reaches u.
     *
     * @param mean at least 0; 0 gives 0
     */
    public static int poisson(double mean, double u) {
        if (!(mean > 0)) {
            return 0;
        }
        int mode = (int) mean;
        int k = 0;
        double term;
        if (mode < SUM_FROM_ZERO_BELOW) {
            term = StrictMath.exp(-mean);
        } else {
            k = mode;
            term = StrictMath.exp(mode * StrictMath.log(mean) - mean - lnFactorial(mode));
            double negligible = term * NEGLIGIBLE;
            while (k > 0 && term > negligible) {
                term *= k / mean;
                k--;
            }
        }
        double sum = term;
        while (sum < u) {
            k++;
            term *= mean / k;
            sum += term;
            if (k > mode && term < NEGLIGIBLE) {
                break;
            }
        }
        return k;
    }

    /**
     * The smallest k whose binomial probability of at most k of n reaches u.
     *
     * @param n at least 0
     * @param chance of each; at most 0 gives 0, at least 1 gives n
     */
    public static int binomial(int n, double chance, double u) {
        if (n <= 0 || !(chance > 0)) {
            return 0;
        }
        if (chance >= 1) {
            return n;
        }
        double odds = chance / (1 - chance);
        int mode = (int) ((n + 1.0) * chance);
        int k = 0;
        double term = n * StrictMath.log1p(-chance);
        if (mode < SUM_FROM_ZERO_BELOW && term > -600) {
            term = StrictMath.exp(term);
        } else {
            k = StrictMath.min(mode, n);
            term = StrictMath.exp(lnFactorial(n)
                    - lnFactorial(k)
                    - lnFactorial(n - k)
                    + k * StrictMath.log(chance)
                    + (n - k) * StrictMath.log1p(-chance));
            double negligible = term * NEGLIGIBLE;
            while (k > 0 && term > negligible) {
                term *= k / ((n - k + 1) * odds);
                k--;
            }
        }
        double sum = term;
        while (sum < u && k < n) {
            term *= (n - k) * odds / (k + 1);
            k++;
            sum += term;
            if (k > mode && term < NEGLIGIBLE) {
                break;
            }
        }
        return k;
    }

    /** ln n!: exact sums up to 127, then Stirling's series (error under 1e-15 of the value). */
    static double lnFactorial(int n) {
        if (n < LN_FACTORIAL.length) {
            return LN_FACTORIAL[n];
        }
        double x = n + 1.0;
        double inverseSquare = 1 / (x * x);
        return (x - 0.5) * StrictMath.log(x)
                - x
                + HALF_LN_TWO_PI
                + (1.0 / 12 - inverseSquare * (1.0 / 360 - inverseSquare / 1260)) / x;
    }

    private static double[] lnFactorials(int count) {
        double[] sums = new double[count];
        for (int n = 2; n < count; n++) {
            sums[n] = sums[n - 1] + StrictMath.log(n);
        }
        return sums;
    }
}
