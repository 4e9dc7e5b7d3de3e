package weekwright.web.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import weekwright.base.Money;
import weekwright.build.Settings;
import weekwright.funds.Balance;
import weekwright.funds.LedgerEntry;
import weekwright.funds.SupporterMonth;
import weekwright.render.Formats;

/** The books by month: what stood at first, what came and went, what stands at the end. */
final class FundsMonths {
    private FundsMonths() {}

    /**
     * A month.
     *
     * @param counted by how much counted balances differed from the books; it closes the sum
     * @param supportersCounted whether there is a count of its supporters, without which nothing is known of them
     */
    record Month(
            YearMonth month,
            boolean soFar,
            Money opening,
            Money pledges,
            Money receipts,
            Money running,
            Money materials,
            Money counted,
            Money closing,
            long joined,
            long left,
            long people,
            boolean supportersCounted) {
        public LocalDate first() {
            return month.atDay(1);
        }
    }

    /** A line of the table: its name and a text a month. */
    record Row(String name, List<String> texts, boolean sum) {}

    static List<Month> of(
            LocalDate today, int count, Settings settings, List<LedgerEntry> ledger, List<SupporterMonth> supporters) {
        List<Month> months = new ArrayList<>();
        for (int back = count - 1; back >= 0; back--) {
            YearMonth month = YearMonth.from(today).minusMonths(back);
            if (month.atEndOfMonth().isBefore(settings.openingDate())) {
                continue;
            }
            LocalDate end = month.atEndOfMonth().isAfter(today) ? today : month.atEndOfMonth();
            Money opening = month.atDay(1).isAfter(settings.openingDate())
                    ? Balance.on(month.atDay(1).minusDays(1), settings, ledger)
                    : settings.openingCash();
            Money closing = Balance.on(end, settings, ledger);
            List<LedgerEntry> rows = ledger.stream()
                    .filter(entry -> YearMonth.from(entry.date()).equals(month)
                            && !entry.date().isAfter(end)
                            && !entry.date().isBefore(settings.openingDate())
                            && entry.kind() != LedgerEntry.Kind.COUNTED)
                    .toList();
            Money pledges = sum(rows, entry -> entry.kind() == LedgerEntry.Kind.PAYOUT);
            Money materials = sum(rows, entry -> entry.kind() == LedgerEntry.Kind.MATERIAL);
            Money receipts = sum(rows, entry -> other(entry) && !entry.amount().isNegative());
            Money running = sum(rows, entry -> other(entry) && entry.amount().isNegative());
            List<SupporterMonth> counts =
                    supporters.stream().filter(row -> row.month().equals(month)).toList();
            months.add(new Month(
                    month,
                    end.equals(today) && !today.equals(month.atEndOfMonth()),
                    opening,
                    pledges,
                    receipts,
                    running,
                    materials,
                    closing.minus(
                            opening.plus(pledges).plus(receipts).plus(running).plus(materials)),
                    closing,
                    counts.stream().mapToLong(row -> row.joined().orElse(0)).sum(),
                    counts.stream().mapToLong(row -> row.left().orElse(0)).sum(),
                    counts.stream().mapToLong(SupporterMonth::end).sum(),
                    !counts.isEmpty()));
        }
        return months;
    }

    private static boolean other(LedgerEntry entry) {
        return entry.kind() != LedgerEntry.Kind.PAYOUT && entry.kind() != LedgerEntry.Kind.MATERIAL;
    }

    private static Money sum(List<LedgerEntry> rows, Predicate<LedgerEntry> which) {
        return rows.stream().filter(which).map(LedgerEntry::amount).reduce(Money.ZERO, Money::plus);
    }

    static List<Row> rows(List<Month> months, Formats formats) {
        List<Row> rows = new ArrayList<>();
        rows.add(row(
                "Opening balance",
                months,
                month -> formats.money(month.opening().minor()),
                false));
        rows.add(row("Pledges received", months, month -> money(month.pledges(), formats), false));
        rows.add(row("Other receipts", months, month -> money(month.receipts(), formats), false));
        rows.add(row("Running and other costs", months, month -> money(month.running(), formats), false));
        rows.add(row("Materials", months, month -> money(month.materials(), formats), false));
        if (months.stream().anyMatch(month -> month.counted().minor() != 0)) {
            rows.add(row("Found when counting", months, month -> money(month.counted(), formats), false));
        }
        rows.add(row(
                "Closing balance",
                months,
                month -> formats.money(month.closing().minor()),
                true));
        rows.add(row(
                "Supporters joined, left",
                months,
                month -> month.supportersCounted() ? month.joined() + ", " + month.left() : "–",
                false));
        rows.add(row(
                "Supporters at the end",
                months,
                month -> month.supportersCounted() ? Long.toString(month.people()) : "–",
                false));
        return rows;
    }

    private static String money(Money money, Formats formats) {
        return money.minor() == 0 ? "–" : formats.money(money.minor());
    }

    private static Row row(String name, List<Month> months, Function<Month, String> text, boolean sum) {
        return new Row(name, months.stream().map(text).toList(), sum);
    }
}
