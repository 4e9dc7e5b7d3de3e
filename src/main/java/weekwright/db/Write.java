package weekwright.db;

import java.time.Instant;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** One transaction that may change the store; every change in it is logged under the same person and instant. */
public final class Write extends Read {
    private final String who;
    private final Instant at;
    private final Set<String> touched = new HashSet<>();
    private long raisedTo;

    Write(Handle handle, String who, Instant at) {
        super(handle);
        this.who = who;
        this.at = at;
    }

    public String who() {
        return who;
    }

    public Instant at() {
        return at;
    }

    /** The project's version after this transaction, or empty as long as nothing was changed. */
    public Optional<Long> raisedTo() {
        return raisedTo == 0 ? Optional.empty() : Optional.of(raisedTo);
    }

    /** The tables in which something was changed. */
    Set<String> touched() {
        return touched;
    }

    /** Raises the project's version once for this transaction, and gives it. */
    private long raised() {
        if (raisedTo == 0) {
            raisedTo = handle().createQuery(
                            "UPDATE meta SET project_version = project_version + 1 RETURNING project_version")
                    .mapTo(Long.class)
                    .one();
        }
        return raisedTo;
    }

    /**
     * Writes a change record for every row of a table above a row number, in one statement.
     *
     * @param json SQL that makes the JSON object of a row
     * @param added whether the rows were added; else they are about to be removed
     */
    void logAll(String thing, String json, long above, boolean added) {
        touched.add(thing);
        handle().createUpdate("INSERT INTO change (at, who, project_version, thing, thing_row, action, before, after)"
                        + " SELECT :at, :who, :version, :thing, \"row\", :action, "
                        + (added ? "NULL, " + json : json + ", NULL") + " FROM " + thing
                        + " WHERE \"row\" > :above ORDER BY \"row\"")
                .bind("at", at.toString())
                .bind("who", who)
                .bind("version", raised())
                .bind("thing", thing)
                .bind("action", added ? "added" : "removed")
                .bind("above", above)
                .execute();
    }

    /** Writes one change record; before and after are JSON objects, one of them may be null. */
    void log(String thing, long row, String action, String before, String after) {
        touched.add(thing);
        handle().createUpdate("INSERT INTO change (at, who, project_version, thing, thing_row, action, before, after)"
                        + " VALUES (:at, :who, :version, :thing, :row, :action, :before, :after)")
                .bind("at", at.toString())
                .bind("who", who)
                .bind("version", raised())
                .bind("thing", thing)
                .bind("row", row)
                .bind("action", action)
                .bind("before", before)
                .bind("after", after)
                .execute();
    }
}
