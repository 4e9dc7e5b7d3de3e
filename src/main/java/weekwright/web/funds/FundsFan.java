package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.build.Settings;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.funds.Balance;
import weekwright.funds.LedgerEntry;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.LineChart;
import weekwright.render.chart.MoneyPicture;
import weekwright.web.parts.MoneyAhead;

/**
 * The money ahead, drawn: against what must be ordered, if nothing more were bought; and the balance as it will be with orders,
 * regular items and wages paid, with what is put by for tax as a second line.
 *
 * @param against SVG text of the fan against the orders
 * @param balance SVG text of the balance
 * @param tables the same figures
 * @param dotted whether the second line is drawn
 * @param putBy what is put by now, in words; empty where nothing is
 */
public record FundsFan(String against, String balance, List<AheadPicture.Table> tables, boolean dotted, String putBy) {
    private static final int WEEKS_BACK = 8;
    private static final int WEEKS = 52;
    private static final int EVERY_TABLE_WEEKS = 4;

    public FundsFan {
        tables = List.copyOf(tables);
    }

    static FundsFan of(Forecasts.Shown shown, Settings settings, List<LedgerEntry> ledger, Formats formats) {
        Forecast forecast = shown.forecast();
        LocalDate today = forecast.asOf();
        AheadPicture.Cash cash = new MoneyAhead(forecast, shown.names()).cash(settings, ledger, WEEKS_BACK);
        List<Forecast.CashWeek> weeks =
                forecast.cash().weeks().stream().limit(WEEKS).toList();
        List<Forecast.PutByWeek> putBy =
                forecast.cash().putBy().stream().limit(weeks.size()).toList();
        boolean any = putBy.stream().anyMatch(week -> week.p50().minor() > 0);
        long kept = Balance.putBy(today, settings, ledger).minor();
        LineChart balance = new LineChart(
                "balance",
                "The balance by week with everything paid, with the range of eight in ten"
                        + (any ? ", and what is put by for tax" : ""),
                today,
                cash.past(),
                weeks.stream().map(FundsFan::fan).toList(),
                List.of(new LineChart.Level(
                        "reserve " + formats.moneyForecast(settings.reserve().minor()),
                        settings.reserve().minor())),
                List.of(),
                formats::moneyForecast,
                any
                        ? putBy.stream()
                                .map(week -> new AheadPicture.Balance(
                                        week.date(), week.p50().minor()))
                                .toList()
                        : List.of(),
                "put by for tax");
        return new FundsFan(
                new MoneyPicture(cash, today, formats, WEEKS_BACK, WEEKS).drawings(),
                balance.drawings(),
                List.of(table(weeks, any ? putBy : List.of(), formats)),
                any,
                kept == 0
                        ? ""
                        : formats.money(kept) + " of what is in the bank is put by for tax: "
                                + settings.putByPercent()
                                + " % of what was paid out since the last tax payment. It is never counted as cover.");
    }

    private static AheadPicture.Fan fan(Forecast.CashWeek week) {
        double middle = week.p50().minor();
        return new AheadPicture.Fan(
                week.date(),
                week.p10().minor(),
                middle,
                middle,
                middle,
                week.p90().minor());
    }

    /** @param putBy week by week, maybe of fewer weeks; empty where nothing is put by */
    private static AheadPicture.Table table(
            List<Forecast.CashWeek> weeks, List<Forecast.PutByWeek> putBy, Formats formats) {
        List<String> heads = new ArrayList<>(List.of("Sunday", "one in ten below", "middle", "one in ten above"));
        if (!putBy.isEmpty()) {
            heads.add("put by for tax");
        }
        List<List<String>> rows = new ArrayList<>();
        for (int w = 0; w < weeks.size(); w += EVERY_TABLE_WEEKS) {
            Forecast.CashWeek week = weeks.get(w);
            List<String> row = new ArrayList<>(List.of(
                    formats.dateShort(week.date()),
                    formats.moneyForecast(week.p10().minor()),
                    formats.moneyForecast(week.p50().minor()),
                    formats.moneyForecast(week.p90().minor())));
            if (!putBy.isEmpty()) {
                row.add(
                        w < putBy.size()
                                ? formats.moneyForecast(putBy.get(w).p50().minor())
                                : "");
            }
            rows.add(row);
        }
        return new AheadPicture.Table("Balance with everything paid, every fourth Sunday", heads, rows);
    }
}
