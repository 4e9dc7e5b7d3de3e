package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class NotesFilesNewPageTest {
    private static final String NAME = "2026-11-09-sill-stones.md";

    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void start() {
        server = ServerFixture.of(db -> {
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
                                "stage",
                                "weir",
                                "text",
                                "Two lie."));
                PhotoStore.TABLE.insert(
                        write, OakMill.row(Photo.class, "note", "n1", "file", "sill.png", "caption", "The first two"));
                return null;
            });
        });
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Visitor.Reply send(String name, String text) {
        return ilse.form(ilse.get("/notes/files/new"))
                .attach("files", name, text.getBytes(StandardCharsets.UTF_8))
                .send();
    }

    private String file() {
        return ilse.get("/notes/n1/file").body();
    }

    private Note note(String id) {
        return server.db()
                .read(read -> NoteStore.TABLE.find(read, new Id(id)))
                .orElseThrow()
                .value();
    }

    @Test
    void a_note_goes_out_as_a_file_and_comes_back_the_same() {
        Visitor.Reply out = ilse.get("/notes/n1/file");
        assertThat(out.header("content-disposition")).isEqualTo("attachment; filename=\"" + NAME + "\"");
        assertThat(out.body())
                .isEqualTo("---\nid: n1\ntitle: Sill stones\ndate: 2026-11-09\nstage: weir\n"
                        + "photo: sill.png | The first two\n---\n\nTwo lie.\n");
        long version = server.db().version();
        Visitor.Reply back = ilse.follow(send(NAME, out.body()));
        assertThat(back.page().select(".flash p").text()).isEqualTo("One was as it stands here.");
        assertThat(server.db().version()).isEqualTo(version);
    }

    @Test
    void a_file_changed_outside_is_a_new_version_that_can_be_taken_back() {
        Visitor.Reply read = ilse.follow(send(
                NAME,
                file().replace("Two lie.", "Three lie. \u05e9\u05dc\u05d5\u05dd \ud83e\udea8")
                        .replace("two\n", "three | Three stones\n")));
        assertThat(read.page().select(".flash p").text()).isEqualTo("One note has a new version.");
        assertThat(note("n1").text()).isEqualTo("Three lie. \u05e9\u05dc\u05d5\u05dd \ud83e\udea8");
        List<Photo> photos = server.db().read(PhotoStore.TABLE::values);
        assertThat(photos).extracting(Photo::caption).containsExactly("The first three");
        assertThat(photos).extracting(Photo::alternative).containsExactly("Three stones");
        ilse.follow(ilse.form(read, ".flash form").send());
        assertThat(note("n1").text()).isEqualTo("Two lie.");
    }

    @Test
    void a_note_with_a_new_id_is_added() {
        Visitor.Reply read = ilse.follow(send(
                "2026-11-20-frost.md", "---\r\nid: n2\r\ntitle: Frost\r\ndate: 2026-11-20\r\n---\r\n\r\nNo lime.\r\n"));
        assertThat(read.page().select(".flash p").text()).isEqualTo("One note is new.");
        assertThat(note("n2").text()).isEqualTo("No lime.");
    }

    @Test
    void every_fault_of_every_file_is_told_and_nothing_is_kept() {
        Visitor.Reply refused = ilse.form(ilse.get("/notes/files/new"))
                .attach("files", NAME, file().replace("weir", "moon").getBytes(StandardCharsets.UTF_8))
                .attach("files", "2026-11-20-frost.md", "---\nid: n2\ntitle: Frost".getBytes(StandardCharsets.UTF_8))
                .attach("files", "2026-11-21-ice.md", "No head at all".getBytes(StandardCharsets.UTF_8))
                .attach(
                        "files",
                        "2026-11-22-snow.md",
                        "---\nid: n4\ntitel: Snow\ndate: 2026-11-22\n---\n".getBytes(StandardCharsets.UTF_8))
                .attach("files", "2026-11-23-rain.md", new byte[] {(byte) 0xc3, 0x28})
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "2026-11-23-rain.md line 1: is not UTF-8 at byte 1 of this line; save it as CSV UTF-8 or plain"
                                + " UTF-8 text. 2026-11-20-frost.md line 1: opens a header that is never closed; write a"
                                + " line --- after it. 2026-11-21-ice.md line 1: has no lines between two lines ---; begin"
                                + " the note with them. 2026-11-22-snow.md line 3: \"titel\" is not a key of a build note;"
                                + " write title. 2026-11-22-snow.md line 1, column title: is missing; write what it is"
                                + " about. 2026-11-09-sill-stones.md, column stage: \"moon\" is no stage of this project;"
                                + " choose one of the list");
        assertThat(note("n1").stage().orElseThrow().value()).isEqualTo("weir");
        assertThat(ilse.form(ilse.get("/notes/files/new")).send().troubles())
                .containsExactly("is missing; choose one or more notes ending in .md");
    }

    @Test
    void a_picture_that_is_not_there_and_a_note_sent_twice_are_refused() {
        assertThat(send(NAME, file().replace("sill.png", "gone.png")).troubles())
                .containsExactly(
                        "2026-11-09-sill-stones.md, column photo: \"gone.png\" is not in photos/; add the picture on"
                                + " the note's page, or take the line out");
        Visitor.Reply twice = ilse.form(ilse.get("/notes/files/new"))
                .attach("files", NAME, file().getBytes(StandardCharsets.UTF_8))
                .attach("files", "2026-11-09-other.md", file().getBytes(StandardCharsets.UTF_8))
                .send();
        assertThat(twice.troubles())
                .containsExactly(
                        "2026-11-09-other.md, column id: \"n1\" stands in 2026-11-09-sill-stones.md too; send one of"
                                + " them");
    }
}
