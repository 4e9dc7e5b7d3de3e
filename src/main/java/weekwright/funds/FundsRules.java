package weekwright.funds;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rows;

/** The rules over many rows of the money side. */
public final class FundsRules {
    private FundsRules() {}

    /** @param digits of the project's currency, to write amounts with */
    public static void check(FundsRows rows, int digits, Problems problems) {
        months(rows.supporters(), problems);
        ledger(rows.ledger(), digits, problems);
        stock(rows.materials(), rows.stock(), problems);
        closed(rows.closed(), rows.statements(), problems);
        SupplierRules.check(rows.suppliers(), problems);
    }

    /** One row a month and level; a start that does not follow from the month before is trusted and told (rule 79). */
    private static void months(Rows<SupporterMonth> months, Problems problems) {
        record Key(String level, YearMonth month) {}
        months.twice(
                row -> Optional.of(new Key(row.level().folded(), row.month())),
                (later, first) -> months.fault(
                        problems,
                        later,
                        "month",
                        months.get(later).month().toString(),
                        "stands twice for " + months.get(later).level() + ", first in "
                                + months.place(first, "another row"),
                        "keep one of the two"));
        Map<Key, SupporterMonth> byMonth = months.by(row -> new Key(row.level().folded(), row.month()));
        for (int i = 0; i < months.size(); i++) {
            SupporterMonth row = months.get(i);
            SupporterMonth before =
                    byMonth.get(new Key(row.level().folded(), row.month().minusMonths(1)));
            if (before != null) {
                long expected = before.end();
                if (expected != row.start()) {
                    months.remark(
                            problems,
                            i,
                            "start",
                            String.valueOf(row.start()),
                            "does not follow from " + before.month() + ", which ended with " + before.start() + " + "
                                    + before.joined().orElse(0) + " - "
                                    + before.left().orElse(0) + " = " + expected,
                            "look at both months; the start is trusted");
                }
            }
        }
    }

    private static void ledger(Rows<LedgerEntry> ledger, int digits, Problems problems) {
        ledger.twice(
                row -> row.kind() == LedgerEntry.Kind.COUNTED
                        ? Optional.of(List.of(row.account(), row.date()))
                        : Optional.empty(),
                (later, first) -> ledger.remark(
                        problems,
                        later,
                        "kind",
                        "counted",
                        "stands twice for " + ledger.get(later).date() + ", first as "
                                + ledger.get(first).id(),
                        "the later row is used"));
        long moved = 0;
        int last = -1;
        for (int i = 0; i < ledger.size(); i++) {
            if (ledger.get(i).kind() == LedgerEntry.Kind.TRANSFER) {
                moved = Math.addExact(moved, ledger.get(i).amount().minor());
                last = i;
            }
        }
        if (moved != 0) {
            ledger.remark(
                    problems,
                    last,
                    "amount",
                    ledger.get(last).amount().text(digits),
                    "is the last of transfers that do not cancel out; together they are "
                            + new Money(moved).text(digits),
                    "write both sides of each");
        }
    }

    /** A month is closed once, and only a closed one has a statement. */
    private static void closed(Rows<ClosedMonth> months, Rows<StatementLine> lines, Problems problems) {
        months.twice(
                row -> Optional.of(row.month()),
                (later, first) -> months.fault(
                        problems,
                        later,
                        "month",
                        months.get(later).month().toString(),
                        "is closed twice, first in " + months.place(first, "another row"),
                        "keep one of the two"));
        Map<YearMonth, ClosedMonth> closed = months.by(ClosedMonth::month);
        for (int i = 0; i < lines.size(); i++) {
            if (!closed.containsKey(lines.get(i).month())) {
                lines.fault(
                        problems,
                        i,
                        "month",
                        lines.get(i).month().toString(),
                        "has a statement and is not closed",
                        "add it to closed-months.csv, or take its statement out");
            }
        }
    }

    /** More taken out of the yard than lies there, as far as the units are the same. */
    private static void stock(Rows<Material> lines, Rows<StockItem> stock, Problems problems) {
        Map<Id, StockItem> items = stock.by(StockItem::id);
        Map<Id, BigDecimal> taken = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            Material line = lines.get(i);
            StockItem item = line.stock().map(items::get).orElse(null);
            if (item == null || item.quantity().isEmpty() || !item.unit().equals(line.unit())) {
                continue;
            }
            BigDecimal sum =
                    taken.merge(item.id(), line.quantity().orElse(Quantity.ZERO).value(), BigDecimal::add);
            if (sum.compareTo(item.quantity().get().value()) > 0) {
                lines.remark(
                        problems,
                        i,
                        "stock",
                        item.id().value(),
                        "has " + item.quantity().get() + " " + item.unit() + ", and the lines up to here take "
                                + new Quantity(sum),
                        "take less, or buy the rest");
            }
        }
    }
}
