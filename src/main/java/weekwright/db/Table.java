package weekwright.db;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.SqlStatement;
import weekwright.base.Id;
import weekwright.base.Shape;

/**
 * SQL on one table whose columns are the components of one record type. Every write goes through here, so that each
 * leaves its change record and raises the row's version.
 *
 * @param <R> the record of one row
 */
public final class Table<R extends Record> {
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
        return select(read, "ORDER BY \"row\"", Map.of());
    }

    /** All values in stored order. */
    public List<R> values(Read read) {
        return list(read).stream().map(Stored::value).toList();
    }

    /** The row of an id, regardless of case. */
    public Optional<Stored<R>> find(Read read, Id id) {
        return select(read, "WHERE \"id\" = :id", Map.of("id", id.value())).stream()
                .findFirst();
    }

    /** The row of a row number. */
    public Optional<Stored<R>> find(Read read, long row) {
        return select(read, "WHERE \"row\" = :row", Map.of("row", row)).stream().findFirst();
    }

    /** The rows in which one column has this stored value (a Long or a String), in stored order. */
    public List<Stored<R>> where(Read read, String column, Object stored) {
        if (shape.field(column).isEmpty()) {
            throw new IllegalArgumentException("no column " + column + " in " + name);
        }
        return select(read, "WHERE " + quoted(column) + " = :value ORDER BY \"row\"", Map.of("value", stored));
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

    /** Inserts many rows in their order, with a change record for each, in a few statements. */
    public void insertAll(Write write, List<R> values) {
        if (values.isEmpty()) {
            return;
        }
        long above = write.handle()
                .createQuery("SELECT coalesce(max(\"row\"), 0) FROM " + name)
                .mapTo(Long.class)
                .one();
        String marks = shape.names().stream().map(column -> ":" + column).collect(Collectors.joining(", "));
        PreparedBatch batch =
                write.handle().prepareBatch("INSERT INTO " + name + " (" + columns + ") VALUES (" + marks + ")");
        values.forEach(value -> bind(batch, value).add());
        batch.execute();
        write.logAll(name, json, above, true);
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
            throw new Stale(name, row, find(write, row).map(stored -> stored));
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
     * Brings a removed row back as its newest change record has it, at its old place.
     *
     * @return the row, or empty when it was never removed or stands again
     */
    public Optional<Stored<R>> restore(Write write, long row) {
        if (find(write, row).isPresent()) {
            return Optional.empty();
        }
        Optional<String> before = write.handle()
                .createQuery("SELECT before FROM change WHERE thing = :thing AND thing_row = :row"
                        + " AND action = 'removed' ORDER BY id DESC LIMIT 1")
                .bind("thing", name)
                .bind("row", row)
                .mapTo(String.class)
                .findOne();
        if (before.isEmpty()) {
            return Optional.empty();
        }
        String values = shape.names().stream()
                .map(column -> "json_extract(:before, '$.\"" + column + "\"')")
                .collect(Collectors.joining(", "));
        write.handle()
                .createUpdate("INSERT INTO " + name + " (\"row\", \"version\", " + columns + ") SELECT"
                        + " json_extract(:before, '$.row'), json_extract(:before, '$.version') + 1, " + values)
                .bind("before", before.get())
                .execute();
        write.log(name, row, "added", null, json(write, row));
        return find(write, row);
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
        return (ResultSet rs, org.jdbi.v3.core.statement.StatementContext context) -> stored(rs, width);
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
