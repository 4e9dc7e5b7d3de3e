package weekwright.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Calls an order off: the line is to be ordered again, what came back of the deposit goes into the books, and what was paid
 * stays there with the line's task but no longer counts towards the line, so that the next order is paid in full.
 */
public final class CancelMaterial {
    private CancelMaterial() {}

    /** @param lost what was paid and did not come back */
    public record Cancelled(Stored<Material> line, Money lost) {}

    /**
     * @param back what the supplier returned, in money that has reached the account
     * @param today in the project's zone
     */
    public static Cancelled cancel(Write write, Shown shown, LocalDate day, Optional<Money> back, LocalDate today)
            throws Rejected, Stale {
        Material line = MaterialChange.shown(write, shown);
        Problems problems = new Problems();
        MaterialChange.notReceived(line, problems);
        if (line.ordered().isEmpty()) {
            problems.fault("cancelled", line.item(), "is not ordered", "there is nothing to call off");
        }
        MaterialChange.mustBePast("cancelled", day, today, problems);
        MaterialChange.notBefore("cancelled", day, line.ordered(), "ordered", problems);
        Money paid = paid(write, line);
        back.filter(money -> money.minor() <= 0)
                .ifPresent(money -> problems.fault(
                        "back", "", "what came back is nothing or less", "write the amount, or leave it empty"));
        back.filter(money -> money.compareTo(paid) > 0)
                .ifPresent(money -> problems.fault(
                        "back",
                        "",
                        "more came back than the books have as paid for this line",
                        "enter the missing payment first, or write a smaller amount"));
        Faults.refuse(problems);
        String note = "Order of " + line.item() + " called off on " + Said.day(day) + ".";
        for (Stored<LedgerEntry> stored : payments(write, line)) {
            LedgerEntry free = apart(stored.value(), line, note);
            LedgerEntryStore.TABLE.update(write, stored.row(), stored.version(), free);
        }
        back.ifPresent(money -> LedgerEntryStore.TABLE.insert(
                write,
                apart(
                        Ledger.entry(
                                LedgerEntryStore.nextId(write),
                                day,
                                money,
                                LedgerEntry.Kind.REFUND,
                                "",
                                Optional.of(line),
                                line.supplier()),
                        line,
                        note)));
        Material open = MaterialChange.with(
                line, Map.of("ordered", Optional.empty(), "promised", Optional.empty(), "cancel_by", Optional.empty()));
        return new Cancelled(
                MaterialStore.TABLE.update(write, shown.row(), shown.version(), open),
                paid.minus(back.orElse(Money.ZERO)));
    }

    /** What the books have as paid for a line, refunds taken off. */
    public static Money paid(Read read, Material line) {
        return payments(read, line).stream()
                .map(entry -> entry.value().amount().negated())
                .reduce(Money.ZERO, Money::plus);
    }

    private static List<Stored<LedgerEntry>> payments(Read read, Material line) {
        return LedgerEntryStore.TABLE.where(read, "material", line.id().value());
    }

    private static LedgerEntry apart(LedgerEntry entry, Material line, String note) {
        var shape = LedgerEntryStore.TABLE.shape();
        LedgerEntry free = shape.with(entry, "material", Optional.empty());
        free = shape.with(free, "task", entry.task().or(() -> Optional.of(line.task())));
        return entry.note().contains(note) ? free : shape.with(free, "note", (entry.note() + "\n" + note).strip());
    }
}
