package weekwright.db;

import java.util.Optional;

/**
 * Somebody else changed or removed the row since it was shown.
 *
 * <p>{@link #now()} tells how it stands, so that both versions can be shown; it is empty when the row is gone. {@link
 * #mine()} tells what it was to become; it is empty when it was to be removed or only looked at first.
 */
public final class Stale extends Exception {
    private static final long serialVersionUID = 1L;

    private final String thing;
    private final long row;
    private final transient Optional<Stored<?>> now;
    private final transient Optional<Record> mine;

    public Stale(String thing, long row, Optional<Stored<?>> now) {
        this(thing, row, now, Optional.empty());
    }

    Stale(String thing, long row, Optional<Stored<?>> now, Optional<Record> mine) {
        super(thing + " " + row + (now.isEmpty() ? " is gone" : " was changed meanwhile"), null, false, false);
        this.thing = thing;
        this.row = row;
        this.now = now;
        this.mine = mine;
    }

    /** The table. */
    public String thing() {
        return thing;
    }

    public long row() {
        return row;
    }

    public Optional<Stored<?>> now() {
        return now;
    }

    public Optional<Record> mine() {
        return mine;
    }
}
