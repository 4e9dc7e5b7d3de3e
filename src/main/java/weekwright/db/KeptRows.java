package weekwright.db;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import weekwright.base.Id;
import weekwright.base.Shape;

/**
 * The rows of whole tables as they were read last, so that a page that needs all of them does not make them out of the
 * database anew each time. What is kept of a table knows the newest change record it has seen; a view that has seen newer
 * ones reads only the rows that those name. What a transaction that writes sees is never kept. Safe for use from
 * several threads.
 */
final class KeptRows {
    private static final int MOST_CHANGED = 500;

    /** A page that asks for rows of one table more often than this is better served from all of them. */
    private static final int FEW_ASKED = 8;

    private final Map<Table<?>, Kept<?>> kept = new ConcurrentHashMap<>();

    /**
     * One table.
     *
     * @param upTo the newest change record of the table that these rows have seen; 0 for none
     * @param rows in stored order
     * @param values the same without their row numbers
     * @param by column to its value in lower case to the rows, made when first asked for
     */
    private record Kept<R extends Record>(
            long upTo, List<Stored<R>> rows, List<R> values, Map<String, Map<String, List<Stored<R>>>> by) {
        Kept(long upTo, List<Stored<R>> rows) {
            this(upTo, List.copyOf(rows), rows.stream().map(Stored::value).toList(), new ConcurrentHashMap<>());
        }

        List<Stored<R>> where(Shape.Field column, Id id) {
            return by.computeIfAbsent(column.name(), name -> index(column)).getOrDefault(id.folded(), List.of());
        }

        private Map<String, List<Stored<R>>> index(Shape.Field column) {
            Map<String, List<Stored<R>>> index = new HashMap<>();
            rows.forEach(row -> column.value(row.value())
                    .ifPresent(id -> index.computeIfAbsent(((Id) id).folded(), key -> new ArrayList<>())
                            .add(row)));
            index.replaceAll((key, list) -> List.copyOf(list));
            return index;
        }
    }

    <R extends Record> List<Stored<R>> rows(Read read, Table<R> table) {
        return of(read, table).rows;
    }

    <R extends Record> List<R> values(Read read, Table<R> table) {
        return of(read, table).values;
    }

    /**
     * The rows in which a column holds this id, where they are to be had without asking the database.
     *
     * @param column one that holds ids
     * @return in stored order; empty when the database is to be asked
     */
    <R extends Record> Optional<List<Stored<R>>> where(Read read, Table<R> table, Shape.Field column, Id id) {
        if (read instanceof Write || !read.seen().containsKey(table) && read.askedAgain(table) <= FEW_ASKED) {
            return Optional.empty();
        }
        return Optional.of(of(read, table).where(column, id));
    }

    @SuppressWarnings("unchecked")
    private <R extends Record> Kept<R> of(Read read, Table<R> table) {
        if (read instanceof Write) {
            return asItStands(read, table);
        }
        return (Kept<R>) read.seen().computeIfAbsent(table, t -> asItStands(read, table));
    }

    @SuppressWarnings("unchecked")
    private <R extends Record> Kept<R> asItStands(Read read, Table<R> table) {
        long newest = History.newestOf(read, table.name());
        Kept<R> before = (Kept<R>) kept.get(table);
        if (before != null && before.upTo == newest) {
            return before;
        }
        Kept<R> now = before == null || before.upTo > newest
                ? new Kept<>(newest, table.all(read))
                : new Kept<>(newest, since(read, table, before));
        if (!(read instanceof Write)) {
            kept.merge(table, now, (old, fresh) -> old.upTo > fresh.upTo ? old : fresh);
        }
        return now;
    }

    private static <R extends Record> List<Stored<R>> since(Read read, Table<R> table, Kept<R> before) {
        List<Long> changed = History.rowsSince(read, table.name(), before.upTo, MOST_CHANGED + 1);
        if (changed.size() > MOST_CHANGED) {
            return table.all(read);
        }
        Map<Long, Optional<Stored<R>>> fresh = new TreeMap<>();
        changed.forEach(row -> fresh.put(row, table.find(read, row)));
        List<Stored<R>> rows = new ArrayList<>(before.rows.size() + fresh.size());
        for (Stored<R> row : before.rows) {
            Optional<Stored<R>> now = fresh.remove(row.row());
            if (now == null) {
                rows.add(row);
            } else {
                now.ifPresent(rows::add);
            }
        }
        fresh.values().forEach(added -> added.ifPresent(rows::add));
        rows.sort(Comparator.comparingLong(Stored::row));
        return rows;
    }
}
