package weekwright.web.funds;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.build.Said;
import weekwright.files.csv.SheetCsv;
import weekwright.forecast.Forecast;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/** Supporters and pay-outs by month, counted and to come, for a spreadsheet; every row says where it is from. */
public final class SupportersSheet implements Fragment {
    @Override
    public Answer answer(Request request) {
        int digits = request.settings().moneyDigits();
        String currency = ", amounts in " + request.settings().project().currency();
        YearMonth now = YearMonth.from(request.today());
        SheetCsv sheet = new SheetCsv(
                "month",
                "supporters",
                "joined",
                "left",
                "surge",
                "paid_out",
                "supporters_low",
                "supporters_middle",
                "supporters_high",
                "paid_out_low",
                "paid_out_middle",
                "paid_out_high",
                "source");
        request.read(read -> {
            List<SupporterMonth> counts = SupporterMonthStore.TABLE.values(read);
            List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(read);
            SupportersAhead.started(counts, now).forEach((month, start) -> {
                List<SupporterMonth> rows =
                        counts.stream().filter(row -> row.month().equals(month)).toList();
                sheet.figure(month.toString())
                        .figure(start.toString())
                        .figure(sum(rows.stream().map(SupporterMonth::joined).toList()))
                        .figure(sum(rows.stream().map(SupporterMonth::left).toList()))
                        .figure(rows.stream().anyMatch(SupporterMonth::surge) ? "yes" : "")
                        .figure(new Money(FundsIncome.received(ledger, month, request.today())).text(digits));
                for (int i = 0; i < 6; i++) {
                    sheet.figure("");
                }
                sheet.text("counted and booked by " + Said.day(request.today()) + currency)
                        .end();
            });
            return null;
        });
        Outlook.forecast(request).ifPresent(forecast -> {
            for (Forecast.SupportersMonth one : forecast.cash().supporters()) {
                if (one.month().isAfter(now)) {
                    sheet.figure(one.month().toString());
                    for (int i = 0; i < 5; i++) {
                        sheet.figure("");
                    }
                    sheet.figure(String.valueOf(one.p10()))
                            .figure(String.valueOf(one.p50()))
                            .figure(String.valueOf(one.p90()))
                            .figure(one.paidOut().p10().text(digits))
                            .figure(one.paidOut().p50().text(digits))
                            .figure(one.paidOut().p90().text(digits))
                            .text("forecast of " + Said.day(forecast.asOf()) + ", " + forecast.trials()
                                    + " futures, seed " + forecast.seed() + ", from one in ten below to one in ten"
                                    + " above" + currency)
                            .end();
                }
            }
        });
        return Answer.sheet(sheet.toString(), "supporters-" + request.today() + ".csv");
    }

    /** Empty where none of them is known. */
    private static String sum(List<Optional<Integer>> figures) {
        return figures.stream()
                .flatMap(Optional::stream)
                .map(Integer::longValue)
                .reduce(Long::sum)
                .map(String::valueOf)
                .orElse("");
    }
}
