package weekwright.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import weekwright.build.Said;
import weekwright.db.History;
import weekwright.db.Read;

/**
 * One change as it is listed: everything that one transaction did.
 *
 * @param version the project's version that it made
 * @param who by name
 * @param parts what it did; each thing where they are few
 */
public record ChangeLine(long version, Instant at, String who, List<Part> parts) {
    private static final int NAMED_ALONE = 4;

    /**
     * One thing, or all to which the same was done.
     *
     * @param text {@code task “Set the sill stones” changed}, {@code 1 task and 12 links removed}
     * @param thing the table of the one; empty for several
     * @param row of the one; 0 for several
     */
    public record Part(String text, String thing, long row) {}

    /** @param version of a change that stands in the log */
    public static ChangeLine of(Read read, Names names, long version) {
        List<History.Count> counts = History.counts(read, version);
        int all = counts.stream().mapToInt(History.Count::count).sum();
        List<Part> parts = new ArrayList<>();
        if (all <= NAMED_ALONE) {
            History.ofVersion(read, version).stream()
                    .map(change -> one(names, change))
                    .distinct()
                    .forEach(parts::add);
        } else {
            counts.stream()
                    .collect(Collectors.groupingBy(History.Count::action, LinkedHashMap::new, Collectors.toList()))
                    .forEach((action, alike) -> parts.add(new Part(together(alike) + " " + action, "", 0)));
        }
        History.Change first = counts.get(0).first();
        return new ChangeLine(version, first.at(), names.who(first.who()), List.copyOf(parts));
    }

    /** {@code 2 stages, 12 tasks and the settings of weather}. */
    private static String together(List<History.Count> counts) {
        return Said.list(counts.stream()
                .map(count -> {
                    Thing<?> thing = Things.of(count.thing());
                    return thing.kind() == Thing.Kind.SETTINGS
                            ? thing.one()
                            : Said.count(count.count(), thing.one(), thing.many());
                })
                .toList());
    }

    private static Part one(Names names, History.Change change) {
        Thing<?> thing = Things.of(change.thing());
        return new Part(UndoChange.called(names, thing, change) + " " + change.action(), change.thing(), change.row());
    }

    /** The parts in one line: {@code hours “Ilse, 25 November 2026” added, task “Plane the boards” changed}. */
    public String text() {
        return parts.stream().map(Part::text).collect(Collectors.joining(", "));
    }
}
