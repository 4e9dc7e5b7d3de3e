package weekwright.account;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Write;

/** Where sessions are kept: the table {@code session}. They are no part of the project and raise no version. */
public final class SessionStore {
    private static final String COLUMNS = "SELECT token_sha256, crew, since, last_seen, browser FROM session ";
    private static final int BROWSER_MOST = 200;

    private SessionStore() {}

    public static Optional<Session> find(Read read, String tokenSha256) {
        return read.handle()
                .createQuery(COLUMNS + "WHERE token_sha256 = :token")
                .bind("token", tokenSha256)
                .mapToMap()
                .findOne()
                .map(SessionStore::session);
    }

    /** Those of one person, the last used first. */
    public static List<Session> of(Read read, Id crew) {
        return read.handle()
                .createQuery(COLUMNS + "WHERE crew = :crew ORDER BY last_seen DESC, token_sha256")
                .bind("crew", crew.value())
                .mapToMap()
                .map(SessionStore::session)
                .list();
    }

    /** Begins one, and forgets those that have ended by themselves. */
    public static void begin(Write write, String tokenSha256, Id crew, String browser) {
        write.handle()
                .createUpdate("DELETE FROM session WHERE last_seen < :idle OR since < :whole")
                .bind("idle", write.at().minus(Session.IDLE).toString())
                .bind("whole", write.at().minus(Session.WHOLE).toString())
                .execute();
        write.handle()
                .createUpdate("INSERT INTO session (token_sha256, crew, since, last_seen, browser)"
                        + " VALUES (:token, :crew, :at, :at, :browser)")
                .bind("token", tokenSha256)
                .bind("crew", crew.value())
                .bind("at", write.at().toString())
                .bind("browser", browser.substring(0, Math.min(BROWSER_MOST, browser.length())))
                .execute();
    }

    public static void seen(Write write, String tokenSha256) {
        write.handle()
                .createUpdate("UPDATE session SET last_seen = :at WHERE token_sha256 = :token")
                .bind("at", write.at().toString())
                .bind("token", tokenSha256)
                .execute();
    }

    /** Ends one of a person's own, by its mark; whether there was one. */
    public static boolean end(Write write, Id crew, String mark) {
        return write.handle()
                        .createUpdate("DELETE FROM session WHERE crew = :crew AND substr(token_sha256, 1, 16) = :mark")
                        .bind("crew", crew.value())
                        .bind("mark", mark)
                        .execute()
                > 0;
    }

    public static void endAll(Write write, Id crew) {
        write.handle()
                .createUpdate("DELETE FROM session WHERE crew = :crew")
                .bind("crew", crew.value())
                .execute();
    }

    private static Session session(Map<String, Object> row) {
        return new Session(
                (String) row.get("token_sha256"),
                new Id((String) row.get("crew")),
                Instant.parse((String) row.get("since")),
                Instant.parse((String) row.get("last_seen")),
                (String) row.get("browser"));
    }
}
