package weekwright.site;

import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Write;

/** The one secret link of a project under which supporters read their notes; 128 random bits. It raises no version. */
public final class SupportersLinkStore {
    private static final int BYTES = 16;
    private static final SecureRandom RANDOM = new SecureRandom();

    private SupportersLinkStore() {}

    /** What tells this project from every other, for the ids of its feed; stays as it is. */
    public static String project(Read read) {
        return read.handle()
                .createQuery("SELECT project_key FROM meta")
                .mapTo(String.class)
                .one();
    }

    /** Its token; empty until the crew makes one. */
    public static Optional<String> find(Read read) {
        return read.handle()
                .createQuery("SELECT token FROM supporters_link")
                .mapTo(String.class)
                .findOne();
    }

    /** Makes a new one; the one before it ends at once. */
    public static void renew(Write write) {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        write.handle()
                .createUpdate("INSERT INTO supporters_link (\"row\", token, since) VALUES (1, :token, :at)"
                        + " ON CONFLICT (\"row\") DO UPDATE SET token = excluded.token, since = excluded.since")
                .bind("token", Base64.getUrlEncoder().withoutPadding().encodeToString(bytes))
                .bind("at", write.at().toString())
                .execute();
    }

    public static void end(Write write) {
        write.handle().execute("DELETE FROM supporters_link");
    }
}
