package weekwright.db;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.StatementContext;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import weekwright.base.Id;
import weekwright.base.Shape;

/**
 * SQL on one table whose columns are the components of one record type. Every write goes through here, so that each
 * leaves its change record and raises the row's version.
 *
 * @param <R> the record of one row
 */
public final class Table<R extends Record> {
    private static final int AT_ONCE = 100;

    private final String name;
    private final Shape<R> shape;
    private final String columns;
    private final String json;

    public Table(String name, Class<R> type) {
        this.name = name;
        this.shape = Shape.of(type);
        this.columns = shape.names().stream().map(Table::quoted).collect(Collectors.joining(", "));
        this.json = "json_object('row', \"row\", 'version', \"version\", "
                + shape.names().stream()
                        .map(column -> "'" + column + "', " + quoted(column))
                        .collect(Collectors.joining(", "))
                + ")";
    }

    public String name() {
        return name;
    }

    public Shape<R> shape() {
        return shape;
    }

    /** All rows in stored order. */
    public List<Stored<R>> list(Read read) {
        return read.keptRows().rows(read, this);
    }

    /** All values in stored order. */
    public List<R> values(Read read) {
        return read.keptRows().values(read, this);
    }

    /** All rows, read out of the database. */
    List<Stored<R>> all(Read read) {
        return select(read, "ORDER BY \"row\"", Map.of());
    }

    /** The row of an id, regardless of case. */
    public Optional<Stored<R>> find(Read read, Id id) {
        Shape.Field column = shape.field("id").orElseThrow();
        return read
                .keptRows()
                .where(read, this, column, id)
                .orElseGet(() -> select(read, "WHERE \"id\" = :id", Map.of("id", id.value())))
                .stream()
                .findFirst();
    }

    /** The row of a row number. */
    public Optional<Stored<R>> find(Read read, long row) {
        return select(read, "WHERE \"row\" = :row", Map.of("row", row)).stream().findFirst();
    }

    /** The rows in which one column has this stored value (a Long or a String), in stored order. */
    public List<Stored<R>> where(Read read, String column, Object stored) {
        Shape.Field field = shape.field(column)
                .orElseThrow(() -> new IllegalArgumentException("no column " + column + " in " + name));
        Optional<List<Stored<R>>> kept = field.ref().isPresent()
                ? read.keptRows().where(read, this, field, new Id((String) stored))
                : Optional.empty();
        return kept.orElseGet(
                () -> select(read, "WHERE " + quoted(column) + " = :value ORDER BY \"row\"", Map.of("value", stored)));
    }

    /**
     * The rows of any condition, for stores.
     *
     * @param tail SQL from WHERE on, with named parameters
     */
    public List<Stored<R>> select(Read read, String tail, Map<String, ?> parameters) {
        Query query =
                read.handle().createQuery("SELECT \"row\", \"version\", " + columns + " FROM " + name + " " + tail);
        parameters.forEach(query::bind);
        return query.map(mapper()).list();
    }

    public int count(Read read) {
        return read.handle()
                .createQuery("SELECT count(*) FROM " + name)
                .mapTo(Integer.class)
                .one();
    }

    /** All ids, as stored; only for tables that have one. */
    public List<Id> ids(Read read) {
        return read.handle()
                .createQuery("SELECT \"id\" FROM " + name + " ORDER BY \"row\"")
                .mapTo(String.class)
                .map(Id::new)
                .list();
    }

    public Stored<R> insert(Write write, R value) {
        String marks = shape.names().stream().map(column -> ":" + column).collect(Collectors.joining(", "));
        Query insert = write.handle()
                .createQuery("INSERT INTO " + name + " (" + columns + ") VALUES (" + marks + ") RETURNING \"row\"");
        long row = bind(insert, value).mapTo(Long.class).one();
        write.log(name, row, "added", null, json(write, row));
        return new Stored<>(row, 1, value);
    }

    /**
     * Inserts many rows in their order, with a change record for each. A hundred rows are one statement: what the search
     * knows is written out at the end of each, which with a statement a row takes three times as long as all the rest.
     */
    public void insertAll(Write write, List<R> values) {
        if (values.isEmpty()) {
            return;
        }
        long above = write.handle()
                .createQuery("SELECT coalesce(max(\"row\"), 0) FROM " + name)
                .mapTo(Long.class)
                .one();
        for (int from = 0; from < values.size(); from += AT_ONCE) {
            insertSome(write, values.subList(from, Math.min(from + AT_ONCE, values.size())));
        }
        write.logAll(name, json, above, true);
    }

    /** Bound by hand, as Jdbi takes longer to bind a thousand values than SQLite to write them. */
    private void insertSome(Write write, List<R> values) {
        String marks = "(" + String.join(", ", Collections.nCopies(shape.names().size(), "?")) + ")";
        String sql = "INSERT INTO " + name + " (" + columns + ") VALUES "
                + String.join(", ", Collections.nCopies(values.size(), marks));
        try (PreparedStatement insert = write.handle().getConnection().prepareStatement(sql)) {
            int at = 1;
            for (R value : values) {
                for (Object stored : shape.toStored(value)) {
                    insert.setObject(at++, stored);
                }
            }
            insert.executeUpdate();
        } catch (SQLException e) {
            throw new UnableToExecuteStatementException(e, null);
        }
    }

    /** Removes all rows, with a change record for each. */
    public void deleteAll(Write write) {
        if (count(write) > 0) {
            write.logAll(name, json, 0, false);
            write.handle().execute("DELETE FROM " + name);
        }
    }

    /**
     * Sets a row to a new value.
     *
     * @param version as it was when the row was shown
     * @throws Stale when the row has another version now, or is gone
     */
    public Stored<R> update(Write write, long row, long version, R value) throws Stale {
        String before = json(write, row);
        String sets = shape.names().stream()
                .map(column -> quoted(column) + " = :" + column)
                .collect(Collectors.joining(", "));
        int changed = bind(
                        write.handle()
                                .createUpdate("UPDATE " + name + " SET " + sets + ", \"version\" = \"version\" + 1"
                                        + " WHERE \"row\" = :the_row AND \"version\" = :the_version"),
                        value)
                .bind("the_row", row)
                .bind("the_version", version)
                .execute();
        if (changed == 0) {
            throw new Stale(name, row, find(write, row).map(stored -> stored), Optional.of(value));
        }
        write.log(name, row, "changed", before, json(write, row));
        return new Stored<>(row, version + 1, value);
    }

    /**
     * Removes a row; its change record can bring it back.
     *
     * @throws Stale when the row has another version now, or is gone
     */
    public void delete(Write write, long row, long version) throws Stale {
        String before = json(write, row);
        int changed = write.handle()
                .createUpdate("DELETE FROM " + name + " WHERE \"row\" = :row AND \"version\" = :version")
                .bind("row", row)
                .bind("version", version)
                .execute();
        if (changed == 0) {
            throw new Stale(name, row, find(write, row).map(stored -> stored));
        }
        write.log(name, row, "removed", before, null);
    }

    /**
     * Sets a row to what a change record has of it, whatever stands there now: it is changed, removed or brought back at
     * its old place, and that is a change of its own. Columns that the record does not know yet stay as they are, or empty.
     *
     * @param image the row as JSON; empty removes it
     * @return whether anything was different
     * @throws Taken when another row has what only one may have, such as the id
     */
    public boolean setBack(Write write, long row, Optional<String> image) throws Taken {
        Optional<Stored<R>> now = find(write, row);
        if (image.isEmpty()) {
            if (now.isEmpty()) {
                return false;
            }
            String before = json(write, row);
            write.handle()
                    .createUpdate("DELETE FROM " + name + " WHERE \"row\" = :row")
                    .bind("row", row)
                    .execute();
            write.log(name, row, "removed", before, null);
            return true;
        }
        List<String> known = known(write, image.get());
        if (now.isPresent() && same(write, row, known, image.get())) {
            return false;
        }
        String before = json(write, row);
        String sql = now.isPresent()
                ? "UPDATE " + name + " SET " + listed(known, c -> quoted(c) + " = " + extract(c))
                        + ", \"version\" = \"version\" + 1 WHERE \"row\" = :row"
                : "INSERT INTO " + name + " (\"row\", \"version\", " + listed(known, Table::quoted) + ") SELECT :row, "
                        + extract("version") + " + 1, " + listed(known, Table::extract);
        try {
            write.handle()
                    .createUpdate(sql)
                    .bind("image", image.get())
                    .bind("row", row)
                    .execute();
        } catch (UnableToExecuteStatementException e) {
            throw Taken.of(name, row, e).orElseThrow(() -> e);
        }
        write.log(name, row, now.isPresent() ? "changed" : "added", before, json(write, row));
        return true;
    }

    private boolean same(Read read, long row, List<String> known, String image) {
        return read.handle()
                .createQuery("SELECT EXISTS (SELECT 1 FROM " + name + " WHERE \"row\" = :row AND "
                        + known.stream()
                                .map(c -> quoted(c) + " IS " + extract(c) + " COLLATE BINARY")
                                .collect(Collectors.joining(" AND "))
                        + ")")
                .bind("row", row)
                .bind("image", image)
                .mapTo(Boolean.class)
                .one();
    }

    /** The record that a change record's JSON holds; what it does not know yet reads as empty. */
    public R value(Read read, String image) {
        return read.handle()
                .createQuery("SELECT 0, 0, " + listed(shape.names(), this::orEmpty))
                .bind("image", image)
                .map(mapper())
                .one()
                .value();
    }

    /**
     * The rows as they stood at an instant, in stored order, for as many instants as are asked for within this read: what the log
     * says was changed or removed since then stands as before; what was first recorded since then, and is still there, stands as
     * first recorded.
     */
    public Function<Instant, List<R>> past(Read read) {
        Map<Long, R> now = new TreeMap<>();
        list(read).forEach(stored -> now.put(stored.row(), stored.value()));
        Map<Long, List<PastImage>> changed = new HashMap<>();
        read.handle()
                .createQuery("SELECT thing_row, at, before, after FROM change WHERE thing = :name AND thing_row IN"
                        + " (SELECT thing_row FROM change WHERE thing = :name GROUP BY thing_row HAVING count(*) > 1)"
                        + " ORDER BY id")
                .bind("name", name)
                .map((rs, context) -> new PastImage(
                        rs.getLong("thing_row"),
                        Instant.parse(rs.getString("at")),
                        rs.getString("before"),
                        rs.getString("after")))
                .forEach(image -> changed.computeIfAbsent(image.row(), row -> new ArrayList<>())
                        .add(image));
        Map<String, R> values = new HashMap<>();
        return then -> {
            Map<Long, R> rows = new TreeMap<>(now);
            changed.forEach((row, images) -> images.stream()
                    .filter(image -> image.at().isAfter(then))
                    .findFirst()
                    .filter(image -> image.before() != null || now.containsKey(row))
                    .map(image -> image.before() != null ? image.before() : image.after())
                    .ifPresent(image -> rows.put(row, values.computeIfAbsent(image, json -> value(read, json)))));
            return List.copyOf(rows.values());
        };
    }

    private record PastImage(long row, Instant at, String before, String after) {}

    /** Columns that may not be null hold an empty text or 0 where nothing stands in them. */
    private String orEmpty(String column) {
        Shape.Field field = shape.field(column).orElseThrow();
        String empty = field.valueType() == Boolean.class || field.valueType() == Integer.class ? "0" : "''";
        return field.optional() ? extract(column) : "coalesce(" + extract(column) + ", " + empty + ")";
    }

    private List<String> known(Read read, String image) {
        List<String> keys = read.handle()
                .createQuery("SELECT key FROM json_each(:image)")
                .bind("image", image)
                .mapTo(String.class)
                .list();
        return shape.names().stream().filter(keys::contains).toList();
    }

    private static String listed(List<String> columns, UnaryOperator<String> sql) {
        return columns.stream().map(sql).collect(Collectors.joining(", "));
    }

    private static String extract(String column) {
        return "json_extract(:image, '$.\"" + column + "\"')";
    }

    private String json(Read read, long row) {
        return read.handle()
                .createQuery("SELECT " + json + " FROM " + name + " WHERE \"row\" = :row")
                .bind("row", row)
                .mapTo(String.class)
                .findOne()
                .orElse(null);
    }

    private <S extends SqlStatement<S>> S bind(S statement, R value) {
        List<String> names = shape.names();
        List<Object> stored = shape.toStored(value);
        Map<String, Object> all = new HashMap<>();
        for (int i = 0; i < names.size(); i++) {
            all.put(names.get(i), stored.get(i));
        }
        return statement.bindMap(all);
    }

    private RowMapper<Stored<R>> mapper() {
        int width = shape.fields().size();
        return (ResultSet rs, StatementContext context) -> stored(rs, width);
    }

    private Stored<R> stored(ResultSet rs, int width) throws SQLException {
        List<Object> values = new ArrayList<>(width);
        for (int i = 0; i < width; i++) {
            values.add(rs.getObject(i + 3));
        }
        return new Stored<>(rs.getLong(1), rs.getLong(2), shape.fromStored(values));
    }

    private static String quoted(String column) {
        return '"' + column + '"';
    }
}
