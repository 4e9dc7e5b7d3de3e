package weekwright.funds;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a supplier, or changes one. */
public final class SaveSupplier {
    private SaveSupplier() {}

    /** @param shown the row that is changed; empty adds */
    public static Stored<Supplier> save(Write write, Optional<Shown> shown, Supplier one) throws Rejected, Stale {
        Faults.refuse(check(write, one));
        return shown.isPresent()
                ? SupplierStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), one)
                : SupplierStore.TABLE.insert(write, one);
    }

    /** Everything that the rules say of such a supplier. */
    public static Problems check(Read read, Supplier one) {
        Problems problems = new Problems();
        SupplierRules.check(one, problems);
        Supplier other = SupplierStore.byName(read).get(Supplier.folded(one.name()));
        if (other != null && !other.id().equals(one.id())) {
            problems.fault("name", one.name(), "stands already", "change that one, or write another name");
        }
        return problems;
    }
}
