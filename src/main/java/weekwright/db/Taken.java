package weekwright.db;

import java.util.Optional;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Another row has what only one row may have, such as an id. */
public final class Taken extends Exception {
    private static final long serialVersionUID = 1L;

    private Taken(String thing, long row) {
        super(thing + " " + row + " has what another row has already", null, false, false);
    }

    /** Present when that is what a statement failed of. */
    static Optional<Taken> of(String thing, long row, RuntimeException e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite
                    && sqlite.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_UNIQUE) {
                return Optional.of(new Taken(thing, row));
            }
        }
        return Optional.empty();
    }
}
