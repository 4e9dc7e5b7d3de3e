package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.db.Db;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Pictures in time. */
class NotesPicturesPageTest {
    private static final ServerFixture SERVER = ServerFixture.of(NotesPicturesPageTest::fill);
    private static Visitor ilse;

    @BeforeAll
    static void enter() {
        ilse = SERVER.as("ilse");
    }

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static void fill(Db db) {
        SmallProject.fill(db);
        db.write("test", write -> {
            NoteStore.TABLE.insert(write, note("n1", "Sill stones", "2026-11-09", "weir"));
            NoteStore.TABLE.insert(write, note("n2", "Frost", "2026-11-20", ""));
            NoteStore.TABLE.insert(write, note("n3", "No picture", "2026-11-21", "weir"));
            PhotoStore.TABLE.insert(write, photo("n2", "frost.png"));
            for (int i = 1; i <= 48; i++) {
                PhotoStore.TABLE.insert(write, photo("n1", "sill-" + i + ".png"));
            }
            return null;
        });
    }

    private static Note note(String id, String title, String date, String stage) {
        return OakMill.row(Note.class, "id", id, "title", title, "date", date, "stage", stage, "text", "It lies.");
    }

    private static Photo photo(String note, String file) {
        return OakMill.row(Photo.class, "note", note, "file", file, "caption", "Of " + file, "alternative", "Stones");
    }

    @Test
    void all_pictures_stand_newest_first_under_their_notes_48_to_a_page() {
        Visitor.Reply page = ilse.get("/notes/pictures");
        assertThat(page.page().select("h1").text()).isEqualTo("49 pictures");
        assertThat(page.page().select(".picture-day a").eachText()).containsExactly("Frost", "Sill stones");
        assertThat(page.page().select(".pictures img")).hasSize(48);
        assertThat(page.page().select(".pictures img").first().attr("src")).isEqualTo("/photos/small/frost.png");
        assertThat(page.page().select(".pictures img").first().attr("alt")).isEqualTo("Stones");
        Visitor.Reply older = ilse.get(page.page().select(".buttons a").last().attr("href"));
        assertThat(older.page().select(".pictures p").eachText()).containsExactly("Of sill-48.png");
        assertThat(older.page().select(".buttons a").eachText()).containsExactly("Newer");
    }

    @Test
    void a_stage_has_its_own_from_its_page() {
        String address = ilse.get("/build/stages/weir")
                .page()
                .select("a[href^=/notes/pictures]")
                .attr("href");
        Visitor.Reply page = ilse.get(address);
        assertThat(page.page().select("h1").text()).startsWith("48 pictures of ");
        assertThat(page.page().select(".picture-day a").eachText()).containsExactly("Sill stones");
        assertThat(page.page().select("option[selected]").val()).isEqualTo("weir");
    }

    @Test
    void a_stage_without_pictures_says_where_they_come_from() {
        Visitor.Reply page = ilse.get("/notes/pictures?stage=nowhere");
        assertThat(page.page().select("h1").text()).isEqualTo("No pictures yet");
        assertThat(page.text()).contains("Pictures are added at a note.");
    }
}
