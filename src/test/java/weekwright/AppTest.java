package weekwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.db.FolderRefused;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Templates;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;
import weekwright.web.Server;

class AppTest {
    @TempDir
    Path folder;

    private App open(Path path) throws FolderRefused {
        return new App(path, ServerFixture.CLOCK, Templates.packed(), false);
    }

    @Test
    void an_empty_or_new_folder_is_taken_without_a_project() throws Exception {
        try (App app = open(folder.resolve("new"))) {
            assertThat(app.project()).isEmpty();
            SmallProject.fill(app.create());
            assertThat(app.project()).isPresent();
        }
        try (App again = open(folder.resolve("new"))) {
            assertThat(again.project()).isPresent();
        }
    }

    @Test
    void while_it_serves_a_backup_of_the_day_is_made_by_itself() throws Exception {
        try (App app = open(folder.resolve("new"))) {
            SmallProject.fill(app.create());
            app.keepDays();
        }
        assertThat(folder.resolve("new/backups/2026-11-25-080000.zip")).isRegularFile();
        try (App app = open(folder.resolve("new"))) {
            app.keepDays();
        }
        try (var files = Files.list(folder.resolve("new/backups"))) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void while_it_serves_pictures_of_an_import_get_their_copies_before_anybody_asks() throws Exception {
        try (App app = open(folder.resolve("new"))) {
            SmallProject.fill(app.create());
            app.create().write("ilse", write -> {
                NoteStore.TABLE.insert(
                        write, SmallProject.of(Note.class, "id", "n1", "title", "Stones", "date", "2026-11-09"));
                PhotoStore.TABLE.insert(write, SmallProject.of(Photo.class, "note", "n1", "file", "sill.png"));
                PhotoStore.TABLE.insert(write, SmallProject.of(Photo.class, "note", "n1", "file", "gone.png"));
                return null;
            });
            Path photos = Files.createDirectories(folder.resolve("new/photos"));
            Files.write(
                    photos.resolve("sill.png"),
                    CameraPicture.bytes(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png"));
            app.copies();
            try (var copies = Files.list(photos.resolve(".copies"))) {
                assertThat(copies.map(copy -> copy.getFileName().toString()))
                        .containsExactlyInAnyOrder("sill.png.1600.png", "sill.png.480.png");
            }
        }
    }

    @Test
    void a_backup_that_cannot_be_made_is_said_on_the_pages_until_one_was_made() throws Exception {
        try (App app = open(folder.resolve("new"))) {
            SmallProject.fill(app.create());
            Path place = folder.resolve("new/backups");
            Files.writeString(place, "in the way");
            String why = "Today's backup was not made: The backup " + place.resolve("2026-11-25-080000.zip")
                    + " cannot be written: " + place
                    + ". Nothing was left there. Look after the disk and the right to write there.";
            assertThatThrownBy(app::backup).isInstanceOf(FolderRefused.class);
            try (Server server = Server.start(app, "127.0.0.1", 0)) {
                Visitor ilse = new Visitor("http://127.0.0.1:" + server.port());
                ilse.setCookie("who", "ilse");
                assertThat(ilse.get("/ahead")
                                .page()
                                .select("p:has(a[href=/crew/backups])")
                                .eachText())
                        .containsExactly(why + " Backups");
                assertThat(ilse.get("/crew/backups").page().select(".trouble").text())
                        .isEqualTo(why + " Make one now. If that fails, look after the disk.");
                Files.delete(place);
                app.backup();
                assertThat(ilse.get("/crew/backups").page().select(".trouble")).isEmpty();
                assertThat(ilse.get("/ahead").page().select("a[href=/crew/backups]"))
                        .isEmpty();
            }
        }
    }

    @Test
    void a_folder_with_other_things_in_it_is_refused() throws Exception {
        Files.writeString(folder.resolve("letter.txt"), "Dear Ilse");
        assertThatThrownBy(() -> open(folder))
                .isInstanceOf(FolderRefused.class)
                .hasMessage(
                        folder + " is no project folder: it has no build.db. Name a project's folder, or an empty one"
                                + " to start a new project in.");
        assertThat(Files.exists(folder.resolve("server.lock"))).isFalse();
    }

    @Test
    void a_folder_that_is_already_served_is_refused() throws Exception {
        try (App app = open(folder)) {
            assertThatThrownBy(() -> open(folder))
                    .isInstanceOf(FolderRefused.class)
                    .hasMessage(folder + " is already open in another weekwright (process "
                            + ProcessHandle.current().pid() + "). Use that one, or stop it first.");
            assertThat(app.project()).isEmpty();
        }
        open(folder).close();
    }

    @Test
    void a_port_that_is_taken_is_told() throws Exception {
        try (App app = open(folder.resolve("one"));
                App other = open(folder.resolve("two"));
                Server first = Server.start(app, "127.0.0.1", 0)) {
            assertThatThrownBy(() -> Server.start(other, "127.0.0.1", first.port()))
                    .isInstanceOf(Server.PortTaken.class)
                    .hasMessage("Port " + first.port()
                            + " is taken by another program. Choose another with --port, or 0 for a free one.");
        }
    }
}
