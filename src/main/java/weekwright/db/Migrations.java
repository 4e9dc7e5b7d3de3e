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
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.UnableToExecuteStatementException;

/** Brings a database to the newest schema; {@code user_version} counts the migrations that it has had. */
final class Migrations {
    /** "weekwrt1" cut to what the file header holds; tells our files from other SQLite files. */
    static final int APPLICATION_ID = 0x77656b31;

    static final List<String> FILES = List.of(
            "0001_start.sql",
            "0002_start_codes.sql",
            "0003_search.sql",
            "0004_change_by_thing.sql",
            "0005_running_clock.sql",
            "0006_skipped_slots.sql",
            "0007_note_drafts.sql",
            "0008_example_rows.sql",
            "0009_calendar_entry.sql",
            "0010_bank_files.sql",
            "0011_week_links.sql",
            "0012_build_log.sql",
            "0013_shot_takes.sql",
            "0014_clip_time.sql",
            "0015_levers.sql",
            "0016_closed_months.sql",
            "0017_episode_parts.sql",
            "0018_hazards_read.sql",
            "0019_public_money.sql",
            "0020_take_off.sql",
            "0021_day_words.sql",
            "0022_named_forecasts.sql",
            "0023_names_left_out.sql",
            "0024_quotes.sql",
            "0025_suppliers.sql");

    private Migrations() {}

    /** The schema that this program writes. */
    static int newest() {
        return FILES.size();
    }

    /** Runs what is missing, each migration whole or not at all. The handle must be outside a transaction. */
    static void run(Handle handle, int from) {
        run(handle, from, newest());
    }

    /** As above, but no further than an older schema. */
    static void run(Handle handle, int from, int to) {
        for (int done = from; done < to; done++) {
            int number = done + 1;
            String sql = text(FILES.get(done));
            handle.useTransaction(h -> {
                script(h, sql);
                if (number == 1) {
                    h.createUpdate("INSERT INTO meta VALUES (1, 1, :project, :csrf)")
                            .bind("project", secret())
                            .bind("csrf", secret())
                            .execute();
                }
                h.execute("PRAGMA application_id = " + APPLICATION_ID);
                h.execute("PRAGMA user_version = " + number);
            });
        }
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
