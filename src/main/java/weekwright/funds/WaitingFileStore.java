package weekwright.funds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Write;

/** Where files wait until they are entered: the table {@code waiting_file}, which has no history. */
public final class WaitingFileStore {
    /** What is older is forgotten when the next one comes. */
    public static final Duration KEPT = Duration.ofDays(14);

    private static final String COLUMNS = "SELECT key, name, source, at FROM waiting_file ";

    private WaitingFileStore() {}

    public static void add(Write write, String key, String name, byte[] bytes, String source) {
        write.handle()
                .createUpdate("DELETE FROM waiting_file WHERE at < :old")
                .bind("old", write.at().minus(KEPT).toString())
                .execute();
        write.handle()
                .createUpdate("INSERT INTO waiting_file (key, name, bytes, source, at)"
                        + " VALUES (:key, :name, :bytes, :source, :at)")
                .bind("key", key)
                .bind("name", name)
                .bind("bytes", bytes)
                .bind("source", source)
                .bind("at", write.at().toString())
                .execute();
    }

    /** All of them, the newest first. */
    public static List<WaitingFile> list(Read read) {
        return read.handle()
                .createQuery(COLUMNS + "ORDER BY at DESC, key")
                .mapToMap()
                .map(WaitingFileStore::file)
                .list();
    }

    public static Optional<WaitingFile> find(Read read, String key) {
        return read.handle()
                .createQuery(COLUMNS + "WHERE key = :key")
                .bind("key", key)
                .mapToMap()
                .findOne()
                .map(WaitingFileStore::file);
    }

    /** What stands in it; nothing where it is gone. */
    public static byte[] bytes(Read read, String key) {
        return read.handle()
                .createQuery("SELECT bytes FROM waiting_file WHERE key = :key")
                .bind("key", key)
                .mapTo(byte[].class)
                .findOne()
                .orElse(new byte[0]);
    }

    public static void readAs(Write write, String key, String source) {
        write.handle()
                .createUpdate("UPDATE waiting_file SET source = :source WHERE key = :key")
                .bind("source", source)
                .bind("key", key)
                .execute();
    }

    /** Throws one away; whether there was one. */
    public static boolean remove(Write write, String key) {
        return write.handle()
                        .createUpdate("DELETE FROM waiting_file WHERE key = :key")
                        .bind("key", key)
                        .execute()
                > 0;
    }

    private static WaitingFile file(Map<String, Object> row) {
        return new WaitingFile(
                (String) row.get("key"), (String) row.get("name"), (String) row.get("source"), Instant.parse((String)
                        row.get("at")));
    }
}
