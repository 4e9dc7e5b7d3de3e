package weekwright.web.parts;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Table;
import weekwright.history.Things;

/** The page on which a thing is seen. */
public final class Addresses {
    /** Those that an id names. */
    private static final Map<String, String> BY_ID = Map.of(
            "stages", "/build/stages/%s",
            "tasks", "/build/tasks/%s",
            "materials", "/build/materials/%s",
            "stock", "/build/stock/%s/edit",
            "equipment", "/build/equipment/%s/edit",
            "episodes", "/episodes/%s",
            "notes", "/notes/%s",
            "crew", "/crew/members/%s/edit");

    private static final Map<String, String> BY_ROW =
            Map.of("hours", "/log/entries/%s/edit", "week", "/week/lines/%s/edit");

    private Addresses() {}

    /** Where a row that stands is seen; empty when it does not stand, or has no page of its own. */
    public static Optional<String> of(Read read, String table, long row) {
        return of(read, Things.of(table).table(), row);
    }

    private static <R extends Record> Optional<String> of(Read read, Table<R> table, long row) {
        return table.find(read, row).flatMap(stored -> {
            Optional<Object> id = table.shape().field("id").flatMap(field -> field.value(stored.value()));
            return BY_ROW.containsKey(table.name())
                    ? Optional.of(BY_ROW.get(table.name()).formatted(row))
                    : Optional.ofNullable(BY_ID.get(table.name()))
                            .map(address -> address.formatted(((Id) id.orElseThrow()).value()));
        });
    }

    /** The sheet on which a page hangs: {@code /build} of {@code /build/tasks/weir.2}. */
    public static String above(String address) {
        return "/" + address.substring(1).split("[/?]")[0];
    }
}
