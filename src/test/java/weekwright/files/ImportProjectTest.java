package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Rejected;
import weekwright.build.StageStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.csv.ProjectData;
import weekwright.testkit.PlainProject;

/** An import writes all of a project or nothing. */
class ImportProjectTest {
    @TempDir
    Path temp;

    private PlainProject small() {
        return PlainProject.in(temp.resolve("files"));
    }

    private Folder project() {
        return new Folder(temp.resolve("project"));
    }

    private ImportProject.Done imports(PlainProject small, boolean replace) throws Exception {
        return ImportProject.into(small.folder(), project(), replace, PlainProject.TODAY, PlainProject.CLOCK);
    }

    private ProjectData stored() throws Exception {
        try (Db db = project().open(PlainProject.CLOCK)) {
            return db.read(read -> ProjectData.of(read, project().path())).orElseThrow();
        }
    }

    @Test
    void a_fault_in_the_last_file_leaves_no_folder_behind() {
        PlainProject small = small().change("cautions.csv", "lime,hands", "lme,hands");
        assertThatThrownBy(() -> imports(small, false))
                .isInstanceOf(Rejected.class)
                .hasMessage(
                        "cautions.csv line 2, column hazard: \"lme\" is not a known hazard; write one of lime, line, lone");
        assertThat(temp.resolve("project")).doesNotExist();
    }

    @Test
    void a_project_that_stands_there_is_not_touched_without_replace() throws Exception {
        imports(small(), false);
        ProjectData before = stored();
        assertThatThrownBy(() -> imports(PlainProject.in(temp.resolve("files")), false))
                .isInstanceOf(FolderRefused.class)
                .hasMessage(project().path() + " holds a project already. Name a new or empty folder, or say --replace"
                        + " to replace the project after a backup of it.");
        assertThat(ImportProject.same(stored(), before)).isTrue();
    }

    @Test
    void a_folder_of_something_else_is_refused() throws Exception {
        Files.createDirectories(project().path());
        Files.writeString(project().path().resolve("letter.txt"), "Dear Sir");
        assertThatThrownBy(() -> imports(small(), true))
                .isInstanceOf(FolderRefused.class)
                .hasMessage(project().path() + " is not empty and holds no project. Name a new or empty folder, or a"
                        + " project's.");
        assertThat(RoundTripTest.files(project().path())).containsOnlyKeys("letter.txt");
    }

    @Test
    void the_same_import_again_changes_nothing() throws Exception {
        PlainProject small = small();
        assertThat(imports(small, false).changed()).isTrue();
        assertThat(imports(small, true).changed()).isFalse();
        assertThat(project().path().resolve("backups")).doesNotExist();
    }

    @Test
    void replacing_keeps_a_copy_that_opens_as_a_project_with_its_pictures() throws Exception {
        PlainProject small = small();
        imports(small, false);
        ProjectData before = stored();
        Map<String, String> photos = RoundTripTest.files(project().photos());
        small.change("stages.csv", "Oak deck", "Larch deck")
                .change(
                        "notes/2026-05-29-the-last-stone.md",
                        "photo: last-stone.png | The last stone | A grey stone\n",
                        "")
                .remove("photos/last-stone.png");
        ImportProject.Done done = imports(small, true);
        assertThat(stored().list(StageStore.TABLE).get(1).name()).isEqualTo("Larch deck");
        assertThat(RoundTripTest.files(project().photos())).isEmpty();
        Folder backup = new Folder(done.backup().orElseThrow());
        assertThat(RoundTripTest.files(backup.photos())).isEqualTo(photos);
        try (Db db = backup.open(PlainProject.CLOCK)) {
            assertThat(ImportProject.same(
                            db.read(read -> ProjectData.of(read, backup.path())).orElseThrow(), before))
                    .isTrue();
        }
    }

    @Test
    void a_fault_leaves_the_project_to_be_replaced_as_it_was() throws Exception {
        PlainProject small = small();
        imports(small, false);
        long version = versionNow();
        Map<String, String> photos = RoundTripTest.files(project().photos());
        small.change("stages.csv", "Oak deck", "Larch deck").add("tells.csv", "e2,deck.7,");
        assertThatThrownBy(() -> imports(small, true))
                .isInstanceOf(Rejected.class)
                .hasMessage("tells.csv line 4, column task: \"deck.7\" is not an id in tasks.csv; write one of deck.1,"
                        + " deck.2, deck.3");
        assertThat(versionNow()).isEqualTo(version);
        assertThat(RoundTripTest.files(project().photos())).isEqualTo(photos);
        assertThat(project().path().resolve("backups")).doesNotExist();
    }

    private long versionNow() throws Exception {
        try (Db db = project().open(PlainProject.CLOCK)) {
            return db.version();
        }
    }

    @Test
    void a_folder_that_a_server_has_open_is_refused() throws Exception {
        PlainProject small = small();
        imports(small, false);
        small.change("stages.csv", "Oak deck", "Larch deck");
        AutoCloseable server = project().lock();
        try {
            assertThatThrownBy(() -> imports(small, true))
                    .isInstanceOf(FolderRefused.class)
                    .hasMessageStartingWith(project().path() + " is already open in another weekwright");
        } finally {
            server.close();
        }
        assertThat(stored().list(StageStore.TABLE).get(1).name()).isEqualTo("Oak deck");
    }

    @Test
    void pictures_that_cannot_be_put_in_place_leave_everything_as_it_was() throws Exception {
        PlainProject small = small();
        imports(small, false);
        ProjectData before = stored();
        Map<String, String> photos = RoundTripTest.files(project().photos());
        small.change("stages.csv", "Oak deck", "Larch deck");
        ProjectData data = small.read().data().orElseThrow();
        Files.createDirectories(project().path());
        Files.writeString(project().path().resolve("backups"), "a file where the copies belong");
        try (Db db = project().open(PlainProject.CLOCK)) {
            assertThatThrownBy(() -> ImportProject.into(data, project(), db, PlainProject.CLOCK))
                    .isInstanceOf(FolderRefused.class)
                    .hasMessageStartingWith(
                            "The project cannot be written to " + project().path() + ": ")
                    .hasMessageEndingWith("Nothing was changed. Look after the disk and the right to write there.");
        }
        assertThat(ImportProject.same(stored(), before)).isTrue();
        assertThat(RoundTripTest.files(project().photos())).isEqualTo(photos);
    }
}
