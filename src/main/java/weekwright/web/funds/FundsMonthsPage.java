package weekwright.web.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Money;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.BooksMoved;
import weekwright.funds.ClosedMonth;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.StatementLine;
import weekwright.funds.SupporterMonthStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Every month of the books, the newest first: what came, what went, what was there at its end, and whether it is closed. */
public final class FundsMonthsPage implements Page {
    /** @param some whether anything is in the books */
    public record View(String lead, boolean some, List<Line> lines) {}

    /**
     * A month.
     *
     * @param standing closed on a day, to be closed, or so far
     * @param moved by how much the books moved since it was closed, and since when; empty where they did not
     */
    public record Line(
            String month,
            LocalDate first,
            String standing,
            String moved,
            boolean due,
            Money in,
            Money out,
            Money end) {}

    @Override
    public View show(Request request) {
        return request.read(read -> view(request, read));
    }

    private static View view(Request request, Read read) {
        Settings settings = request.settings();
        Formats formats = request.formats();
        List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(read);
        Map<YearMonth, Stored<ClosedMonth>> closed = new HashMap<>();
        ClosedMonthStore.TABLE.list(read).forEach(one -> closed.put(one.value().month(), one));
        YearMonth now = YearMonth.from(request.today());
        int count = Math.toIntExact(
                Math.max(0, YearMonth.from(settings.openingDate()).until(now, ChronoUnit.MONTHS)) + 1);
        List<Line> lines = new ArrayList<>();
        for (FundsMonths.Month month :
                FundsMonths.of(request.today(), count, settings, ledger, SupporterMonthStore.TABLE.values(read))) {
            Stored<ClosedMonth> one = closed.get(month.month());
            boolean due = one == null && month.month().isBefore(now);
            lines.add(
                    0,
                    new Line(
                            month.month().toString(),
                            month.first(),
                            one != null
                                    ? "closed " + formats.dateShort(one.value().closed())
                                    : due ? "to be closed" : "so far",
                            one == null ? "" : moved(request, read, one, ledger, formats),
                            due,
                            month.pledges().plus(month.receipts()),
                            month.running().plus(month.materials()),
                            month.closing()));
        }
        long due = lines.stream().filter(Line::due).count();
        return new View(
                due == 0
                        ? "Every month that is over is closed."
                        : Formats.sentence(Formats.counted(due, "month is", "months are")) + " to be closed.",
                !ledger.isEmpty(),
                lines);
    }

    /** "since 26 November 2026: costs €40.00 more, at its end €40.00 less". */
    private static String moved(
            Request request, Read read, Stored<ClosedMonth> closed, List<LedgerEntry> ledger, Formats formats) {
        List<StatementLine> kept = ClosedMonthStore.lines(read, closed.value().month()).stream()
                .map(Stored::value)
                .toList();
        BooksMoved moved = BooksMoved.of(closed.value().month(), kept, request.settings(), ledger);
        if (moved.isNothing()) {
            return "";
        }
        List<String> said = new ArrayList<>();
        more("income", moved.income(), formats, said);
        more("costs", moved.cost().negated(), formats, said);
        more("neither of the two", moved.apart(), formats, said);
        more("at its end", moved.end(), formats, said);
        return BooksMoved.since(read, closed)
                        .map(at -> "since " + Said.day(FundsMonthPage.day(request, at)))
                        .orElse("since then")
                + ": " + String.join(", ", said);
    }

    private static void more(String what, Money by, Formats formats, List<String> said) {
        if (!by.equals(Money.ZERO)) {
            said.add(what + " " + formats.moneyExact(Math.abs(by.minor())) + (by.isNegative() ? " less" : " more"));
        }
    }
}
