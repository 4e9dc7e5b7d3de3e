package weekwright.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.MoveStage;
import weekwright.build.SaveStage;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Makes a second stage of one: its tasks that are not dropped, the links among them and their materials, under new ids, right
 * after it. What happened stays with the first: hours, days, orders; so do days that were set and stock that was taken.
 */
public final class DuplicateStage {
    private static final Shape<Task> TASK = Shape.of(Task.class);
    private static final List<String> TASK_FACTS =
            List.of("not_before", "booked", "left", "left_on", "aside_until", "started", "done", "dropped");
    private static final List<String> MATERIAL_FACTS =
            List.of("stock", "cancel_by", "ordered", "promised", "received", "value", "thanked");

    private DuplicateStage() {}

    /**
     * @param name of the copy
     * @param today the day on which its tasks are added
     */
    public static Stored<Stage> duplicate(Write write, Stored<Stage> stage, String name, LocalDate today)
            throws Rejected, Stale {
        Shape<Stage> shape = Shape.of(Stage.class);
        Stage copy = shape.with(stage.value(), "id", StageStore.nextId(write, name));
        Stored<Stage> kept = SaveStage.save(write, Optional.empty(), shape.with(copy, "name", name));
        order(write, stage, kept);
        Map<String, Id> ids = new LinkedHashMap<>();
        List<Task> tasks = TaskStore.ofStage(write, stage.value().id()).stream()
                .map(Stored::value)
                .filter(task -> task.dropped().isEmpty())
                .toList();
        for (Task task : tasks) {
            Id id = TaskStore.nextId(write, kept.value().id());
            ids.put(task.id().folded(), id);
            TaskStore.TABLE.insert(write, fresh(task, id, kept.value().id(), ids, today));
            for (Stored<Material> line : MaterialStore.ofTask(write, task.id())) {
                MaterialStore.TABLE.insert(write, fresh(write, line.value(), id));
            }
        }
        for (Task task : tasks) {
            for (Stored<Link> link : LinkStore.before(write, task.id())) {
                Id after = ids.get(link.value().after().folded());
                if (after != null) {
                    Link own = Shape.of(Link.class)
                            .with(link.value(), "task", ids.get(task.id().folded()));
                    LinkStore.TABLE.insert(write, Shape.of(Link.class).with(own, "after", after));
                }
            }
        }
        return kept;
    }

    private static void order(Write write, Stored<Stage> stage, Stored<Stage> copy) throws Stale {
        List<Stored<Stage>> all = new ArrayList<>(StageStore.inOrder(write));
        all.removeIf(one -> one.row() == copy.row());
        int place = 0;
        while (all.get(place).row() != stage.row()) {
            place++;
        }
        all.add(place + 1, copy);
        MoveStage.number(write, all);
    }

    private static Task fresh(Task task, Id id, Id stage, Map<String, Id> ids, LocalDate today) {
        Task copy = TASK.with(TASK.with(task, "id", id), "stage", stage);
        for (String fact : TASK_FACTS) {
            copy = TASK.with(copy, fact, Optional.empty());
        }
        copy = TASK.with(copy, "story_told", false);
        copy = TASK.with(copy, "redo_of", task.redoOf().map(of -> ids.get(of.folded())));
        return TASK.with(copy, "added", Optional.of(today));
    }

    private static Material fresh(Write write, Material line, Id task) {
        Shape<Material> shape = Shape.of(Material.class);
        Material copy = shape.with(line, "id", Id.next("mat", MaterialStore.TABLE.ids(write)));
        for (String fact : MATERIAL_FACTS) {
            copy = shape.with(copy, fact, Optional.empty());
        }
        copy = shape.with(shape.with(copy, "lot", ""), "credit", "");
        return shape.with(copy, "task", task);
    }
}
