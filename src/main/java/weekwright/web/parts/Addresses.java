package weekwright.web.parts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.files.NamedLinks;
import weekwright.history.Things;
import weekwright.notes.NoteLinks;

/** Which page shows a thing, and which thing a page shows. */
public final class Addresses {
    private static final Map<String, Shown> ALL = new LinkedHashMap<>();

    /**
     * @param path with one place for the id or the row
     * @param byRow whether the row's number stands in it
     * @param pages it and every page under it
     */
    private record Shown(String path, boolean byRow, Pattern pages) {}

    static {
        byId("stages", "/build/stages/%s");
        byId("tasks", "/build/tasks/%s");
        byId("materials", "/build/materials/%s");
        byId("stock", "/build/stock/%s/edit");
        byId("equipment", "/build/equipment/%s/edit");
        byRow("shots", "/week/shots/%s");
        byRow("clips", "/episodes/footage/%s/edit");
        byId("episodes", "/episodes/%s");
        byRow("ledger", "/funds/entries/%s/edit");
        byId("suppliers", "/funds/suppliers/%s/edit");
        byId("regular", "/funds/regular/%s/edit");
        byId("pledge_levels", "/funds/levels/%s/edit");
        byId("notes", "/notes/%s");
        byId("crew", "/crew/members/%s/edit");
        byRow("days_off", "/crew/off/%s/edit");
        byRow("crew_hours", "/crew/hours/%s/edit");
        byRow("stopped", "/crew/stopped/%s/edit");
        byRow("gatherings", "/crew/gatherings/%s/edit");
        byRow("incidents", "/crew/incidents/%s/edit");
        byRow("cautions", "/crew/cautions/%s/edit");
        byRow("hours", "/log/entries/%s/edit");
        byRow("week", "/week/lines/%s/edit");
    }

    private Addresses() {}

    private static void byId(String table, String path) {
        String one = path.replace("/edit", "").formatted("(?!(?:new|public)(/|$))([^/]+)");
        ALL.put(table, new Shown(path, false, Pattern.compile(one + "(/.*)?")));
    }

    private static void byRow(String table, String path) {
        ALL.put(table, new Shown(path, true, Pattern.compile(path.formatted("()([0-9]{1,15})"))));
    }

    /** Where a row that stands is seen; empty when it does not stand, or has no page of its own. */
    public static Optional<String> of(Read read, String table, long row) {
        Shown shown = ALL.get(table);
        return shown == null ? Optional.empty() : named(read, Things.of(table).table(), row, shown);
    }

    private static <R extends Record> Optional<String> named(Read read, Table<R> table, long row, Shown shown) {
        return table.find(read, row)
                .map(stored -> shown.byRow()
                        ? Long.toString(row)
                        : ((Id) table.shape()
                                        .field("id")
                                        .flatMap(field -> field.value(stored.value()))
                                        .orElseThrow())
                                .value())
                .map(shown.path()::formatted);
    }

    /** Where the history of the thing is seen that a page shows; empty for a page that shows no single thing. */
    public static Optional<String> history(Read read, String address) {
        for (Map.Entry<String, Shown> one : ALL.entrySet()) {
            Matcher matcher = one.getValue().pages().matcher(address);
            if (matcher.matches()) {
                return row(read, Things.of(one.getKey()).table(), one.getValue(), matcher.group(2))
                        .map(row -> history(one.getKey(), row));
            }
        }
        return Optional.empty();
    }

    /** Where the history of a row is seen. */
    public static String history(String table, long row) {
        return "/crew/history/things/" + table + "/" + row;
    }

    private static <R extends Record> Optional<Long> row(Read read, Table<R> table, Shown shown, String name) {
        if (shown.byRow()) {
            return table.find(read, Long.parseLong(name)).map(Stored::row);
        }
        return name.matches("[A-Za-z0-9._-]{1,40}")
                ? table.find(read, new Id(name)).map(Stored::row)
                : Optional.empty();
    }

    /** What the references of a note point to, each with the page that shows it. */
    public static NoteLinks links(Read read) {
        return NamedLinks.of(read, (kind, id) -> switch (kind) {
            case TASK -> "/build/tasks/" + id;
            case STAGE -> "/build/stages/" + id;
            case EPISODE -> "/episodes/" + id;
            case MATERIAL -> "/build/materials/" + id;
        });
    }

    /** The sheet on which a page hangs: {@code /build} of {@code /build/tasks/weir.2}. */
    public static String above(String address) {
        return "/" + address.substring(1).split("[/?]")[0];
    }
}
