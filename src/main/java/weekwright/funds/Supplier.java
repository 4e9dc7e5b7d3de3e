package weekwright.funds;

import java.util.Locale;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;

/**
 * Who is rung up for what is to be bought.
 *
 * @param name as the take-off lines write it; upper and lower case are the same
 */
public record Supplier(
        Id id,
        String name,
        @Bounds(max = 40) String telephone,
        String email,
        @Lines @Bounds(max = 2000) String remarks) {

    /** A name as it is compared. */
    public static String folded(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** The number as a link dials it: digits, and a plus at its head; empty without a number. */
    public String dialled() {
        String digits = telephone.replaceAll("[^0-9]", "");
        return telephone.strip().startsWith("+") ? "+" + digits : digits;
    }
}
