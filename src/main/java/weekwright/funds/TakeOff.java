package weekwright.funds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import weekwright.base.Dimensions;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Refused;

/** The quantity of a take-off line, made from its dimensions. */
public final class TakeOff {
    private TakeOff() {}

    /**
     * Fills quantity and unit from the dimensions. A quantity that stands from before goes with changed dimensions; one that
     * was typed beside them and differs is a fault, but for a part of a delivery.
     *
     * @param before the line as it was kept; empty for a new one
     */
    public static Material filled(Optional<Material> before, Material line, boolean imperial, Problems problems) {
        if (line.dimensions().isEmpty()) {
            return line;
        }
        Dimensions dimensions = line.dimensions().get();
        Material named = line;
        if (line.unit().isBlank()) {
            Optional<String> usual = dimensions.usualUnit(imperial);
            if (usual.isEmpty()) {
                problems.fault(
                        "unit",
                        "",
                        "is missing, and the dimensions can be read in several ways",
                        "write what is bought: m, m2, m3, ft, ft2, bf, kg, lb, pc");
                return line;
            }
            named = MaterialStore.TABLE.shape().with(line, "unit", usual.get());
        }
        try {
            Quantity made = dimensions.make(named.unit()).amount();
            boolean stands = before.filter(old -> old.quantity().equals(line.quantity())
                            && !(old.dimensions().equals(line.dimensions())
                                    && old.unit().equals(line.unit())))
                    .isPresent();
            if (line.quantity().isEmpty() || stands) {
                return MaterialStore.TABLE.shape().with(named, "quantity", Optional.of(made));
            }
            if (line.lot().isEmpty() && !line.quantity().get().equals(made)) {
                problems.fault(
                        "quantity",
                        line.quantity().get().text(),
                        "is not the " + amount(made, named.unit()) + " that the dimensions make",
                        "leave it empty, or leave the dimensions empty");
            }
        } catch (Refused refused) {
            problems.add(Problem.fault("dimensions", dimensions.text(), refused));
        }
        return named;
    }

    /** That the dimensions make what the line says; another quantity is odd but possible. */
    static void check(Material line, Problems problems) {
        if (line.dimensions().isEmpty()) {
            return;
        }
        try {
            Quantity made = line.dimensions().get().make(line.unit()).amount();
            if (line.lot().isEmpty() && line.quantity().filter(made::equals).isEmpty()) {
                problems.remark(
                        "quantity",
                        line.quantity().map(Quantity::text).orElse(""),
                        "is not the " + amount(made, line.unit()) + " that the dimensions make",
                        "write " + made + ", or change the dimensions");
            }
        } catch (Refused refused) {
            problems.add(Problem.fault("dimensions", line.dimensions().get().text(), refused));
        }
    }

    /** What has to be bought: the quantity with its waste on top. */
    public static Optional<Quantity> withWaste(Material line) {
        return line.quantity()
                .flatMap(net -> line.waste()
                        .map(waste -> new Quantity(net.value()
                                .multiply(BigDecimal.valueOf(100).add(waste.value()))
                                .movePointLeft(2)
                                .setScale(4, RoundingMode.HALF_EVEN))));
    }

    private static String amount(Quantity quantity, String unit) {
        return (quantity.text() + " " + unit).strip();
    }
}
