package weekwright.web.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Money;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StageCosts;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** What stands and lies here is worth, for an insurer: the yard, materials that came and are not built in, the equipment. */
public final class BuildStockValuesPage implements Page {
    public record View(List<Part> parts, Money sum) {}

    /**
     * A part of the list.
     *
     * @param without how many have no worth written down
     */
    public record Part(String name, List<Line> lines, Money sum, long without) {}

    /** A thing; {@code value} empty where nobody wrote it down. */
    public record Line(String item, String amount, String place, Optional<Money> value) {}

    @Override
    public View show(Request request) {
        int digits = request.settings().moneyDigits();
        return request.read(read -> {
            List<Part> parts = List.of(
                    part("In the yard", yard(read)),
                    part("Here for a task, not built in yet", here(read, digits)),
                    part("Equipment", equipment(read)));
            return new View(
                    parts.stream().filter(part -> !part.lines().isEmpty()).toList(),
                    parts.stream().map(Part::sum).reduce(Money.ZERO, Money::plus));
        });
    }

    private static Part part(String name, List<Line> lines) {
        return new Part(
                name,
                lines,
                lines.stream().flatMap(line -> line.value().stream()).reduce(Money.ZERO, Money::plus),
                lines.stream().filter(line -> line.value().isEmpty()).count());
    }

    private static List<Line> yard(Read read) {
        List<Line> lines = new ArrayList<>();
        for (StockItem item : StockItemStore.TABLE.values(read)) {
            lines.add(new Line(
                    item.item(),
                    (item.quantity().map(q -> q.text() + " ").orElse("") + item.unit()).strip(),
                    item.place(),
                    item.value()));
        }
        return lines;
    }

    private static List<Line> here(Read read, int digits) {
        Set<String> open = new HashSet<>();
        for (Stored<Task> task : TaskStore.TABLE.list(read)) {
            if (task.value().isOpen()) {
                open.add(task.value().id().folded());
            }
        }
        List<Line> lines = new ArrayList<>();
        for (Material line : MaterialStore.TABLE.values(read)) {
            if (line.received().isPresent()
                    && line.stock().isEmpty()
                    && open.contains(line.task().folded())) {
                Money worth = StageCosts.worth(line, line.priceLikely(), digits);
                lines.add(new Line(
                        line.item(),
                        (line.quantity().map(q -> q.text() + " ").orElse("") + line.unit()).strip(),
                        "",
                        worth.equals(Money.ZERO) ? Optional.empty() : Optional.of(worth)));
            }
        }
        return lines;
    }

    private static List<Line> equipment(Read read) {
        List<Line> lines = new ArrayList<>();
        for (Equipment one : EquipmentStore.TABLE.values(read)) {
            lines.add(new Line(
                    one.name(),
                    one.quantityOrDefault() == 1 ? "" : String.valueOf(one.quantityOrDefault()),
                    "",
                    one.value()));
        }
        return lines;
    }
}
