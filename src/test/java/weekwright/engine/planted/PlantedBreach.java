package weekwright.engine.planted;

import java.io.IOException;
import java.time.LocalDate;
import org.jdbi.v3.core.Handle;
import weekwright.db.Db;

/** Breaks the rules of the architecture on purpose, so that the test of the rules is seen to fail. Never run. */
final class PlantedBreach {
    private PlantedBreach() {}

    static LocalDate today() {
        return LocalDate.now();
    }

    static long version(Db db) {
        return db.version();
    }

    static void sql(Handle handle) {
        handle.execute("SELECT 1");
    }

    static void shell() throws IOException {
        new ProcessBuilder("true").start();
    }
}
