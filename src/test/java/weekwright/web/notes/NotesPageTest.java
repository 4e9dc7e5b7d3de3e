package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.db.Db;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
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
        SmallProject.fillWithNotes(db);
        db.write("test", write -> {
            NoteStore.TABLE.insert(
                    write,
                    OakMill.row(
                            Note.class, "id", "n0", "title", "First frost", "date", "2025-11-25", "text", "Early."));
            return null;
        });
    }

    @Test
    void notes_are_listed_newest_first_with_their_first_words() {
        Visitor.Reply page = SERVER.as("ilse").get("/notes");
        assertThat(page.page().select("h1").text()).isEqualTo("3 build notes");
        assertThat(page.page().select(".notes-list h3").eachText())
                .containsExactly("First frost", "Frost", "Sill stones", "First frost");
        assertThat(page.page().select(".notes-list .by").eachText())
                .contains("· seen by the crew only", "Ilse · Weir · 1 picture · seen by everyone");
    }

    @Test
    void notes_of_one_stage_or_one_task_are_shown_alone() {
        Visitor ilse = SERVER.as("ilse");
        for (String only : new String[] {"?stage=weir", "?task=weir.2", "?stage=weir&task=weir.2"}) {
            Visitor.Reply page = ilse.get("/notes" + only);
            assertThat(page.page().select("h1").text()).as(only).isEqualTo("One build note");
            assertThat(page.page().select("section:not([aria-labelledby]) h3").eachText())
                    .as(only)
                    .containsExactly("Sill stones");
        }
        Visitor.Reply none = ilse.get("/notes?stage=gate");
        assertThat(none.page().select("h1").text()).isEqualTo("No note of these");
        assertThat(none.page().select("#task option").eachText())
                .containsExactly("every task", "Weir: Set the sill stones");
    }

    @Test
    void notes_of_this_day_in_other_years_stand_first() {
        Visitor.Reply page = SERVER.as("ilse").get("/notes");
        assertThat(page.page().select("section[aria-labelledby=this-day] h3").eachText())
                .containsExactly("First frost");
    }
}
