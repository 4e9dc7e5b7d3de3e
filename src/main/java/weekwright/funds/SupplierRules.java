package weekwright.funds;

import static weekwright.base.RowRules.needed;

import java.util.Optional;
import java.util.regex.Pattern;
import weekwright.base.Problems;
import weekwright.base.Rows;

/** What must hold of a supplier, and among all of them. */
public final class SupplierRules {
    private static final Pattern TELEPHONE = Pattern.compile("[0-9 +()/-]*");
    private static final Pattern EMAIL = Pattern.compile("[^\\s@]+@[^\\s@]+");

    private SupplierRules() {}

    public static void check(Supplier one, Problems problems) {
        needed("name", one.name(), "write the name as the materials have it", problems);
        String telephone = one.telephone();
        if (!telephone.isEmpty()
                && (!TELEPHONE.matcher(telephone).matches()
                        || telephone.chars().filter(Character::isDigit).count() < 3)) {
            problems.fault(
                    "telephone",
                    telephone,
                    "is not a telephone number",
                    "write at least three digits, with spaces, +, ( ), - and / alone between them");
        }
        if (!one.email().isEmpty() && !EMAIL.matcher(one.email()).matches()) {
            problems.fault("email", one.email(), "is not an address for mail", "write one such as yard@mill.example");
        }
    }

    /** A name stands once; upper and lower case are the same. */
    static void check(Rows<Supplier> suppliers, Problems problems) {
        suppliers.twice(
                row -> Optional.of(Supplier.folded(row.name())),
                (later, first) -> suppliers.fault(
                        problems,
                        later,
                        "name",
                        suppliers.get(later).name(),
                        "stands twice, first in "
                                + suppliers.place(first, suppliers.get(first).id()),
                        "keep one of the two"));
    }
}
