package weekwright.web.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.build.Task;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.render.Formats;

/** Material lines with how they stand. */
public final class StageMaterials {
    private StageMaterials() {}

    /**
     * A line.
     *
     * @param amount quantity and unit
     * @param standing in hand, on order, to be ordered by …
     * @param open whether it has still to come
     * @param late whether its day is past
     */
    public record Line(
            String id, String item, String task, String amount, String standing, boolean open, boolean late) {}

    /** The lines of these tasks, what is late first, then what has to come, then what is in hand. */
    static List<Line> of(Read read, List<Task> tasks, Optional<Forecast> forecast, Formats formats) {
        List<Line> lines = new ArrayList<>();
        for (Task task : tasks) {
            for (Stored<Material> stored : MaterialStore.ofTask(read, task.id())) {
                lines.add(line(stored.value(), task.title(), forecast, formats));
            }
        }
        lines.sort(Comparator.comparing((Line line) -> !line.late()).thenComparing(line -> !line.open()));
        return lines;
    }

    static Line line(Material line, String task, Optional<Forecast> forecast, Formats formats) {
        String amount = line.quantity().map(q -> q.text()).orElse("") + " " + line.unit();
        boolean there = line.received().isPresent()
                || line.sourceOrDefault() == Material.Source.OWN
                        && line.leadLikely().isEmpty();
        Optional<Forecast.Order> order = forecast.flatMap(f -> f.order(line.id().value()));
        boolean late = !there
                && (line.ordered().isPresent()
                        ? line.promised()
                                .map(day -> day.isBefore(formats.today()))
                                .orElse(false)
                        : order.flatMap(Forecast.Order::orderBy)
                                .map(day -> day.isBefore(formats.today()))
                                .orElse(false));
        return new Line(
                line.id().value(),
                line.item(),
                task,
                amount.strip(),
                standing(line, there, late, order, formats),
                !there,
                late);
    }

    private static String standing(
            Material line, boolean there, boolean late, Optional<Forecast.Order> order, Formats formats) {
        if (there) {
            return line.received()
                    .map(day -> "received " + formats.dateShort(day))
                    .orElse("in hand");
        }
        if (line.stock().isPresent()) {
            return "from stock";
        }
        String asked = line.sourceOrDefault() == Material.Source.BOUGHT ? "ordered" : "asked for";
        if (line.ordered().isPresent()) {
            String promised = line.promised()
                    .map(day -> (late ? ", was promised for " : ", promised for ")
                            + formats.dateShort(day)
                            + formats.comingOrGone(day))
                    .orElse(", no day promised");
            return asked + " " + formats.dateShort(line.ordered().get()) + promised;
        }
        String day = order.flatMap(Forecast.Order::orderBy)
                .map(by -> (late ? "; the day was " : "; by ") + formats.dateShort(by) + formats.comingOrGone(by))
                .orElse("");
        return "not " + asked + " yet" + day;
    }

    /** "2 late, 3 to come"; empty without lines. */
    static String remark(List<Line> lines) {
        long late = lines.stream().filter(Line::late).count();
        long open = lines.stream().filter(line -> line.open() && !line.late()).count();
        if (lines.isEmpty()) {
            return "";
        }
        if (late + open == 0) {
            return "all in hand";
        }
        return (late > 0 ? late + " late" : "")
                + (late > 0 && open > 0 ? ", " : "")
                + (open > 0 ? open + " to come" : "");
    }
}
