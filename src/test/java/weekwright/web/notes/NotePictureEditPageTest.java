package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.files.KeptFiles;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** The words of a picture and its note. */
class NotePictureEditPageTest {
    private ServerFixture server;
    private Visitor ilse;
    private String address;

    @BeforeEach
    void start() {
        server = ServerFixture.of(db -> {
            SmallProject.fill(db);
            db.write("test", write -> {
                NoteStore.TABLE.insert(write, note("n1", "Sill stones", "2026-11-09", "crew"));
                NoteStore.TABLE.insert(write, note("n2", "Frost", "2026-11-20", "everyone"));
                NoteStore.TABLE.insert(write, note("n3", "Lime", "2026-11-22", "crew"));
                return null;
            });
        });
        ilse = server.as("ilse");
        Visitor.Reply note = ilse.follow(ilse.form(ilse.get("/notes/n1/pictures/new"))
                .attach("pictures", "a.jpg", CameraPicture.jpeg(40, 60, "2026:11:20 16:05:00"))
                .send());
        address = note.page().select("figcaption a").attr("href");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private static Note note(String id, String title, String date, String visible) {
        return OakMill.row(
                Note.class, "id", id, "title", title, "date", date, "visible", visible, "text", "Two of nine lie.");
    }

    @Test
    void its_words_are_changed_and_taken_back() {
        Visitor.Reply page = ilse.get(address);
        assertThat(page.page().select("main img").attr("src")).isEqualTo("/photos/2026-11-20-1.jpg");
        assertThat(page.page().select(".lead").text()).isEqualTo("Taken on 20 November.");
        Visitor.Reply note = ilse.follow(ilse.form(page)
                .with("caption", "Rime")
                .with("alternative", "Rime on the sill")
                .send());
        assertThat(note.page().select(".flash p").text()).isEqualTo("The picture is saved.");
        assertThat(note.page().select("article img").attr("alt")).isEqualTo("Rime on the sill");
        assertThat(note.page().select("figcaption").text()).startsWith("Rime");
        Visitor.Reply back = ilse.follow(ilse.form(note, ".flash form").send());
        assertThat(back.page().select("article img").attr("alt")).isEmpty();
    }

    @Test
    void the_note_of_the_day_it_was_taken_is_offered_first_and_asks_for_words() {
        Visitor.Reply page = ilse.get(address);
        assertThat(page.page().select("select[name=note] option").eachText())
                .containsExactly("20 Nov 2026, Frost", "22 Nov 2026, Lime", "9 Nov 2026, Sill stones");
        assertThat(page.page().select("main .hint").eachText()).contains("Of the day it was taken: Frost.");
        Visitor.Reply refused = ilse.form(page)
                .with("note", "n2")
                .with("caption", "x".repeat(501))
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"" + "x".repeat(59) + "…\" is too long; write at most 500 characters");
        Visitor.Reply still = ilse.form(refused).with("caption", "Rime").send();
        assertThat(still.troubles())
                .containsExactly("is missing; everyone reads this note;"
                        + " write what the picture shows, for those who do not see it");
        assertThat(ilse.form(still).value("caption")).isEqualTo("Rime");
        Visitor.Reply moved = ilse.follow(
                ilse.form(still).with("alternative", "Rime on the sill").send());
        assertThat(moved.page().select("article h1").text()).isEqualTo("Frost");
        assertThat(moved.page().select("article img").attr("alt")).isEqualTo("Rime on the sill");
        assertThat(ilse.get(address).status()).isEqualTo(404);
        assertThat(ilse.get(address).text()).contains("This picture is not with this note any more.");
    }

    @Test
    void a_note_is_not_for_everyone_while_a_picture_has_no_words() {
        Visitor.Reply refused = ilse.form(ilse.get("/notes/n1/edit"))
                .with("visible", "everyone")
                .send();
        assertThat(refused.troubles())
                .containsExactly("\"everyone\" asks for words with each picture, for those who do not see it;"
                        + " one has none; write what it shows at the pictures of the note first");
        ilse.form(ilse.get(address)).with("alternative", "Rime on the sill").send();
        assertThat(ilse.form(refused).send().status()).isEqualTo(303);
        Visitor.Reply wordless =
                ilse.form(ilse.get(address)).with("alternative", "").send();
        assertThat(wordless.troubles())
                .containsExactly("is missing; everyone reads this note;"
                        + " write what the picture shows, for those who do not see it");
    }

    @Test
    void it_is_taken_out_comes_back_and_its_file_stays() {
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "main form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text())
                .isEqualTo("The picture is taken out; its file stays in the folder photos.");
        assertThat(gone.page().select("article img")).isEmpty();
        assertThat(new KeptFiles(server.app().folder().photos()).names()).containsExactly("2026-11-20-1.jpg");
        Visitor.Reply back = ilse.follow(ilse.form(gone, ".flash form").send());
        assertThat(back.page().select("article img")).hasSize(1);
    }

    @Test
    void two_who_change_it_see_both_texts() {
        Visitor bram = server.as("bram");
        Visitor.Form hers = ilse.form(ilse.get(address));
        bram.form(bram.get(address)).with("caption", "Frost").send();
        Visitor.Reply both = hers.with("caption", "Rime").send();
        assertThat(both.status()).isEqualTo(409);
        assertThat(both.page().select("tbody tr").eachText()).containsExactly("Caption nothing Rime Frost");
    }
}
