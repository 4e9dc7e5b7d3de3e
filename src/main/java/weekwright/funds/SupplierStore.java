package weekwright.funds;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import weekwright.base.Rows;
import weekwright.db.Read;
import weekwright.db.Table;

/** Where suppliers are kept: the table {@code suppliers}. */
public final class SupplierStore {
    public static final Table<Supplier> TABLE = new Table<>("suppliers", Supplier.class);

    private SupplierStore() {}

    /** All of them by their folded names. */
    public static Map<String, Supplier> byName(Read read) {
        return Rows.of(TABLE.values(read)).by(one -> Supplier.folded(one.name()));
    }

    /** The names that lines to buy use and that have no telephone number, each once, in the order of the alphabet. */
    public static Collection<String> withoutTelephone(Read read) {
        Map<String, Supplier> known = byName(read);
        Map<String, String> names = new TreeMap<>();
        for (Material line : MaterialStore.TABLE.values(read)) {
            String folded = Supplier.folded(line.supplier());
            boolean bought = line.sourceOrDefault() == Material.Source.BOUGHT && !folded.isEmpty();
            if (bought
                    && (!known.containsKey(folded)
                            || known.get(folded).telephone().isEmpty())) {
                names.putIfAbsent(folded, line.supplier());
            }
        }
        return names.values();
    }
}
