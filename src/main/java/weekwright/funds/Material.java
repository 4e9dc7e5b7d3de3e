package weekwright.funds;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Dimensions;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * A take-off line: what a task needs, what it costs and where it stands.
 *
 * @param lot lines of one lot are parts of one delivery
 * @param waste percent bought on top
 * @param priceLow unit price in major units, up to four places; so too likely and high
 * @param atShare the share of the task from which on it is needed; nothing means from the start
 * @param leadLow calendar days from order to delivery
 * @param deposit percent paid when ordered
 * @param credit credit owed to a giver
 * @param dimensions what the quantity is built from
 * @param priceFrom where the price was got: a list, a call, an offer
 * @param priceOn when it was got
 * @param thanked when the giver was thanked
 */
public record Material(
        Id id,
        @Ref("tasks") Id task,
        String lot,
        String item,
        @Bounds(min = 0.0001) Optional<Quantity> quantity,
        String unit,
        @Bounds(min = 0, max = 100) Optional<Quantity> waste,
        @Bounds(min = 0) Optional<Quantity> priceLow,
        @Bounds(min = 0) Optional<Quantity> priceLikely,
        @Bounds(min = 0) Optional<Quantity> priceHigh,
        Optional<Source> source,
        @Ref("stock") Optional<Id> stock,
        String supplier,
        @Bounds(min = 0, max = 1) Optional<Quantity> atShare,
        @Bounds(min = 0, max = 3650) Optional<Quantity> leadLow,
        @Bounds(min = 0, max = 3650) Optional<Quantity> leadLikely,
        @Bounds(min = 0, max = 3650) Optional<Quantity> leadHigh,
        @Bounds(min = 0, max = 100) Optional<Quantity> deposit,
        Optional<LocalDate> cancelBy,
        Optional<LocalDate> ordered,
        Optional<LocalDate> promised,
        Optional<LocalDate> received,
        @Bounds(min = 0) Optional<Money> value,
        String credit,
        Optional<Dimensions> dimensions,
        String priceFrom,
        Optional<LocalDate> priceOn,
        Optional<LocalDate> thanked) {
    /** Where the material comes from. */
    public enum Source {
        BOUGHT,
        GIVEN,
        SALVAGED,
        OWN
    }

    public Source sourceOrDefault() {
        return source.orElse(Source.BOUGHT);
    }
}
