package weekwright.db;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** One transaction that may change the store; every change in it is logged under the same person and instant. */
public final class Write extends Read {
    private static final String MARK = "mark";

    private final String who;
    private final Instant at;
    private long raisedTo;
    private long raisedAtMark;

    Write(Handle handle, KeptRows keptRows, String who, Instant at) {
        super(handle, keptRows);
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

    /** Marks this point of the transaction, for {@link #backToMark}. */
    public void mark() {
        raisedAtMark = raisedTo;
        handle().savepoint(MARK);
    }

    /** Takes back whatever was done since the mark, as if it had not been tried. */
    public void backToMark() {
        handle().rollbackToSavepoint(MARK);
        raisedTo = raisedAtMark;
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
