package weekwright.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * Something that was given: it lies in the yard, or came for a task.
 *
 * @param stock whether it is kept as a thing in the yard, else as a material line
 * @param day when it came
 */
public record Gift(
        boolean stock,
        Id id,
        String item,
        Optional<Quantity> quantity,
        String unit,
        String from,
        Optional<LocalDate> day,
        Optional<Money> value,
        String credit,
        Optional<LocalDate> thanked) {

    /** All that came, the latest first; a line that is taken from the yard is there already. */
    public static List<Gift> all(Read read) {
        List<Gift> all = new ArrayList<>();
        for (StockItem item : StockItemStore.TABLE.values(read)) {
            if (item.given()) {
                all.add(of(item));
            }
        }
        for (Stored<Material> stored : MaterialStore.TABLE.list(read)) {
            Material line = stored.value();
            if (line.sourceOrDefault() == Material.Source.GIVEN
                    && line.stock().isEmpty()
                    && line.received().isPresent()) {
                all.add(of(line));
            }
        }
        all.sort(Comparator.comparing((Gift gift) -> gift.day().orElse(LocalDate.MIN))
                .reversed());
        return all;
    }

    /** Those that came in a tax year, the latest first. */
    public static List<Gift> in(Read read, TaxYear year) {
        return all(read).stream()
                .filter(gift -> gift.day().filter(year::holds).isPresent())
                .toList();
    }

    private static Gift of(StockItem item) {
        return new Gift(
                true,
                item.id(),
                item.item(),
                item.quantity(),
                item.unit(),
                item.from(),
                item.since(),
                item.value(),
                item.credit(),
                item.thanked());
    }

    private static Gift of(Material line) {
        return new Gift(
                false,
                line.id(),
                line.item(),
                line.quantity(),
                line.unit(),
                line.supplier(),
                line.received(),
                line.value(),
                line.credit(),
                line.thanked());
    }

    public String amount() {
        return (quantity.map(q -> q.text() + " ").orElse("") + unit).strip();
    }
}
