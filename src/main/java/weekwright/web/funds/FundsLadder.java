package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.forecast.Forecast;
import weekwright.forecast.Names;
import weekwright.render.Formats;
import weekwright.render.chart.Ladder;

/**
 * The rungs of the ladder: each order by its day, after those before it are paid. What is there on the day is its cost
 * less what the forecast says is short.
 */
final class FundsLadder {
    private static final int MOST = 10;
    private static final int MONTHS_TOLD = 9;
    /** How far a rung that is paid for passes through its post. */
    private static final double THROUGH = 1.06;

    /** Before the first forecast, of the ladder and of the stages. */
    static final String NOT_SAID = "There is no forecast yet, so nothing is said about what is covered.";

    private FundsLadder() {}

    /**
     * One order.
     *
     * @param late whether it should have gone out before today
     * @param shortSaid the middle of what is missing, in words; empty when nothing is
     */
    record Rung(
            String material,
            String what,
            String amount,
            String orderBySaid,
            boolean late,
            String svg,
            String shortSaid,
            String remark) {
        public boolean isShort() {
            return !shortSaid.isEmpty();
        }
    }

    static List<Rung> rungs(Forecast forecast, Names names, Formats formats) {
        List<Rung> rungs = new ArrayList<>();
        for (Forecast.Order order : forecast.orders()) {
            if (order.orderBy().isPresent() && order.amount().minor() > 0 && rungs.size() < MOST) {
                rungs.add(rung(order, names, formats));
            }
        }
        return rungs;
    }

    private static Rung rung(Forecast.Order order, Names names, Formats formats) {
        LocalDate day = order.orderBy().orElseThrow();
        boolean far = day.isAfter(formats.today().plusMonths(MONTHS_TOLD));
        long need = order.amount().minor();
        long middle = order.shortBy().p50().minor();
        long bad = order.shortBy().p90().minor();
        String svg =
                far ? Ladder.blank() : Ladder.rung(need, there(need, bad), there(need, middle), there(need, middle));
        return new Rung(
                order.material(),
                names.material(order.material()),
                formats.moneyForecast(need),
                formats.far(day) + formats.comingOrGone(day),
                day.isBefore(formats.today()),
                svg,
                middle > 0 && !far ? formats.moneyForecast(middle) : "",
                far ? "too far to say" : remark(middle, bad, formats));
    }

    private static String remark(long middle, long bad, Formats formats) {
        if (middle > 0) {
            return "on the day, and with bad luck " + formats.moneyForecast(bad);
        }
        return bad > 0
                ? "covered at even chances; with bad luck " + formats.moneyForecast(bad) + " short"
                : "covered, nine chances in ten";
    }

    private static double there(long need, long missing) {
        return missing == 0 ? need * THROUGH : need - missing;
    }
}
