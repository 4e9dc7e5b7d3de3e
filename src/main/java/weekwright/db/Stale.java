package weekwright.db;

/**
 * Somebody else changed or removed the row since it was shown.
 *
 * <p>{@link #now()} tells how it stands, so that both versions can be shown; it is empty when the row is gone.
 */
public final class Stale extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient java.util.Optional<Stored<?>> now;

    public Stale(String thing, long row, java.util.Optional<Stored<?>> now) {
        super(thing + " " + row + (now.isEmpty() ? " is gone" : " was changed meanwhile"), null, false, false);
        this.now = now;
    }

    public java.util.Optional<Stored<?>> now() {
        return now;
    }
}
