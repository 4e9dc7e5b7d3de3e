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
        List<AheadPicture.Balance> people = new ArrayList<>();
        started(counts, now).forEach((month, start) -> {
            if (!month.isBefore(now.minusMonths(MONTHS))) {
                people.add(new AheadPicture.Balance(month.atDay(1), start));
            }
        });
        List<LocalDate> surges = counts.stream()
                .filter(SupporterMonth::surge)
                .map(row -> row.month().atDay(1))
                .filter(day -> people.stream().anyMatch(one -> one.day().equals(day)))
                .distinct()
                .toList();
        List<AheadPicture.Balance> money = new ArrayList<>();
        for (int back = MONTHS; back > 0; back--) {
            long received = FundsIncome.received(ledger, now.minusMonths(back), today);
            if (received != 0 || !money.isEmpty()) {
                money.add(new AheadPicture.Balance(now.minusMonths(back).atDay(1), received));
            }
        }
        List<Forecast.SupportersMonth> ahead = forecast.stream()
                .flatMap(one -> one.cash().supporters().stream())
                .filter(one -> one.month().isAfter(now))
                .limit(MONTHS)
                .toList();
        List<AheadPicture.Fan> peopleFan = new ArrayList<>();
        List<AheadPicture.Fan> moneyFan = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Forecast.SupportersMonth one : ahead) {
            LocalDate day = one.month().atDay(1);
            Forecast.PaidOut paid = one.paidOut();
            peopleFan.add(new AheadPicture.Fan(day, one.p10(), one.p50(), one.p50(), one.p50(), one.p90()));
            double middle = paid.p50().minor();
            moneyFan.add(new AheadPicture.Fan(
                    day, paid.p10().minor(), middle, middle, middle, paid.p90().minor()));
            rows.add(List.of(
                    Formats.monthYear(day),
                    Formats.grouped(one.p10()),
                    Formats.grouped(one.p50()),
                    Formats.grouped(one.p90()),
                    formats.moneyForecast(paid.p10().minor()),
                    formats.moneyForecast(middle),
                    formats.moneyForecast(paid.p90().minor())));
        }
        List<String> drawings = new ArrayList<>();
        if (!people.isEmpty() || !peopleFan.isEmpty()) {
            drawings.add(chart(
                    "supporters-ahead",
                    "Supporters on the first of each month, with the range of eight in ten",
                    today,
                    people,
                    peopleFan,
                    surges,
                    value -> Formats.grouped(Math.round(value))));
        }
        if (!money.isEmpty() || !moneyFan.isEmpty()) {
            drawings.add(chart(
                    "income-ahead",
                    "Paid out in each month, with the range of eight in ten",
                    today,
                    money,
                    moneyFan,
                    List.of(),
                    formats::moneyForecast));
        }
        return new SupportersAhead(
                drawings,
                rows.isEmpty()
                        ? List.of()
                        : List.of(new AheadPicture.Table(
                                "Supporters on the first, and what is paid out in the month",
                                List.of(
                                        "Month",
                                        "one in ten below",
                                        "middle",
                                        "one in ten above",
                                        "paid out, one in ten below",
                                        "paid out, middle",
                                        "paid out, one in ten above"),
                                rows)),
                rows.isEmpty() ? "" : Outlook.drawn(forecast.orElseThrow(), formats));
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
