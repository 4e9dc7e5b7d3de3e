package weekwright.funds;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** What the verbs on one standing material line have in common. */
final class MaterialChange {
    private MaterialChange() {}

    static Material shown(Read read, Shown shown) throws Stale {
        Optional<Stored<Material>> now = MaterialStore.TABLE.find(read, shown.row());
        if (now.isEmpty() || now.get().version() != shown.version()) {
            throw new Stale(MaterialStore.TABLE.name(), shown.row(), now.map(stored -> stored));
        }
        return now.get().value();
    }

    static Material with(Material line, Map<String, Optional<?>> columns) {
        Material changed = line;
        for (Map.Entry<String, Optional<?>> column : columns.entrySet()) {
            changed = MaterialStore.TABLE.shape().with(changed, column.getKey(), column.getValue());
        }
        return changed;
    }

    static void notReceived(Material line, Problems problems) {
        line.received()
                .ifPresent(day -> problems.fault(
                        "", line.item(), "was received on " + Said.day(day), "nothing more is to come of it"));
    }

    static void mustBePast(String column, LocalDate day, LocalDate today, Problems problems) {
        if (day.isAfter(today)) {
            problems.fault(column, Said.day(day), "is after today, " + Said.day(today), "write the day it happened");
        }
    }

    static void notBefore(String column, LocalDate day, Optional<LocalDate> first, String what, Problems problems) {
        first.filter(day::isBefore)
                .ifPresent(start -> problems.fault(
                        column,
                        Said.day(day),
                        "is before it was " + what + " on " + Said.day(start),
                        "write a later day"));
    }

    static void someMoney(Optional<Money> paid, Problems problems) {
        paid.filter(money -> money.minor() <= 0)
                .ifPresent(money -> problems.fault(
                        "paid", "", "what was paid is nothing or less", "write the amount, or leave it empty"));
    }

    static void pay(Write write, LocalDate day, Optional<Money> paid, Material line) {
        paid.ifPresent(money ->
                LedgerEntryStore.TABLE.insert(write, Ledger.paid(LedgerEntryStore.nextId(write), day, money, line)));
    }
}
