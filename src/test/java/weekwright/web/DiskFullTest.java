package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.db.Db;
import weekwright.notes.NoteStore;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;
import weekwright.testkit.WritingConnection;

/**
 * A disk that takes nothing more. SQLite answers the same (SQLITE_FULL, rescode.html) when the file may not grow over a number of
 * pages, which needs no small disk; on a real one see {@code campaign.SmallDiskTest}.
 */
class DiskFullTest {
    /** The writing connection alone may not add a page; once it was thrown away, the next one may. */
    private static void full(Db db) throws SQLException {
        WritingConnection.set(db, "PRAGMA max_page_count = 1");
    }

    @Test
    @Requirement({"2.3.3", "16.5.3"})
    void an_entry_that_the_disk_does_not_take_is_told_with_what_was_typed_and_saved_when_sent_again() throws Exception {
        try (ServerFixture server = ServerFixture.small().drawn()) {
            Visitor ilse = server.as("ilse");
            String text = "The third stone lies in lime. ".repeat(3_000).strip();
            Visitor.Form form = ilse.form(ilse.get("/notes/new"))
                    .with("title", "Stones")
                    .with("date", "2026-11-24")
                    .with("text", text);
            long version = server.db().version();
            full(server.db());
            Visitor.Reply refused = form.send();
            assertThat(refused.status()).isEqualTo(507);
            assertThat(refused.troubles())
                    .containsExactly(
                            "The disk is full. Nothing of this entry was saved. Free at least 200 MB and send it"
                                    + " again.");
            assertThat(ilse.form(refused).value("text").strip()).isEqualTo(text);
            assertThat(ilse.form(refused).value("title")).isEqualTo("Stones");
            assertThat(server.db().version()).isEqualTo(version);
            assertThat(server.db().read(NoteStore.TABLE::count)).isZero();
            for (String path : List.of("/week", "/log", "/build", "/funds")) {
                assertThat(ilse.get(path).status()).as(path).isEqualTo(200);
            }
            assertThat(form.send().status()).isEqualTo(303);
            assertThat(server.db().read(NoteStore.TABLE::count)).isEqualTo(1);
        }
    }

    @Test
    void a_forecast_that_the_disk_does_not_keep_is_shown_all_the_same() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            full(server.db());
            server.drawn();
            assertThat(server.as("ilse").get("/ahead").text()).contains("Weir").doesNotContain("failed");
        }
    }
}
