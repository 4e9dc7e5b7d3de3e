package weekwright.db;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;
import weekwright.base.Packed;

/** Brings a database to the newest schema; {@code user_version} counts the migrations that it has had. */
final class Migrations {
    /** "weekwrt1" cut to what the file header holds; tells our files from other SQLite files. */
    static final int APPLICATION_ID = 0x77656b31;

    /** In the order of the numbers with which they begin; the first is 1, none is left out or there twice. */
    static final List<String> FILES = numbered(Packed.files("migrations"));

    private Migrations() {}

    static List<String> numbered(List<String> files) {
        for (int i = 0; i < files.size(); i++) {
            String number = String.format(Locale.ROOT, "%04d_", i + 1);
            if (!files.get(i).startsWith(number)) {
                throw new IllegalStateException("migrations/" + files.get(i) + " stands where " + number + "… belongs");
            }
        }
        return files;
    }

    /** The schema that this program writes. */
    static int newest() {
        return FILES.size();
    }

    /** Runs what is missing, all of it or nothing. The handle must be outside a transaction. */
    static void run(Handle handle, int from) {
        run(handle, from, newest());
    }

    /** As above, but no further than an older schema. */
    static void run(Handle handle, int from, int to) {
        if (from >= to) {
            return;
        }
        handle.useTransaction(h -> {
            for (int done = from; done < to; done++) {
                script(h, text(FILES.get(done)));
                if (done == 0) {
                    h.createUpdate("INSERT INTO meta VALUES (1, 1, :project, :csrf)")
                            .bind("project", secret())
                            .bind("csrf", secret())
                            .execute();
                }
            }
            h.execute("PRAGMA application_id = " + APPLICATION_ID);
            h.execute("PRAGMA user_version = " + to);
        });
    }

    /** SQLite takes the statements apart itself; to have them parsed for parameters first takes longer than to run them. */
    private static void script(Handle handle, String sql) {
        try (Statement statement = handle.getConnection().createStatement()) {
            statement.executeUpdate(sql);
        } catch (SQLException e) {
            throw new UnableToExecuteStatementException(e, null);
        }
    }

    private static String secret() {
        byte[] bytes = new byte[32];
        new SecureRandom().nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static String text(String file) {
        try (InputStream in = Migrations.class.getResourceAsStream("/migrations/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
