package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class NoteEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @BeforeAll
    static void writeOne() {
        keep("Sill stones", "Two of *nine* lie.");
    }

    /** The address of a new note. */
    private static String keep(String title, String text) {
        Visitor ilse = SERVER.as("ilse");
        return ilse.form(ilse.get("/notes/new"))
                .with("title", title)
                .with("date", "2026-11-09")
                .with("text", text)
                .with("task.0", "weir.2")
                .send()
                .to();
    }

    @Test
    void a_note_is_changed_and_taken_back() {
        String note = keep("Mortar", "Too wet.");
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get(note + "/edit");
        assertThat(ilse.form(page).value("title")).isEqualTo("Mortar");
        assertThat(ilse.form(page).value("task.0")).isEqualTo("weir.2");
        Visitor.Reply refused = ilse.form(page).with("title", "").send();
        assertThat(refused.troubles()).containsExactly("is missing; write what it is about");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("title", "Mortar, again")
                .with("task.0", "")
                .send());
        assertThat(saved.page().select("article h1").text()).isEqualTo("Mortar, again");
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The note is saved.");
        assertThat(saved.page().select("aside li").eachText()).isEmpty();
        ilse.form(saved, ".flash form").send();
        assertThat(ilse.get(note).page().select("article h1").text()).isEqualTo("Mortar");
    }

    @Test
    void two_who_write_the_same_note_see_both_texts() {
        String note = keep("Frost", "No lime.");
        Visitor ilse = SERVER.as("ilse");
        Visitor bram = SERVER.as("bram");
        Visitor.Form hers = ilse.form(ilse.get(note + "/edit"));
        bram.form(bram.get(note + "/edit")).with("text", "Lime under straw.").send();
        Visitor.Reply both = hers.with("text", "No lime, no mortar.").send();
        assertThat(both.status()).isEqualTo(409);
        assertThat(both.page().select("tbody tr").eachText())
                .containsExactly("Text No lime. No lime, no mortar. Lime under straw.");
        Visitor.Reply saved = ilse.follow(ilse.form(both).send());
        assertThat(saved.page().select("article > p").eachText()).contains("No lime, no mortar.");
    }

    @Test
    void a_note_is_removed_and_comes_back() {
        String note = keep("Not wanted", "A slip.");
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply gone = ilse.follow(ilse.form(ilse.get(note + "/edit")).press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("\"Not wanted\" is removed.");
        assertThat(ilse.get(note).status()).isEqualTo(404);
        ilse.form(gone, ".flash form").send();
        assertThat(ilse.get(note).page().select("article h1").text()).isEqualTo("Not wanted");
    }

    @Test
    void a_draft_never_touches_the_note_and_a_note_changed_meanwhile_is_said() {
        String note = keep("Straw", "A little.");
        Visitor ilse = SERVER.as("ilse");
        long before = SERVER.db().version();
        ilse.form(ilse.get(note + "/edit")).with("text", "A little more.").press("autosave");
        assertThat(SERVER.db().version()).isEqualTo(before);
        assertThat(ilse.get(note).page().select("article > p").eachText()).contains("A little.");
        Visitor bram = SERVER.as("bram");
        bram.form(bram.get(note + "/edit")).with("text", "Much.").send();
        Visitor.Reply offered = ilse.get(note + "/edit");
        assertThat(offered.page().select(".remark-box p").text())
                .endsWith("is kept and not saved. The note was changed since; saving the draft shows both first.");
        Visitor.Reply both =
                ilse.form(ilse.get(note + "/edit?draft=yes"), ".note-form").send();
        assertThat(both.status()).isEqualTo(409);
        assertThat(both.page().select("tbody tr").eachText()).containsExactly("Text A little. A little more. Much.");
    }

    @Test
    void a_picture_let_fall_into_the_text_is_the_note_s_once_it_is_kept_and_stands_there_alone() throws Exception {
        String note = keep("Lintel", "It lies.");
        Visitor ilse = SERVER.as("ilse");
        byte[] png = CameraPicture.bytes(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png");
        Visitor.Reply sent = ilse.form(ilse.get(note + "/edit"))
                .attach("pictures", "../lintel.png", png)
                .press("picture");
        assertThat(sent.status()).isEqualTo(200);
        assertThat(sent.body()).isEqualTo("{\"text\":\"![](photos/2026-11-25-1.png)\"}");
        Visitor.Form form = ilse.form(ilse.get(note + "/edit"))
                .with("text", "It lies.\n\n![](photos/2026-11-25-1.png)")
                .with("visible", "everyone");
        assertThat(form.send().troubles())
                .containsExactly(
                        "\"![](photos/2026-11-25-1.png)\" has no words for those who do not see it; everyone reads"
                                + " this note; write what it shows between [ and ]");
        Visitor.Reply saved = ilse.follow(form.with("text", "It lies.\n\n![The lintel](photos/2026-11-25-1.png)")
                .send());
        assertThat(saved.page().select("article img").eachAttr("alt")).containsExactly("The lintel");
        assertThat(saved.page()
                        .select("aside section:contains(Pictures in the text) a")
                        .eachText())
                .containsExactly("2026-11-25-1.png");
        assertThat(SERVER.db().read(PhotoStore.TABLE::values))
                .extracting(Photo::file, Photo::alternative)
                .containsExactly(tuple("2026-11-25-1.png", "The lintel"));
        ilse.form(saved, ".flash form").send();
        assertThat(SERVER.db().read(PhotoStore.TABLE::values)).isEmpty();
    }

    @Test
    void what_is_no_picture_is_refused_in_words_and_nothing_is_kept() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/notes/new"))
                .attach("pictures", "page.jpg", "<html>".getBytes(StandardCharsets.UTF_8))
                .press("picture");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body())
                .isEqualTo(
                        "{\"refused\":\"\\\"page.jpg\\\" is no JPEG, PNG or WebP inside; save it as one of these.\"}");
        assertThat(ilse.form(ilse.get("/notes/new")).press("picture").body())
                .isEqualTo("{\"refused\":\"Is missing; choose or take a picture.\"}");
    }
}
