package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.forecast.Forecast;
import weekwright.forecast.Names;
import weekwright.render.Formats;
import weekwright.render.chart.Ladder;

/**
 * The rungs of the ladder: each order by its day, after those before it are paid. What is there on the day is the
 * forecast's cash without purchases, less the reserve and the earlier orders.
 */
final class FundsLadder {
    private static final int MOST = 10;

    private FundsLadder() {}

    /**
     * One order.
     *
     * @param shortSaid the middle of what is missing, in words; empty when nothing is
     */
    record Rung(
            String material,
            String what,
            String amount,
            String orderBySaid,
            String svg,
            String shortSaid,
            String remark) {
        public boolean isShort() {
            return !shortSaid.isEmpty();
        }
    }

    static List<Rung> rungs(Forecast forecast, Names names, Money reserve, Formats formats) {
        List<Rung> rungs = new ArrayList<>();
        long earlier = 0;
        for (Forecast.Order order : forecast.orders()) {
            if (order.orderBy().isEmpty() || order.amount().minor() <= 0) {
                continue;
            }
            if (rungs.size() < MOST) {
                rungs.add(rung(forecast, order, names, reserve.minor() + earlier, formats));
            }
            earlier = Math.addExact(earlier, order.amount().minor());
        }
        return rungs;
    }

    private static Rung rung(Forecast forecast, Forecast.Order order, Names names, long before, Formats formats) {
        LocalDate day = order.orderBy().orElseThrow();
        boolean far = formats.far(day).equals(Formats.monthYear(day))
                || day.isAfter(formats.today().plusMonths(9));
        Optional<Forecast.UnspentWeek> week = forecast.cash().weeksUnspent().stream()
                .filter(one -> !one.date().isBefore(day))
                .findFirst();
        String svg = far || week.isEmpty()
                ? Ladder.blank()
                : Ladder.rung(
                        order.amount().minor(),
                        week.get().p10().minor() - before,
                        week.get().p50().minor() - before,
                        week.get().p90().minor() - before);
        long middle = order.shortBy().p50().minor();
        long bad = order.shortBy().p90().minor();
        String remark = far
                ? "too far to say"
                : middle > 0
                        ? "on the day, and with bad luck " + formats.moneyForecast(bad)
                        : bad > 0
                                ? "covered at even chances; with bad luck " + formats.moneyForecast(bad) + " short"
                                : "covered, nine chances in ten";
        return new Rung(
                order.material(),
                names.material(order.material()),
                formats.moneyForecast(order.amount().minor()),
                formats.far(day),
                svg,
                middle > 0 && !far ? formats.moneyForecast(middle) : "",
                remark);
    }
}
