package weekwright.web.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import weekwright.forecast.Forecast;
import weekwright.funds.LedgerEntry;
import weekwright.funds.SupporterMonth;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.LineChart;
import weekwright.web.parts.Outlook;

/**
 * Supporters and what they bring, a year back as counted and booked and a year ahead as drawn, with the range of eight in ten.
 *
 * @param drawings SVG text: people, then money
 * @param tables the months ahead in figures
 * @param remark day, trials and seed; empty without a forecast
 */
public record SupportersAhead(List<String> drawings, List<AheadPicture.Table> tables, String remark) {
    private static final int MONTHS = 12;

    public SupportersAhead {
        drawings = List.copyOf(drawings);
        tables = List.copyOf(tables);
    }

    static SupportersAhead of(
            LocalDate today,
            Optional<Forecast> forecast,
            List<SupporterMonth> counts,
            List<LedgerEntry> ledger,
            Formats formats) {
        YearMonth now = YearMonth.from(today);
        List<Forecast.SupportersMonth> ahead = forecast.stream()
                .flatMap(one -> one.cash().supporters().stream())
                .filter(one -> one.month().isAfter(now))
                .limit(MONTHS)
                .toList();
        List<String> drawings = new ArrayList<>();
        List<AheadPicture.Balance> people = people(counts, now);
        if (!people.isEmpty() || !ahead.isEmpty()) {
            drawings.add(chart(
                    "supporters-ahead",
                    "Supporters on the first of each month, with the range of eight in ten",
                    today,
                    people,
                    ahead.stream()
                            .map(one -> fan(one, one.p10(), one.p50(), one.p90()))
                            .toList(),
                    surges(counts, people),
                    value -> Formats.grouped(Math.round(value))));
        }
        List<AheadPicture.Balance> money = money(ledger, now, today);
        if (!money.isEmpty() || !ahead.isEmpty()) {
            drawings.add(chart(
                    "income-ahead",
                    "Paid out in each month, with the range of eight in ten",
                    today,
                    money,
                    ahead.stream()
                            .map(one -> fan(
                                    one,
                                    one.paidOut().p10().minor(),
                                    one.paidOut().p50().minor(),
                                    one.paidOut().p90().minor()))
                            .toList(),
                    List.of(),
                    formats::moneyForecast));
        }
        return ahead.isEmpty()
                ? new SupportersAhead(drawings, List.of(), "")
                : new SupportersAhead(
                        drawings, List.of(table(ahead, formats)), Outlook.drawn(forecast.orElseThrow(), formats));
    }

    /** How many there were on the 1st of each month of the last year with a count. */
    private static List<AheadPicture.Balance> people(List<SupporterMonth> counts, YearMonth now) {
        List<AheadPicture.Balance> people = new ArrayList<>();
        started(counts, now).forEach((month, start) -> {
            if (!month.isBefore(now.minusMonths(MONTHS))) {
                people.add(new AheadPicture.Balance(month.atDay(1), start));
            }
        });
        return people;
    }

    /** Those of these months that one film filled. */
    private static List<LocalDate> surges(List<SupporterMonth> counts, List<AheadPicture.Balance> people) {
        return counts.stream()
                .filter(SupporterMonth::surge)
                .map(row -> row.month().atDay(1))
                .filter(day -> people.stream().anyMatch(one -> one.day().equals(day)))
                .distinct()
                .toList();
    }

    /** What was paid out in each month of the last year, from the first with a pay-out on. */
    private static List<AheadPicture.Balance> money(List<LedgerEntry> ledger, YearMonth now, LocalDate today) {
        List<AheadPicture.Balance> money = new ArrayList<>();
        for (int back = MONTHS; back > 0; back--) {
            long received = FundsIncome.received(ledger, now.minusMonths(back), today);
            if (received != 0 || !money.isEmpty()) {
                money.add(new AheadPicture.Balance(now.minusMonths(back).atDay(1), received));
            }
        }
        return money;
    }

    private static AheadPicture.Fan fan(Forecast.SupportersMonth one, double low, double middle, double high) {
        return new AheadPicture.Fan(one.month().atDay(1), low, middle, middle, middle, high);
    }

    private static AheadPicture.Table table(List<Forecast.SupportersMonth> ahead, Formats formats) {
        return new AheadPicture.Table(
                "Supporters on the first, and what is paid out in the month",
                List.of(
                        "Month",
                        "one in ten below",
                        "middle",
                        "one in ten above",
                        "paid out, one in ten below",
                        "paid out, middle",
                        "paid out, one in ten above"),
                ahead.stream()
                        .map(one -> List.of(
                                Formats.monthYear(one.month().atDay(1)),
                                Formats.grouped(one.p10()),
                                Formats.grouped(one.p50()),
                                Formats.grouped(one.p90()),
                                formats.moneyForecast(one.paidOut().p10().minor()),
                                formats.moneyForecast(one.paidOut().p50().minor()),
                                formats.moneyForecast(one.paidOut().p90().minor())))
                        .toList());
    }

    /** How many of all levels there were on the 1st of each month with a count, oldest first. */
    static Map<YearMonth, Long> started(List<SupporterMonth> counts, YearMonth now) {
        Map<YearMonth, Long> sums = new TreeMap<>();
        counts.stream()
                .filter(row -> !row.month().isAfter(now))
                .forEach(row -> sums.merge(row.month(), (long) row.start(), Math::addExact));
        return sums;
    }

    private static String chart(
            String id,
            String title,
            LocalDate today,
            List<AheadPicture.Balance> past,
            List<AheadPicture.Fan> fan,
            List<LocalDate> ringed,
            DoubleFunction<String> words) {
        return new LineChart(id, title, today, past, fan, List.of(), ringed, words).drawings();
    }
}
