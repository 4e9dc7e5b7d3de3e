package weekwright.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.build.Said;
import weekwright.db.History;
import weekwright.db.Read;

/**
 * What one change removed and what is still gone of it.
 *
 * @param version the project's version that it made
 * @param what the chief thing by name: {@code task “Set the sill stones”}
 * @param with what went with it: {@code 3 links and 2 hours entries}; empty for nothing
 */
public record Removal(long version, Instant at, String who, String what, String with) {

    /** @param version of a change that removed something that is still gone */
    public static Removal of(Read read, Names names, long version) {
        List<String> order =
                Things.all().stream().map(thing -> thing.table().name()).toList();
        List<History.Change> gone = new ArrayList<>(History.goneOf(read, version));
        gone.sort(Comparator.comparing(change -> order.indexOf(change.thing())));
        History.Change chief = gone.get(0);
        Map<String, Integer> others = new LinkedHashMap<>();
        gone.subList(1, gone.size()).forEach(change -> others.merge(change.thing(), 1, Integer::sum));
        List<String> with = new ArrayList<>();
        others.forEach((table, count) -> with.add(
                Said.count(count, Things.of(table).one(), Things.of(table).many())));
        return new Removal(
                version,
                chief.at(),
                names.who(chief.who()),
                UndoChange.called(names, Things.of(chief.thing()), chief),
                Said.list(with));
    }
}
