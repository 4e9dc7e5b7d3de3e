package weekwright.web.funds;

import java.nio.charset.StandardCharsets;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.build.Said;
import weekwright.db.Stored;
import weekwright.files.csv.SheetCsv;
import weekwright.funds.ClosedMonth;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.StatementLine;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** A month's statement for a spreadsheet, in which no text runs as a formula; every row says where it is from. */
public final class MonthSheet implements Fragment {
    @Override
    public Answer answer(Request request) {
        YearMonth month = FundsMonthPage.month(request);
        int digits = request.settings().moneyDigits();
        String csv = request.read(read -> {
            Optional<ClosedMonth> closed = ClosedMonthStore.find(read, month).map(Stored::value);
            List<StatementLine> lines = closed.isPresent()
                    ? ClosedMonthStore.lines(read, month).stream()
                            .map(Stored::value)
                            .toList()
                    : FundsMonthPage.now(read, month);
            String source = request.settings().project().name() + ", statement of " + Said.month(month)
                    + closed.map(one -> ", closed on " + Said.day(one.closed()))
                            .orElse(", not closed, as of " + Said.day(request.today()))
                    + ", amounts in " + request.settings().project().currency();
            return csv(lines, digits, source);
        });
        return new Answer.Body(
                200,
                "text/csv; charset=utf-8",
                csv.getBytes(StandardCharsets.UTF_8),
                Map.of(
                        "Cache-Control",
                        "no-store",
                        "Content-Disposition",
                        "attachment; filename=\"statement-" + month + ".csv\""));
    }

    static String csv(List<StatementLine> lines, int digits, String source) {
        SheetCsv sheet = new SheetCsv("month", "part", "what", "amount", "gross", "fee", "hours", "count", "source");
        for (StatementLine line : lines) {
            sheet.figure(line.month().toString())
                    .figure(Codec.word(line.part()))
                    .text(line.name())
                    .figure(line.amount().map(money -> money.text(digits)).orElse(""))
                    .figure(line.gross()
                            .map((Money money) -> money.text(digits))
                            .orElse(""))
                    .figure(line.fee().map(money -> money.text(digits)).orElse(""))
                    .figure(line.hours().map(Hours::text).orElse(""))
                    .figure(line.count().map(String::valueOf).orElse(""))
                    .text(source)
                    .end();
        }
        return sheet.toString();
    }
}
