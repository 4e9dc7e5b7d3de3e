package weekwright.account;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Write;

/**
 * Secret addresses of calendars: rows of the table {@code secret_link}. Only hashes are kept. One address for what concerns
 * all, one for each person's week.
 */
public final class CalendarLinkStore {
    private CalendarLinkStore() {}

    /** @param crew whose week it is; empty for what concerns all */
    public record CalendarLink(Optional<Id> crew, Instant since) {}

    /** The link of a secret, or empty where nobody has it. */
    public static Optional<CalendarLink> find(Read read, String secret) {
        return read.handle()
                .createQuery("SELECT crew, since FROM secret_link WHERE purpose = 'calendar' AND token_sha256 = :hash")
                .bind("hash", Codes.sha256(secret))
                .mapToMap()
                .findOne()
                .map(row -> new CalendarLink(
                        Optional.ofNullable((String) row.get("crew")).map(Id::new),
                        Instant.parse((String) row.get("since"))));
    }

    /** Since when each address stands: by the person's id in lower case, empty text for what concerns all. */
    public static Map<String, Instant> since(Read read) {
        Map<String, Instant> since = new HashMap<>();
        read.handle()
                .createQuery("SELECT crew, since FROM secret_link WHERE purpose = 'calendar'")
                .mapToMap()
                .forEach(row -> since.put(
                        Optional.ofNullable((String) row.get("crew"))
                                .map(id -> new Id(id).folded())
                                .orElse(""),
                        Instant.parse((String) row.get("since"))));
        return since;
    }

    /** Makes an address; the one before it ends. @return the secret, 256 random bits, kept nowhere */
    public static String renew(Write write, Optional<Id> crew) {
        String secret = Codes.token();
        end(write, crew);
        write.handle()
                .createUpdate("INSERT INTO secret_link (token_sha256, purpose, crew, since)"
                        + " VALUES (:hash, 'calendar', :crew, :at)")
                .bind("hash", Codes.sha256(secret))
                .bind("crew", crew.map(Id::value).orElse(null))
                .bind("at", write.at().toString())
                .execute();
        return secret;
    }

    /** Ends an address. */
    public static void end(Write write, Optional<Id> crew) {
        write.handle()
                .createUpdate("DELETE FROM secret_link WHERE purpose = 'calendar' AND crew IS :crew")
                .bind("crew", crew.map(Id::value).orElse(null))
                .execute();
    }
}
