package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.Link;
import weekwright.build.Stage;
import weekwright.testkit.Requirement;

class DbTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Db db;
    private final Table<Stage> stages = new Table<>("stages", Stage.class);

    @BeforeEach
    void open() throws FolderRefused {
        db = new Folder(folder).create(CLOCK);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private static Stage stage(String id, String name) {
        return Shape.of(Stage.class)
                .parse(Map.of("id", id, "name", name), Reading.file(2), new Problems())
                .orElseThrow();
    }

    @Test
    void every_connection_has_foreign_keys_full_sync_wal_and_a_busy_timeout() {
        String writer = db.write("ilse", w -> pragmas(w));
        String reader = db.read(DbTest::pragmas);
        assertThat(writer).isEqualTo("wal 2 1 5000");
        assertThat(reader).isEqualTo("wal 2 1 5000");
    }

    private static String pragmas(Read read) {
        StringBuilder text = new StringBuilder();
        for (String pragma : new String[] {"journal_mode", "synchronous", "foreign_keys", "busy_timeout"}) {
            text.append(read.handle()
                            .createQuery("PRAGMA " + pragma)
                            .mapTo(String.class)
                            .one())
                    .append(' ');
        }
        return text.toString().strip();
    }

    @Test
    void readers_cannot_write() {
        assertThatThrownBy(() -> db.read(r ->
                        stages.insert(new Write(r.handle(), new KeptRows(), "x", CLOCK.instant()), stage("a", "A"))))
                .isInstanceOf(StoreTrouble.class)
                .hasMessageStartingWith("The project folder cannot be written.");
    }

    @Test
    void a_change_raises_the_version_and_is_logged_in_the_same_transaction() throws Exception {
        long before = db.version();
        Stored<Stage> pit = db.write("ilse", w -> stages.insert(w, stage("pit", "Wheel pit")));
        Stored<Stage> renamed =
                db.write("tomas", w -> stages.update(w, pit.row(), pit.version(), stage("pit", "Pit masonry")));
        assertThat(renamed.version()).isEqualTo(2);
        assertThat(db.version()).isEqualTo(before + 2);
        var changes = db.read(r -> History.of(r, "stages", pit.row()));
        assertThat(changes).hasSize(2);
        assertThat(changes.get(0).who()).isEqualTo("tomas");
        assertThat(changes.get(0).before().orElseThrow()).contains("\"name\":\"Wheel pit\"");
        assertThat(changes.get(0).after().orElseThrow()).contains("\"name\":\"Pit masonry\"");
        assertThat(changes.get(1).action()).isEqualTo("added");
    }

    @Test
    @Requirement({"2.3.3"})
    void a_refusal_keeps_nothing_and_the_version_stays() {
        long before = db.version();
        assertThatThrownBy(() -> db.write("ilse", w -> {
                    stages.insert(w, stage("pit", "Wheel pit"));
                    throw new Rejected(Problem.fault("name", "", "is no good", "write another"));
                }))
                .isInstanceOf(Rejected.class)
                .hasMessage("name: is no good; write another");
        assertThat(db.version()).isEqualTo(before);
        assertThat(db.read(stages::count)).isZero();
        List<History.Change> changes = db.read(r -> History.newest(r, 10));
        assertThat(changes).isEmpty();
    }

    @Test
    void a_stale_update_is_refused_and_tells_how_the_row_stands() {
        Stored<Stage> pit = db.write("ilse", w -> stages.insert(w, stage("pit", "Wheel pit")));
        assertThatThrownBy(() -> {
                    db.write("ilse", w -> stages.update(w, pit.row(), 1, stage("pit", "One")));
                    db.write("tomas", w -> stages.update(w, pit.row(), 1, stage("pit", "Two")));
                })
                .isInstanceOfSatisfying(
                        Stale.class,
                        stale -> assertThat(((Stage) stale.now().orElseThrow().value()).name())
                                .isEqualTo("One"));
    }

    @Test
    void a_removed_row_comes_back_at_its_place() throws Exception {
        Stored<Stage> pit = db.write("ilse", w -> stages.insert(w, stage("pit", "Wheel pit")));
        db.write("ilse", w -> stages.insert(w, stage("roof", "Roof")));
        db.write("ilse", w -> {
            stages.delete(w, pit.row(), 1);
            return null;
        });
        assertThat(db.read(stages::count)).isEqualTo(1);
        History.Change removal =
                db.read(r -> History.last(r, "stages", pit.row())).orElseThrow();
        assertThat(db.<Boolean, Taken>write("ilse", w -> stages.setBack(w, pit.row(), removal.before())))
                .isTrue();
        assertThat(db.read(stages::values)).extracting(Stage::name).containsExactly("Wheel pit", "Roof");
        assertThat(db.read(r -> stages.find(r, pit.row())).orElseThrow())
                .isEqualTo(new Stored<>(pit.row(), 2, pit.value()));
        assertThat(db.<Boolean, Taken>write("ilse", w -> stages.setBack(w, pit.row(), removal.before())))
                .isFalse();
        List<History.Change> log = db.read(r -> History.of(r, "stages", pit.row()));
        assertThat(log).extracting(History.Change::action).containsExactly("added", "removed", "added");
    }

    @Test
    void a_row_is_set_back_to_an_earlier_state_and_columns_the_log_does_not_know_stay() throws Exception {
        Stored<Stage> pit = db.write("ilse", w -> stages.insert(w, stage("pit", "Wheel pit")));
        db.write("ilse", w -> stages.update(w, pit.row(), 1, stage("pit", "Wheel pit, deeper")));
        String known = "{\"row\":1,\"version\":1,\"name\":\"The pit\"}";
        db.write("ilse", w -> stages.setBack(w, pit.row(), Optional.of(known)));
        assertThat(db.read(r -> stages.find(r, pit.row())).orElseThrow())
                .isEqualTo(new Stored<>(pit.row(), 3, stage("pit", "The pit")));
        db.write("ilse", w -> stages.setBack(w, pit.row(), Optional.empty()));
        assertThat(db.read(stages::count)).isZero();
    }

    @Test
    void a_row_whose_id_another_one_has_taken_does_not_come_back() throws Exception {
        Stored<Stage> pit = db.write("ilse", w -> stages.insert(w, stage("pit", "Wheel pit")));
        db.write("ilse", w -> {
            stages.delete(w, pit.row(), 1);
            return stages.insert(w, stage("pit", "Another pit"));
        });
        Optional<String> before =
                db.read(r -> History.last(r, "stages", pit.row())).orElseThrow().before();
        assertThatThrownBy(() -> db.write("ilse", w -> stages.setBack(w, pit.row(), before)))
                .isInstanceOf(Taken.class)
                .hasMessage("stages 1 has what another row has already");
        assertThat(db.read(stages::values)).extracting(Stage::name).containsExactly("Another pit");
    }

    @Test
    void a_post_that_comes_twice_is_done_once_and_other_contents_under_its_key_are_refused() throws Exception {
        AnswerKey key = new AnswerKey("k-12345678", "/build/stages/add", "aa");
        String first = db.once(
                "ilse",
                key,
                w -> "/build/" + stages.insert(w, stage("pit", "Wheel pit")).row());
        String second = db.once(
                "ilse",
                key,
                w -> "/build/" + stages.insert(w, stage("pit", "Wheel pit")).row());
        assertThat(second).isEqualTo(first);
        assertThat(db.read(stages::count)).isEqualTo(1);
        assertThatThrownBy(() -> db.once("ilse", new AnswerKey("k-12345678", "/build/stages/add", "bb"), w -> "x"))
                .isInstanceOf(KeyReused.class)
                .hasMessage("the key k-12345678 was used for another entry");
    }

    @Test
    void a_row_that_refers_to_nothing_is_refused_at_commit_and_the_store_goes_on() {
        Table<Link> links = new Table<>("links", Link.class);
        var link = Shape.of(Link.class)
                .parse(Map.of("task", "a", "after", "b"), Reading.file(2), new Problems())
                .orElseThrow();
        assertThatThrownBy(() -> db.write("ilse", w -> links.insert(w, link)))
                .hasMessageContaining("FOREIGN KEY constraint failed");
        db.write("ilse", w -> stages.insert(w, stage("pit", "Wheel pit")));
        assertThat(db.read(stages::count)).isEqualTo(1);
        assertThat(db.read(links::count)).isZero();
    }

    @Test
    void what_is_no_project_is_refused_in_a_sentence() throws Exception {
        Path other = folder.resolve("other");
        Files.createDirectories(other);
        Files.writeString(other.resolve("letter.txt"), "hello");
        assertThatThrownBy(() -> new Folder(other).open(CLOCK))
                .hasMessage(
                        other + " is no project folder: it has no build.db. Name a project's folder, or an empty one to"
                                + " start a new project in.");
        Files.writeString(other.resolve("build.db"), "hello, this is a text and no database at all, is it not");
        assertThatThrownBy(() -> new Folder(other).open(CLOCK))
                .isInstanceOf(FolderRefused.class)
                .hasMessageStartingWith(other.resolve("build.db") + " is damaged (");
        Path empty = folder.resolve("empty");
        Files.createDirectories(empty);
        Files.createFile(empty.resolve("build.db"));
        assertThatThrownBy(() -> new Folder(empty).open(CLOCK))
                .hasMessage(empty.resolve("build.db") + " is not a weekwright database. Name a project's folder.");
    }

    @Test
    void a_newer_schema_is_refused_by_its_number() throws Exception {
        db.write("x", w -> w.handle().execute("PRAGMA user_version = 99"));
        db.close();
        assertThatThrownBy(() -> new Folder(folder).open(CLOCK))
                .hasMessage(folder.resolve("build.db") + " was written by a newer weekwright (schema 99, this program"
                        + " knows " + Migrations.newest() + "). Nothing was changed. Use the newer program.");
    }

    @Test
    void a_folder_serves_one_server_at_a_time() throws Exception {
        Folder one = new Folder(folder);
        AutoCloseable lock = one.lock();
        assertThatThrownBy(one::lock)
                .hasMessage(folder + " is already open in another weekwright (process "
                        + ProcessHandle.current().pid() + "). Use that one, or stop it first.");
        lock.close();
        one.lock().close();
    }
}
