package weekwright.funds;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Money;
import weekwright.base.Quantity;

/**
 * What lies in the yard.
 *
 * @param meantFor what it is kept for, where no line is taken from it yet
 * @param thanked when the giver was thanked
 * @param readyLow days from {@code since} until it is dry or ready
 */
public record StockItem(
        Id id,
        String item,
        String species,
        @Bounds(min = 0) Optional<Quantity> quantity,
        String unit,
        String place,
        Optional<LocalDate> since,
        Optional<Material.Source> source,
        String from,
        @Bounds(min = 0) Optional<Money> value,
        @Bounds(min = 0, max = 7300) Optional<Quantity> readyLow,
        @Bounds(min = 0, max = 7300) Optional<Quantity> readyLikely,
        @Bounds(min = 0, max = 7300) Optional<Quantity> readyHigh,
        String credit,
        @Lines @Bounds(max = 2000) String note,
        Optional<Moisture> moisture,
        String meantFor,
        Optional<LocalDate> thanked) {
    /** Whether timber is still wet. */
    public enum Moisture {
        WET,
        DRY
    }

    /** Whether it is wet and nobody has said when it is dry. */
    public boolean undated() {
        return moisture.filter(Moisture.WET::equals).isPresent() && readyLikely.isEmpty();
    }

    /** Whether somebody gave it. */
    public boolean given() {
        return source.filter(Material.Source.GIVEN::equals).isPresent();
    }
}
