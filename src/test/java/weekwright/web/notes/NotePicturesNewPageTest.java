package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.files.KeptFiles;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.OakMill;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Pictures into a note, several at once. */
class NotePicturesNewPageTest {
    private static final byte[] OF_THE_NINTH = CameraPicture.jpeg(60, 40, "2026:11:09 07:30:00");
    private static final byte[] OF_THE_TWENTIETH = CameraPicture.jpeg(40, 60, "2026:11:20 16:05:00");
    private static final byte[] PLAIN =
            CameraPicture.bytes(CameraPicture.quarters(30, 20, 0x203040, 0x405060, 0x607080, 0x8090a0), "png");

    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void start() {
        server = ServerFixture.of(db -> {
            SmallProject.fill(db);
            db.write("test", write -> {
                NoteStore.TABLE.insert(write, note("n1", "Sill stones", "2026-11-09", "crew"));
                NoteStore.TABLE.insert(write, note("n2", "Frost", "2026-11-20", "everyone"));
                return null;
            });
        });
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private static Note note(String id, String title, String date, String visible) {
        return OakMill.row(
                Note.class, "id", id, "title", title, "date", date, "visible", visible, "text", "Two of nine lie.");
    }

    private List<String> files() {
        return new KeptFiles(server.app().folder().photos()).names();
    }

    private List<Photo> photos() {
        return server.db().read(PhotoStore.TABLE::values);
    }

    private Visitor.Form form(String note) {
        return ilse.form(ilse.get("/notes/" + note + "/pictures/new"));
    }

    @Test
    void several_come_at_once_with_their_words_and_are_taken_back_together() {
        Visitor.Reply note = ilse.follow(form("n1")
                .attach("pictures", "../../etc/IMG_1.jpg", OF_THE_NINTH)
                .attach("pictures", "a\u202egnp.exe", PLAIN)
                .with("shows", "Two dressed stones\r\nThe pit from above")
                .with("captions", "\r\nBefore the frost")
                .send());
        assertThat(note.page().select(".flash p").text()).isEqualTo("Two pictures are kept.");
        assertThat(files()).containsExactly("2026-11-09-1.jpg", "2026-11-25-1.png");
        assertThat(note.page().select("article img").eachAttr("src"))
                .containsExactly("/photos/2026-11-09-1.jpg", "/photos/2026-11-25-1.png");
        assertThat(note.page().select("article img").eachAttr("alt"))
                .containsExactly("Two dressed stones", "The pit from above");
        assertThat(photos()).extracting(Photo::caption).containsExactly("", "Before the frost");
        Visitor.Reply back = ilse.follow(ilse.form(note, ".flash form").send());
        assertThat(back.page().select("article img")).isEmpty();
        assertThat(photos()).isEmpty();
    }

    @Test
    @Requirement({"14.2.8", "5.4.2"})
    void what_is_given_out_has_no_place_no_camera_and_the_right_type() {
        form("n1").attach("pictures", "a.jpg", OF_THE_NINTH).send();
        for (String address : List.of("/photos/2026-11-09-1.jpg", "/photos/small/2026-11-09-1.jpg")) {
            Visitor.Reply picture = ilse.get(address);
            assertThat(picture.status()).isEqualTo(200);
            assertThat(picture.header("content-type")).startsWith("image/jpeg");
            assertThat(picture.header("x-content-type-options")).isEqualTo("nosniff");
            assertThat(picture.body()).doesNotContain(CameraPicture.PRIVATE, "Exif", "xap");
            assertThat(server.as("noor").get(address).status()).isEqualTo(403);
        }
        for (String address : List.of(
                "/photos/..%2Fbuild.db",
                "/photos/.copies",
                "/photos/.copies%2F2026-11-09-1.jpg.1600.jpg",
                "/photos/small/..%2F..%2Fbuild.db",
                "/photos/small/none.jpg")) {
            assertThat(ilse.get(address).status()).as(address).isIn(400, 404);
        }
    }

    @Test
    void every_fault_is_told_at_once_nothing_is_kept_and_what_was_typed_stays() {
        byte[] large = Arrays.copyOf(OF_THE_NINTH, (int) KeptFiles.MOST_BYTES + 1);
        Visitor.Reply refused = form("n1")
                .attach("pictures", "good.jpg", OF_THE_NINTH)
                .attach("pictures", "large.jpg", large)
                .attach("pictures", "nothing.png", new byte[0])
                .attach("pictures", "page.jpg", "<html><script>".getBytes(StandardCharsets.UTF_8))
                .attach("pictures", "bomb.png", CameraPicture.pngHead(60_000, 60_000))
                .with("shows", "Two dressed stones")
                .with("captions", "x".repeat(501))
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"large.jpg\" is larger than 25 MB; save it smaller."
                                + " \"nothing.png\" is empty; choose the picture once more."
                                + " \"page.jpg\" is no JPEG, PNG or WebP inside; save it as one of these."
                                + " \"bomb.png\" has more than 60 megapixels; save it smaller",
                        "\"" + "x".repeat(59) + "…\" is too long; write at most 500 characters");
        assertThat(ilse.form(refused).value("shows").strip()).isEqualTo("Two dressed stones");
        assertThat(files()).isEmpty();
        assertThat(photos()).isEmpty();
        assertThat(form("n1").send().troubles()).containsExactly("is missing; choose or take a picture");
    }

    @Test
    void one_that_is_damaged_keeps_the_others_out_too() {
        Visitor.Reply refused = form("n1")
                .attach("pictures", "good.jpg", OF_THE_NINTH)
                .attach("pictures", "cut.jpg", Arrays.copyOf(OF_THE_TWENTIETH, OF_THE_TWENTIETH.length - 120))
                .send();
        assertThat(refused.troubles())
                .containsExactly("\"cut.jpg\" is damaged or of a rare kind; open it and save it once more as JPEG");
        assertThat(files()).isEmpty();
        assertThat(photos()).isEmpty();
    }

    @Test
    @Requirement({"5.1.1", "5.2.1"})
    void more_than_twelve_are_too_many_at_once() {
        Visitor.Form form = form("n1");
        for (int i = 0; i < 13; i++) {
            form.attach("pictures", i + ".png", PLAIN);
        }
        assertThat(form.send().troubles()).containsExactly("\"13 files\" are too many at once; send 12 at a time");
        assertThat(files()).isEmpty();
    }

    @Test
    void sent_twice_they_are_kept_once() {
        Visitor.Form form = form("n1").attach("pictures", "a.jpg", OF_THE_NINTH);
        Visitor.Reply first = form.send();
        Visitor.Reply second = form.send();
        assertThat(second.to()).isEqualTo(first.to());
        assertThat(files()).containsExactly("2026-11-09-1.jpg");
        assertThat(photos()).hasSize(1);
    }

    @Test
    void a_note_for_everyone_needs_words_with_each_picture() {
        Visitor.Reply refused = form("n2")
                .attach("pictures", "a.jpg", OF_THE_TWENTIETH)
                .attach("pictures", "b.png", PLAIN)
                .with("shows", "Rime on the sill")
                .send();
        assertThat(refused.troubles())
                .containsExactly("has no line for each picture; everyone reads this note;"
                        + " write what each shows, for those who do not see it");
        assertThat(files()).isEmpty();
        ilse.form(refused)
                .attach("pictures", "a.jpg", OF_THE_TWENTIETH)
                .attach("pictures", "b.png", PLAIN)
                .with("shows", "Rime on the sill\nThe thermometer at six")
                .send();
        assertThat(photos())
                .extracting(Photo::alternative)
                .containsExactly("Rime on the sill", "The thermometer at six");
    }

    @Test
    void the_day_a_picture_was_taken_suggests_its_note() {
        Visitor.Reply stays = ilse.follow(
                form("n1").attach("pictures", "a.jpg", OF_THE_TWENTIETH).send());
        assertThat(stays.page().select(".flash p").text())
                .isEqualTo("One picture is kept. Some were taken on 20 November, not on the day of this note.");
        Visitor.Reply refused = form("n1")
                .attach("pictures", "b.jpg", OF_THE_TWENTIETH)
                .with("by_day", "yes")
                .send();
        assertThat(refused.troubles())
                .containsExactly("has no line for each picture; everyone reads \"Frost\";"
                        + " write what each shows, for those who do not see it");
        Visitor.Reply moved = ilse.follow(form("n1")
                .attach("pictures", "b.jpg", OF_THE_TWENTIETH)
                .attach("pictures", "c.jpg", OF_THE_NINTH)
                .with("by_day", "yes")
                .with("shows", "Rime on the sill\nTwo dressed stones")
                .send());
        assertThat(moved.page().select(".flash p").text())
                .isEqualTo("Two pictures are kept. Some stand with the note of their day: Frost.");
        assertThat(photos()).extracting(photo -> photo.note().value()).containsExactly("n1", "n2", "n1");
        assertThat(files()).containsExactly("2026-11-09-1.jpg", "2026-11-20-1.jpg", "2026-11-20-2.jpg");
    }

    @Test
    void helpers_add_none() {
        assertThat(server.as("noor").get("/notes/n1/pictures/new").status()).isEqualTo(403);
    }
}
