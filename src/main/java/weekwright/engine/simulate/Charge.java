package weekwright.engine.simulate;

import java.math.BigInteger;

/**
 * One charge of a pledge level: net = n (1 − declined) (amount (1 − fee) − fixed fee), at least 0, rounded half up once (rule 83).
 * Computed in whole numbers, percents to three decimals, so that halves are halves.
 *
 * @param parts net of one supporter in units of 10⁻¹⁰ minor units
 */
public record Charge(long parts) {
    /** Hundred percent in thousandths of a percent. */
    private static final long WHOLE = 100_000;

    private static final long PARTS_A_MINOR = WHOLE * WHOLE;

    /**
     * @param amountMinor a supporter's pledge, at most 10⁷ minor units
     * @param feePercent of the amount
     * @param feeFixedMinor on each charge
     * @param declinedPercent of the charges that fail
     */
    public static Charge of(long amountMinor, double feePercent, long feeFixedMinor, double declinedPercent) {
        long each = Math.subtractExact(
                Math.multiplyExact(amountMinor, WHOLE - thousandths(feePercent)),
                Math.multiplyExact(feeFixedMinor, WHOLE));
        return new Charge(Math.multiplyExact(Math.max(0, each), WHOLE - thousandths(declinedPercent)));
    }

    private static long thousandths(double percent) {
        return Math.round(percent * 1000);
    }

    /** Net of a charge on n supporters in minor units. */
    public long net(int n) {
        if (parts == 0 || n <= 0) {
            return 0;
        }
        if (n <= Long.MAX_VALUE / 2 / parts) {
            return (n * parts + PARTS_A_MINOR / 2) / PARTS_A_MINOR;
        }
        return BigInteger.valueOf(n)
                .multiply(BigInteger.valueOf(parts))
                .add(BigInteger.valueOf(PARTS_A_MINOR / 2))
                .divide(BigInteger.valueOf(PARTS_A_MINOR))
                .longValueExact();
    }
}
