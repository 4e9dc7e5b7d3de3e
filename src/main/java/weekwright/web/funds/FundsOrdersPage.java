package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.forecast.Forecast;
import weekwright.funds.Balance;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/** Every open order by stage and by day, what to do next, and what can still be stopped in a thin month. */
public final class FundsOrdersPage implements Page {
    /**
     * @param toOrder not ordered yet, by the forecast's order-by day
     * @param onOrder ordered and not here, by the day promised
     * @param from which forecast the days are from; empty without one
     * @param stoppable orders that can still be called off
     * @param again what comes again and costs money
     * @param apart money put by for tax, which covers nothing; empty without any
     */
    public record View(
            String lead,
            List<OpenOrders.Line> toOrder,
            List<OpenOrders.Line> onOrder,
            String from,
            List<Stop> stoppable,
            List<Again> again,
            String apart) {}

    /**
     * What calling an order off brings.
     *
     * @param until the last day, in words
     * @param freed what need not be paid then
     * @param lost what is paid and lost
     */
    public record Stop(String id, String item, String until, Money freed, Money lost) {}

    /**
     * What comes again.
     *
     * @param before the day of the next time, or with what it comes
     */
    public record Again(String id, String name, Money amount, String every, String before) {}

    @Override
    public View show(Request request) {
        Settings settings = request.settings();
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        return request.read(read -> {
            List<OpenOrders.Line> lines = OpenOrders.of(read, forecast, formats);
            return new View(
                    lead(lines, forecast.isPresent(), request.today()),
                    only(lines, false),
                    only(lines, true),
                    forecast.map(one -> from(one, formats)).orElse(""),
                    lines.stream()
                            .filter(line -> line.ordered() && line.bought())
                            .map(line -> stop(line, formats))
                            .toList(),
                    again(read, request.today(), formats),
                    apart(read, settings, formats));
        });
    }

    private static String lead(List<OpenOrders.Line> lines, boolean known, LocalDate today) {
        if (lines.isEmpty()) {
            return "Nothing is to be ordered and nothing is on order.";
        }
        LocalDate soon = known ? today.plusWeeks(4) : LocalDate.MAX;
        long due = lines.stream()
                .filter(line ->
                        !line.ordered() && !line.day().orElse(LocalDate.MAX).isAfter(soon))
                .count();
        long out = lines.stream().filter(OpenOrders.Line::ordered).count();
        long late = lines.stream().filter(line -> line.ordered() && line.late()).count();
        return Formats.sentence(Formats.counted(due, "line is", "lines are"))
                + (known ? " to go out within four weeks, " : " still to be ordered, ")
                + Formats.counted(out, "is", "are") + " on order"
                + (late > 0 ? ", " + Formats.counted(late, "of them late", "of them late") : "") + ".";
    }

    static String from(Forecast forecast, Formats formats) {
        return "The days to order by are from the forecast of " + formats.dateLong(forecast.asOf()) + ", "
                + Formats.count(forecast.trials(), "future") + " drawn with seed " + forecast.seed()
                + ": the day by which in one of five futures the work would wait for it, less the longest lead and the"
                + " margin.";
    }

    private static List<OpenOrders.Line> only(List<OpenOrders.Line> lines, boolean ordered) {
        return lines.stream().filter(line -> line.ordered() == ordered).toList();
    }

    private static Stop stop(OpenOrders.Line line, Formats formats) {
        String until = line.cancelBy()
                .map(day -> day.isBefore(formats.today())
                        ? "was " + formats.dateShort(day) + "; ask"
                        : "until " + formats.dateShort(day))
                .orElse("no day agreed; ask");
        return new Stop(line.id(), line.item(), until, line.toPay(), line.paid());
    }

    private static List<Again> again(Read read, LocalDate today, Formats formats) {
        List<Again> again = new ArrayList<>();
        for (RegularItem item : RegularItemStore.TABLE.values(read)) {
            boolean over = item.to().filter(day -> day.isBefore(today)).isPresent();
            if (item.amount().isNegative() && !over) {
                again.add(new Again(
                        item.id().value(),
                        item.name(),
                        item.amount().negated(),
                        FundsRegularPage.every(item),
                        item.every() == RegularItem.Every.EPISODE
                                ? "the next film"
                                : item.nextAfter(today).map(formats::dateShort).orElse("comes no more")));
            }
        }
        return again;
    }

    private static String apart(Read read, Settings settings, Formats formats) {
        List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(read);
        Money putBy = Balance.putBy(formats.today(), settings, ledger);
        if (putBy.minor() <= 0) {
            return "";
        }
        Money balance = Balance.on(formats.today(), settings, ledger);
        return "Of the " + formats.moneyExact(balance.minor()) + " in the account "
                + formats.moneyExact(putBy.minor()) + " is put by for tax and covers no order; "
                + formats.moneyExact(balance.minus(putBy).minor()) + " does.";
    }
}
