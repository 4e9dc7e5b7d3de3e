package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StageCosts;
import weekwright.render.Formats;

/** The material lines that are still to be ordered or still to come, with their day and what to do next. */
final class OpenOrders {
    private OpenOrders() {}

    /**
     * A line.
     *
     * @param ordered whether the order is out
     * @param bought whether it costs money; else it is asked for
     * @param day order-by day of the forecast, or the day promised
     * @param toPay still to pay; all of it while it is not ordered
     * @param paid by the books
     * @param next what to do, as a sentence
     */
    record Line(
            String id,
            String item,
            String amount,
            String task,
            String supplier,
            boolean ordered,
            boolean bought,
            Optional<LocalDate> day,
            boolean late,
            Money toPay,
            Money paid,
            Optional<LocalDate> cancelBy,
            String next) {}

    /** The lines in the order of their days, those without a day last. */
    static List<Line> of(Read read, Optional<Forecast> forecast, Formats formats) {
        Map<String, StageCosts.Line> costs = new HashMap<>();
        StageCosts.all(read)
                .values()
                .forEach(stage ->
                        stage.lines().forEach(line -> line.material().ifPresent(id -> costs.put(id.folded(), line))));
        Map<String, Task> tasks = new HashMap<>();
        TaskStore.TABLE.values(read).forEach(task -> tasks.put(task.id().folded(), task));
        List<Line> lines = new ArrayList<>();
        for (Stored<Material> stored : MaterialStore.TABLE.list(read)) {
            Material line = stored.value();
            Task task = tasks.get(line.task().folded());
            if (task != null && open(line, task)) {
                lines.add(
                        line(line, task, Optional.ofNullable(costs.get(line.id().folded())), forecast, formats));
            }
        }
        lines.sort(Comparator.comparing(line -> line.day().orElse(LocalDate.MAX)));
        return lines;
    }

    private static boolean open(Material line, Task task) {
        return line.received().isEmpty()
                && line.stock().isEmpty()
                && line.sourceOrDefault() != Material.Source.OWN
                && task.isOpen();
    }

    private static Line line(
            Material line, Task task, Optional<StageCosts.Line> cost, Optional<Forecast> forecast, Formats formats) {
        boolean ordered = line.ordered().isPresent();
        boolean bought = line.sourceOrDefault() == Material.Source.BOUGHT;
        Optional<Forecast.Order> order = forecast.flatMap(f -> f.order(line.id().value()));
        Optional<LocalDate> day = ordered ? line.promised() : order.flatMap(Forecast.Order::orderBy);
        boolean late = day.filter(by -> by.isBefore(formats.today())).isPresent();
        return new Line(
                line.id().value(),
                line.item(),
                (line.quantity().map(Quantity::text).orElse("") + " " + line.unit()).strip(),
                task.title(),
                line.supplier(),
                ordered,
                bought,
                day,
                late,
                cost.map(one -> one.committed().plus(one.left())).orElse(Money.ZERO),
                cost.map(StageCosts.Line::spent).orElse(Money.ZERO),
                line.cancelBy(),
                next(ordered, bought, day, late, order, formats));
    }

    private static String next(
            boolean ordered,
            boolean bought,
            Optional<LocalDate> day,
            boolean late,
            Optional<Forecast.Order> order,
            Formats formats) {
        if (ordered) {
            return day.isEmpty() ? "Ask for a day." : late ? "Ask where it is." : "Wait for it.";
        }
        String verb = bought ? "Order it" : "Ask for it";
        long missing = order.map(one -> one.shortBy().p50().minor()).orElse(0L);
        String money = bought && missing > 0
                ? " " + formats.moneyForecast(missing) + (late ? " is missing." : " is missing by then.")
                : "";
        return (day.isEmpty() ? verb + " in good time." : late ? verb + " now." : verb + " by then.") + money;
    }
}
