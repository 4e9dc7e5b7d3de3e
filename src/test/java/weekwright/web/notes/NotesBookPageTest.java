package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.db.Db;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class NotesBookPageTest {
    private static final ServerFixture SERVER = ServerFixture.of(NotesBookPageTest::fill);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static void fill(Db db) {
        SmallProject.fill(db);
        db.write("test", write -> {
            for (String[] note : new String[][] {
                {"n2", "Second course", "2026-11-20", "weir", "# Lime\n\nNone.[^1]\n\n[^1]: Too cold."},
                {"n1", "Sill stones", "2026-11-09", "weir", "Two lie.[^1]\n\n[^1]: Of nine."},
                {"n3", "Frost", "2026-11-21", "", "A wet cloth over it."}
            }) {
                NoteStore.TABLE.insert(
                        write,
                        OakMill.row(
                                Note.class,
                                "id",
                                note[0],
                                "title",
                                note[1],
                                "date",
                                note[2],
                                "stage",
                                note[3],
                                "author",
                                "ilse",
                                "text",
                                note[4]));
            }
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
            LedgerEntryStore.TABLE.insert(
                    write,
                    OakMill.row(
                            LedgerEntry.class,
                            "id",
                            "b1",
                            "date",
                            "2026-11-02",
                            "amount",
                            "-120.5",
                            "kind",
                            "material",
                            "stage",
                            "weir",
                            "payee",
                            "the quarry"));
            return null;
        });
    }

    private static Document book(String query) {
        return SERVER.as("ilse").get("/notes/book" + query).page();
    }

    @Test
    void all_notes_stand_in_chapters_by_stage_the_oldest_first_and_the_contents_lead_to_each() {
        Document page = book("");
        assertThat(page.select(".lead").text())
                .isEqualTo("3 notes, with the hours and costs of each stage. Print it, or print it to a file.");
        assertThat(page.select(".book-chapter h2").eachText()).containsExactly("Weir", "Of no one stage");
        assertThat(page.select(".book-chapter h3").eachText()).containsExactly("Sill stones", "Second course", "Frost");
        assertThat(page.select(".book-contents a").eachText())
                .containsExactly("Weir", "Sill stones", "Second course", "Of no one stage", "Frost");
        for (Element link : page.select(".book-contents a, .book-chapter a[href^=#]")) {
            assertThat(page.getElementById(link.attr("href").substring(1)))
                    .as(link.outerHtml())
                    .isNotNull();
        }
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }

    @Test
    void headings_in_a_note_stand_under_its_title_and_its_pictures_behind_its_text() {
        Document page = book("");
        assertThat(page.select("h4").eachText()).containsExactly("Lime");
        assertThat(page.select("figure img").eachAttr("alt")).containsExactly("Two dressed stones in a row");
        assertThat(page.select("figcaption").eachText()).containsExactly("The first two");
    }

    @Test
    void a_chapter_has_the_hours_and_the_costs_of_its_stage() {
        Document page = book("?stage=WEIR");
        assertThat(page.select("h1").text()).isEqualTo("Weir");
        assertThat(page.select("caption").eachText()).containsExactly("Hours of Weir", "Costs of Weir");
        assertThat(page.select(".sum").eachText()).containsExactly("Together 46 33", "Together €0.00 €120.50");
        assertThat(page.select(".book-chapter h3").eachText()).containsExactly("Sill stones", "Second course");
    }

    @Test
    void a_stage_that_is_not_there_is_said_and_a_build_without_notes_begins_with_one() {
        Visitor.Reply reply = SERVER.as("ilse").get("/notes/book?stage=moon");
        assertThat(reply.status()).isEqualTo(404);
        assertThat(reply.text()).contains("There is no stage moon.");
        assertThat(SERVER.as("noor").get("/notes/book").status()).isEqualTo(403);
        try (ServerFixture empty = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            Document page = empty.as("ilse").get("/notes/book").page();
            assertThat(page.select(".lead").text()).isEqualTo("No note is written yet.");
            assertThat(page.select("main").text())
                    .contains("A stage becomes a chapter with its first hours, its first cost or its first note.");
        }
    }
}
