package weekwright.account;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Write;

/**
 * Where the secret addresses of people's own weeks are kept: the table {@code week_link}. Whoever has the address sees that
 * person's work of the coming days and says for them whether they come; nothing else. Stored as a hash, no part of the
 * plain files.
 */
public final class WeekLinkStore {
    private WeekLinkStore() {}

    /** Makes an address; the one before it leads nowhere from then on. Gives its secret part, which is shown once. */
    public static String renew(Write write, Id crew) {
        String token = Codes.token();
        write.handle()
                .createUpdate(
                        "INSERT INTO week_link (crew, token_sha256, since) VALUES (:crew, :token, :at)"
                                + " ON CONFLICT (crew) DO UPDATE SET token_sha256 = excluded.token_sha256, since = excluded.since")
                .bind("crew", crew.value())
                .bind("token", Codes.sha256(token))
                .bind("at", write.at().toString())
                .execute();
        return token;
    }

    /** Takes an address away. */
    public static void end(Write write, Id crew) {
        write.handle()
                .createUpdate("DELETE FROM week_link WHERE crew = :crew")
                .bind("crew", crew.value())
                .execute();
    }

    /** Whose week this is; empty for an address that leads nowhere. */
    public static Optional<Id> whose(Read read, String token) {
        return read.handle()
                .createQuery("SELECT crew FROM week_link WHERE token_sha256 = :token")
                .bind("token", Codes.sha256(token))
                .mapTo(String.class)
                .findOne()
                .map(Id::new);
    }

    /** Since when who has one, by the person's folded id. */
    public static Map<String, Instant> since(Read read) {
        return read.handle().createQuery("SELECT crew, since FROM week_link").mapToMap().list().stream()
                .collect(Collectors.toMap(
                        row -> new Id((String) row.get("crew")).folded(),
                        row -> Instant.parse((String) row.get("since"))));
    }
}
