package weekwright.funds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.SettingsStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * What a stage costs, line by line: estimate (quantity with waste times the likely price, rounded half up once, rule 61),
 * committed (still to pay for what is ordered and has not come, rule 62), spent (by the books), left (not ordered yet). A line
 * that came owes nothing more; one of a task that is done or dropped, too, and one from the yard costs nothing (rule 136).
 *
 * @param lines material lines, then what is not listed yet, then what was paid beside them
 */
public record StageCosts(List<Line> lines) {
    /** What a line is. */
    public enum Kind {
        MATERIAL,
        ROUGH,
        OTHER
    }

    /**
     * One line.
     *
     * @param material its id, of a material line
     * @param entries rows of the books that paid it
     */
    public record Line(
            Kind kind,
            Optional<Id> material,
            String item,
            Money estimate,
            Money committed,
            Money spent,
            Money left,
            List<Stored<LedgerEntry>> entries) {}

    private static final StageCosts NONE = new StageCosts(List.of());

    public Money estimate() {
        return sum(Line::estimate);
    }

    public Money committed() {
        return sum(Line::committed);
    }

    public Money spent() {
        return sum(Line::spent);
    }

    public Money left() {
        return sum(Line::left);
    }

    /** What it comes to: spent, committed and left. */
    public Money together() {
        return spent().plus(committed()).plus(left());
    }

    private Money sum(Function<Line, Money> column) {
        return lines.stream().map(column).reduce(Money.ZERO, Money::plus);
    }

    /** Of every stage, by its id in lower case; one without lines is not among them. */
    public static Map<String, StageCosts> all(Read read) {
        int digits = SettingsStore.get(read).moneyDigits();
        EntryStages stages = new EntryStages(read);
        Map<String, List<Stored<LedgerEntry>>> paid = new HashMap<>();
        for (Stored<LedgerEntry> stored : LedgerEntryStore.TABLE.list(read)) {
            if (stored.value().kind() != LedgerEntry.Kind.COUNTED) {
                stages.of(stored.value())
                        .ifPresent(stage -> paid.computeIfAbsent(stage, s -> new ArrayList<>())
                                .add(stored));
            }
        }
        Map<String, List<Material>> materials = new HashMap<>();
        MaterialStore.TABLE
                .values(read)
                .forEach(line -> materials
                        .computeIfAbsent(line.task().folded(), t -> new ArrayList<>())
                        .add(line));
        Map<String, StageCosts> costs = new LinkedHashMap<>();
        for (Stored<Stage> stage : StageStore.inOrder(read)) {
            List<Task> tasks = TaskStore.ofStage(read, stage.value().id()).stream()
                    .map(Stored::value)
                    .toList();
            List<Line> lines = lines(
                    stage.value(),
                    tasks,
                    materials,
                    new ArrayList<>(paid.getOrDefault(stage.value().id().folded(), List.of())),
                    digits);
            if (!lines.isEmpty()) {
                costs.put(stage.value().id().folded(), new StageCosts(lines));
            }
        }
        return costs;
    }

    public static StageCosts of(Read read, Id stage) {
        return all(read).getOrDefault(stage.folded(), NONE);
    }

    /** @param paid all rows of the stage; those of its lines are taken out */
    private static List<Line> lines(
            Stage stage,
            List<Task> tasks,
            Map<String, List<Material>> materials,
            List<Stored<LedgerEntry>> paid,
            int digits) {
        List<Line> lines = new ArrayList<>();
        for (Task task : tasks) {
            for (Material material : materials.getOrDefault(task.id().folded(), List.of())) {
                List<Stored<LedgerEntry>> own = paid.stream()
                        .filter(row -> row.value()
                                .material()
                                .filter(id -> id.same(material.id()))
                                .isPresent())
                        .toList();
                paid.removeAll(own);
                lines.add(line(material, task, own, digits));
            }
        }
        boolean open = tasks.isEmpty() || tasks.stream().anyMatch(Task::isOpen);
        stage.roughCost()
                .filter(cost -> open && !cost.equals(Money.ZERO))
                .ifPresent(cost -> lines.add(
                        new Line(Kind.ROUGH, Optional.empty(), "", cost, Money.ZERO, Money.ZERO, cost, List.of())));
        if (!paid.isEmpty()) {
            lines.add(new Line(
                    Kind.OTHER,
                    Optional.empty(),
                    "",
                    Money.ZERO,
                    Money.ZERO,
                    sumPaid(paid),
                    Money.ZERO,
                    List.copyOf(paid)));
        }
        return lines;
    }

    private static Line line(Material material, Task task, List<Stored<LedgerEntry>> paid, int digits) {
        boolean dropped = task.dropped().isPresent() && material.ordered().isEmpty();
        Money estimate = dropped ? Money.ZERO : estimate(material, digits);
        Money spent = sumPaid(paid);
        Money rest = estimate.compareTo(spent) > 0 ? estimate.minus(spent) : Money.ZERO;
        boolean over = material.received().isPresent() || !task.isOpen();
        boolean ordered = material.ordered().isPresent();
        return new Line(
                Kind.MATERIAL,
                Optional.of(material.id()),
                material.item(),
                estimate,
                !over && ordered ? rest : Money.ZERO,
                spent,
                !over && !ordered ? rest : Money.ZERO,
                paid);
    }

    /** Rule 61, with the likely price. */
    static Money estimate(Material line, int digits) {
        return line.stock().isPresent() ? Money.ZERO : at(line, line.priceLikely(), digits);
    }

    /** What a line would cost at a price, or what it is said to be worth where none is known; from the yard, too. */
    public static Money worth(Material line, Optional<Quantity> price, int digits) {
        return price.isPresent() ? at(line, price, digits) : line.value().orElse(Money.ZERO);
    }

    private static Money at(Material line, Optional<Quantity> price, int digits) {
        if (price.isEmpty()) {
            return Money.ZERO;
        }
        BigDecimal waste = line.waste().orElse(Quantity.ZERO).value();
        return new Money(line.quantity()
                .orElse(Quantity.ONE)
                .value()
                .multiply(BigDecimal.valueOf(100).add(waste))
                .multiply(price.get().value())
                .movePointLeft(2)
                .movePointRight(digits)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    private static Money sumPaid(List<Stored<LedgerEntry>> paid) {
        return paid.stream().map(row -> row.value().amount().negated()).reduce(Money.ZERO, Money::plus);
    }
}
