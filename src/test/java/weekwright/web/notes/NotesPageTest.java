package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
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

class NotesPageTest {
    private static final ServerFixture SERVER = ServerFixture.of(NotesPageTest::fill);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static void fill(Db db) {
        SmallProject.fill(db);
        db.write("test", write -> {
            NoteStore.TABLE.insert(
                    write,
                    OakMill.row(
                            Note.class,
                            "id",
                            "n1",
                            "title",
                            "Sill stones",
                            "date",
                            "2026-11-09",
                            "author",
                            "ilse",
                            "stage",
                            "weir",
                            "tasks",
                            "weir.2",
                            "visible",
                            "everyone",
                            "text",
                            "Two of *nine* lie.\n\n- [x] bedded\n\n<script>alert(1)</script>"));
            NoteStore.TABLE.insert(
                    write,
                    OakMill.row(Note.class, "id", "n2", "title", "Frost", "date", "2026-11-20", "text", "No lime."));
            PhotoStore.TABLE.insert(
                    write,
                    OakMill.row(
                            Photo.class,
                            "note",
                            "n1",
                            "file",
                            "sill.png",
                            "caption",
                            "The first two",
                            "alternative",
                            "Two dressed stones in a row"));
            return null;
        });
    }

    @Test
    void notes_are_listed_newest_first_with_their_first_words() {
        Visitor.Reply page = SERVER.as("ilse").get("/notes");
        assertThat(page.page().select("h1").text()).isEqualTo("2 build notes");
        assertThat(page.page().select(".notes-list h3").eachText()).containsExactly("Frost", "Sill stones");
        assertThat(page.page().select(".notes-list .by").eachText())
                .containsExactly("· seen by the crew only", "Ilse · Weir · 1 picture · seen by everyone");
    }
}
