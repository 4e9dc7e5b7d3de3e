package weekwright.web.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.RemoveEquipment;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Machines and sets of things: how many, what is dangerous about them, whether they can be used. */
public final class BuildEquipmentPage implements Page {
    public record View(List<Line> lines) {}

    /**
     * A line.
     *
     * @param standing whether it can be used, in words
     * @param late whether its inspection is overdue
     */
    public record Line(
            String id,
            String name,
            int quantity,
            String hazards,
            String standing,
            String inspect,
            boolean late,
            long tasks) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        return request.read(read -> new View(EquipmentStore.TABLE.values(read).stream()
                .map(one -> line(read, one, formats))
                .toList()));
    }

    private static Line line(Read read, Equipment one, Formats formats) {
        Optional<LocalDate> inspect = one.inspectBy();
        return new Line(
                one.id().value(),
                one.name(),
                one.quantityOrDefault(),
                Formats.list(HazardCodes.said(one.hazards().list())),
                standing(read, one, formats),
                inspect.map(day -> formats.dateShort(day) + formats.comingOrGone(day))
                        .orElse(""),
                inspect.map(day -> day.isBefore(formats.today())).orElse(false),
                RemoveEquipment.tasks(read, one.id()).stream()
                        .filter(task -> task.value().isOpen())
                        .count());
    }

    private static String standing(Read read, Equipment one, Formats formats) {
        Optional<String> after = one.readyAfter()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .filter(task -> task.value().done().isEmpty())
                .map(task -> "not before " + task.value().title());
        if (after.isPresent()) {
            return after.get();
        }
        if (one.downFrom().isEmpty()) {
            return "ready";
        }
        LocalDate from = one.downFrom().get();
        LocalDate back = from.plusDays(
                one.backLikely().map(days -> days.value().longValue()).orElse(0L));
        return back.isBefore(formats.today())
                ? "probably back"
                : "down from " + formats.dateShort(from) + ", back about " + formats.far(back);
    }
}
