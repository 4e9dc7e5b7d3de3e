package weekwright.web.funds;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import weekwright.build.Said;
import weekwright.db.Stored;
import weekwright.files.year.StatementSheet;
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
            return StatementSheet.of(lines, digits, source);
        });
        return Answer.sheet(csv, "statement-" + month + ".csv");
    }
}
