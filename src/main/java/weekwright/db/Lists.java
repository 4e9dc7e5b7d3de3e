package weekwright.db;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Whole tables as they were last read, so that pages do not read the same thirty thousand rows again and again. A table is
 * read anew when it changed, or when a view is older than its newest change: a list always is what the view would read.
 * Safe for use from several threads.
 */
final class Lists {
    /** A table's rows and the project's version of the view that read them. */
    private record Kept(long version, List<?> rows) {}

    private final Map<String, Kept> kept = new ConcurrentHashMap<>();
    private final Map<String, Long> changed = new ConcurrentHashMap<>();

    /** A change of this table is about to be committed under this version. Said before, so that no view can come between. */
    void changing(String table, long version) {
        changed.merge(table, version, Math::max);
    }

    /**
     * The rows of a table.
     *
     * @param version of the project as the asking view sees it
     * @param load reads them in that view
     */
    @SuppressWarnings("unchecked")
    <T> List<T> of(String table, long version, Supplier<List<T>> load) {
        Kept last = kept.get(table);
        if (last != null && changed.getOrDefault(table, 0L) <= Math.min(version, last.version())) {
            return (List<T>) last.rows();
        }
        List<T> rows = List.copyOf(load.get());
        if (changed.getOrDefault(table, 0L) <= version) {
            kept.put(table, new Kept(version, rows));
        }
        return rows;
    }
}
