package weekwright.build;

import java.util.Map;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Shape;
import weekwright.db.Read;

/** Whether everything that a row refers to stands in the store; each missing one is a fault on its column. */
public final class References {
    private static final Map<String, String> NAMES = Map.of(
            "crew", "is nobody of the crew",
            "tasks", "is no task of this project",
            "stages", "is no stage of this project",
            "episodes", "is no episode of this project",
            "equipment", "is no equipment of this project",
            "materials", "is no material line of this project",
            "stock", "is nothing in stock",
            "pledge_levels", "is no pledge level of this project",
            "notes", "is no note of this project",
            "bank_sources", "is no source of bank files of this project");

    private References() {}

    public static <R extends Record> void check(Read read, Shape<R> shape, R row, Problems problems) {
        for (Shape.Field field : shape.fields()) {
            field.ref()
                    .ifPresent(table -> field.value(row).ifPresent(value -> {
                        Id id = (Id) value;
                        if (!ReferenceStore.has(read, table, id)) {
                            problems.fault(field.name(), id.value(), NAMES.get(table), "choose one of the list");
                        }
                    }));
        }
    }
}
