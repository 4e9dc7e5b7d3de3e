package weekwright.engine.simulate;

import java.time.LocalDate;
import java.util.Arrays;

/** Other income and costs, regular items and the cost of material lines, in whole minor units. */
public final class MoneyDraws {
    private static final int MOST_MONTHS = 24;

    private MoneyDraws() {}

    /**
     * The nearest whole number, halves away from zero as in bookkeeping. What lies less than 1e-14 of the value under a half counts
     * as the half: 3 × 1.15 × 1010 is 3484.5, in binary a little less.
     */
    public static long halfUp(double minor) {
        double magnitude = StrictMath.abs(minor);
        long whole = (long) Math.floor(magnitude * (1 + 1e-14) + 0.5);
        return minor < 0 ? -whole : whole;
    }

    /**
     * The month totals that other income and costs are drawn from (rule 86): whole months from the first ledger row to the month
     * before the as-of day's, empty months 0, at most the last 24, oldest first.
     *
     * @param asOf as-of day, epoch day
     * @param firstRow date of the first ledger row of any kind, epoch day
     * @param date of each row of other income or other cost not marked once, epoch day
     * @param amountMinor of each, signed
     */
    public static long[] otherMonths(int asOf, int firstRow, int[] date, long[] amountMinor) {
        LocalDate first = LocalDate.ofEpochDay(firstRow);
        int from = month(first) + (first.getDayOfMonth() == 1 ? 0 : 1);
        int end = month(LocalDate.ofEpochDay(asOf));
        from = Math.max(from, end - MOST_MONTHS);
        if (from >= end) {
            return new long[0];
        }
        long[] totals = new long[end - from];
        for (int i = 0; i < date.length; i++) {
            int month = month(LocalDate.ofEpochDay(date[i]));
            if (month >= from && month < end) {
                totals[month - from] += amountMinor[i];
            }
        }
        return totals;
    }

    private static int month(LocalDate day) {
        return day.getYear() * 12 + day.getMonthValue() - 1;
    }

    /** Months in the order in which {@link #drawMonth} reads them. */
    public static long[] sorted(long[] totals) {
        long[] sorted = totals.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** One of the months, each as likely: the inverse of their distribution, growing with u; 0 if there are none. */
    public static long drawMonth(long[] sortedTotals, double u) {
        return sortedTotals.length == 0 ? 0 : sortedTotals[(int) (u * sortedTotals.length)];
    }

    /**
     * One occurrence of a regular item (rule 87): normal about the amount, its standard deviation in percent of it, never past 0.
     *
     * @param amountMinor signed: income above 0, cost under it
     */
    public static long drawRegular(long amountMinor, double spreadPercent, double u) {
        if (!(spreadPercent > 0)) {
            return amountMinor;
        }
        double factor = StrictMath.max(0, 1 + spreadPercent / 100 * Inverse.normal(u));
        return halfUp(amountMinor * factor);
    }

    /**
     * Cost of a material line (rule 61): quantity × (1 + waste) × unit price, rounded half up once, not to whole units.
     *
     * @param unitPriceMinor may have a fraction
     */
    public static long lineCost(double quantity, double wastePercent, double unitPriceMinor) {
        return halfUp(quantity * (1 + wastePercent / 100) * unitPriceMinor);
    }

    /** The deposit of a cost, rounded half up; the balance is the rest (rule 61). */
    public static long deposit(long costMinor, double depositPercent) {
        return halfUp(costMinor * depositPercent / 100);
    }
}
