package weekwright.account;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Write;

/** Where log-ins and start codes are kept: the tables {@code log_in} and {@code start_code}. */
public final class LogInStore {
    private LogInStore() {}

    /** A code that lets somebody set their first passphrase, once. */
    public record StartCode(String sha256, Instant until) {}

    /** Whether anybody has a log-in: from then on nobody gets in without. */
    public static boolean any(Read read) {
        return read.handle()
                .createQuery("SELECT EXISTS (SELECT 1 FROM log_in)")
                .mapTo(Boolean.class)
                .one();
    }

    /** Since when who has one, by the person's folded id. */
    public static Map<String, Instant> since(Read read) {
        return read.handle().createQuery("SELECT crew, since FROM log_in").mapToMap().list().stream()
                .collect(Collectors.toMap(
                        row -> new Id((String) row.get("crew")).folded(),
                        row -> Instant.parse((String) row.get("since"))));
    }

    /** The stored hash. */
    public static Optional<String> passphrase(Read read, Id crew) {
        return read.handle()
                .createQuery("SELECT passphrase FROM log_in WHERE crew = :crew")
                .bind("crew", crew.value())
                .mapTo(String.class)
                .findOne();
    }

    /** Sets a passphrase, ends all sessions of the person and uses up a start code. */
    public static void set(Write write, Id crew, String hash) {
        write.handle()
                .createUpdate("INSERT INTO log_in (crew, passphrase, since) VALUES (:crew, :hash, :at)"
                        + " ON CONFLICT (crew) DO UPDATE SET passphrase = excluded.passphrase")
                .bind("crew", crew.value())
                .bind("hash", hash)
                .bind("at", write.at().toString())
                .execute();
        SessionStore.endAll(write, crew);
        forgetCode(write, crew);
    }

    /** The same passphrase, hashed anew: sessions stay. */
    public static void rehash(Write write, Id crew, String hash) {
        write.handle()
                .createUpdate("UPDATE log_in SET passphrase = :hash WHERE crew = :crew")
                .bind("hash", hash)
                .bind("crew", crew.value())
                .execute();
    }

    /** Takes a log-in away with its sessions and its code. */
    public static void remove(Write write, Id crew) {
        SessionStore.endAll(write, crew);
        forgetCode(write, crew);
        write.handle()
                .createUpdate("DELETE FROM log_in WHERE crew = :crew")
                .bind("crew", crew.value())
                .execute();
    }

    public static Optional<StartCode> code(Read read, Id crew) {
        return read.handle()
                .createQuery("SELECT code_sha256, until FROM start_code WHERE crew = :crew")
                .bind("crew", crew.value())
                .mapToMap()
                .findOne()
                .map(row -> new StartCode((String) row.get("code_sha256"), Instant.parse((String) row.get("until"))));
    }

    /** Gives a person a code, instead of an earlier one. */
    public static void giveCode(Write write, Id crew, StartCode code) {
        forgetCode(write, crew);
        write.handle()
                .createUpdate("INSERT INTO start_code (crew, code_sha256, until) VALUES (:crew, :code, :until)")
                .bind("crew", crew.value())
                .bind("code", code.sha256())
                .bind("until", code.until().toString())
                .execute();
    }

    private static void forgetCode(Write write, Id crew) {
        write.handle()
                .createUpdate("DELETE FROM start_code WHERE crew = :crew")
                .bind("crew", crew.value())
                .execute();
    }
}
