package weekwright.web.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import weekwright.base.Money;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.files.year.YearFolder;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.Gift;
import weekwright.funds.LedgerEntry;
import weekwright.funds.TaxYear;
import weekwright.render.Formats;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The tax years of the books, the newest first, each with its folder for the accountant and what is missing in it. */
public final class FundsYearsPage implements Page {
    /** @param starts the first day of a tax year, in words */
    public record View(String starts, List<Line> lines) {}

    /**
     * A year.
     *
     * @param missing what is missing, in sentences
     */
    public record Line(
            int year,
            String name,
            String span,
            boolean running,
            long entries,
            Money income,
            Money cost,
            Money fees,
            List<String> missing) {}

    @Override
    public View show(Request request) {
        return request.read(read -> view(request, read));
    }

    /** The year of the address, in which the books are open. */
    static TaxYear year(Request request) {
        Settings settings = request.settings();
        String text = request.part("year");
        int first = TaxYear.in(settings.openingDate(), settings).year();
        int last = TaxYear.in(request.today(), settings).year();
        if (!text.matches("[0-9]{4}") || Integer.parseInt(text) < first || Integer.parseInt(text) > last) {
            throw new NotFound(
                    first == last
                            ? "The books have the year " + first + "."
                            : "The books have the years " + first + " to " + last + ".");
        }
        return TaxYear.of(Integer.parseInt(text), settings);
    }

    private static View view(Request request, Read read) {
        Settings settings = request.settings();
        int first = TaxYear.in(settings.openingDate(), settings).year();
        int last = TaxYear.in(request.today(), settings).year();
        List<Line> lines = new ArrayList<>();
        for (int year = last; year >= first; year--) {
            lines.add(line(request, read, TaxYear.of(year, settings)));
        }
        return new View(Formats.dayMonthLong(TaxYear.of(last, settings).from()), lines);
    }

    private static Line line(Request request, Read read, TaxYear year) {
        List<LedgerEntry> entries = YearFolder.entries(read, year);
        List<String> missing = new ArrayList<>();
        long open = openMonths(request, read, year);
        if (open > 0) {
            missing.add(Formats.sentence(Formats.counted(open, "month is", "months are")) + " not closed");
        }
        long payouts = entries.stream()
                .filter(entry -> entry.kind() == LedgerEntry.Kind.PAYOUT
                        && (entry.gross().isEmpty() || entry.fee().isEmpty()))
                .count();
        if (payouts > 0) {
            missing.add(
                    Formats.sentence(Formats.counted(payouts, "pay-out has", "pay-outs have")) + " no gross and fee");
        }
        long receipts = entries.stream()
                .filter(entry -> entry.isCost() && entry.receipt().isEmpty())
                .count();
        if (receipts > 0) {
            missing.add(Formats.sentence(Formats.counted(receipts, "cost has", "costs have")) + " no receipt");
        }
        long worth = Gift.in(read, year).stream()
                .filter(gift -> gift.value().isEmpty())
                .count();
        if (worth > 0) {
            missing.add(Formats.sentence(Formats.counted(worth, "gift has", "gifts have")) + " no worth");
        }
        long undated =
                Gift.all(read).stream().filter(gift -> gift.day().isEmpty()).count();
        if (undated > 0 && year.holds(request.today())) {
            missing.add(Formats.sentence(Formats.counted(undated, "gift has", "gifts have"))
                    + (undated == 1 ? " no day, so it is in no year" : " no day, so they are in no year"));
        }
        return new Line(
                year.year(),
                year.name(),
                dayAndYear(year.from()) + " to " + dayAndYear(year.to()),
                year.holds(request.today()),
                entries.size(),
                sum(entries, LedgerEntry::isIncome),
                sum(entries, LedgerEntry::isCost).negated(),
                entries.stream().flatMap(entry -> entry.fee().stream()).reduce(Money.ZERO, Money::plus),
                missing);
    }

    private static String dayAndYear(LocalDate day) {
        return Formats.dayMonthLong(day) + Formats.NBSP + day.getYear();
    }

    /** Months of the year that are over, lie in the books and are not closed. */
    private static long openMonths(Request request, Read read, TaxYear year) {
        Set<YearMonth> closed = new HashSet<>();
        ClosedMonthStore.TABLE.values(read).forEach(one -> closed.add(one.month()));
        YearMonth opening = YearMonth.from(request.settings().openingDate());
        YearMonth now = YearMonth.from(request.today());
        long open = 0;
        for (YearMonth month = YearMonth.from(year.from());
                !month.atDay(1).isAfter(year.to()) && month.isBefore(now);
                month = month.plusMonths(1)) {
            open += month.isBefore(opening) || closed.contains(month) ? 0 : 1;
        }
        return open;
    }

    private static Money sum(List<LedgerEntry> entries, Predicate<LedgerEntry> which) {
        return entries.stream().filter(which).map(LedgerEntry::amount).reduce(Money.ZERO, Money::plus);
    }
}
