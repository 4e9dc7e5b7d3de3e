package weekwright.files.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.ExportProject;
import weekwright.files.ImportProject;
import weekwright.testkit.PlainProject;
import weekwright.testkit.Requirement;

/** A backup is whole or not there, and so is what comes back from it. */
class BackupTest {
    @TempDir
    Path temp;

    private Folder project;
    private Path file;

    @BeforeEach
    void projectWithPictures() throws Exception {
        project = new Folder(temp.resolve("project"));
        file = temp.resolve("bridge.zip");
        Path files = PlainProject.in(temp.resolve("files")).folder();
        ImportProject.into(files, project, false, PlainProject.TODAY, PlainProject.CLOCK);
    }

    private MakeBackup.Done backup() throws FolderRefused {
        try (Db db = project.open(PlainProject.CLOCK)) {
            return MakeBackup.into(db, project, file, PlainProject.CLOCK);
        }
    }

    private Folder fresh() {
        return new Folder(temp.resolve("again"));
    }

    private Map<String, byte[]> exported(Folder folder, String name) throws Exception {
        Path target = temp.resolve(name);
        try (Db db = folder.open(PlainProject.CLOCK)) {
            ExportProject.into(db, folder, target);
        }
        return bytes(target);
    }

    private static Map<String, byte[]> bytes(Path folder) throws Exception {
        Map<String, byte[]> bytes = new LinkedHashMap<>();
        try (var all = Files.walk(folder)) {
            for (Path one : all.filter(Files::isRegularFile).sorted().toList()) {
                bytes.put(folder.relativize(one).toString(), Files.readAllBytes(one));
            }
        }
        return bytes;
    }

    private static List<String> names(Path folder) throws Exception {
        try (var all = Files.list(folder)) {
            return all.map(one -> one.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void a_project_comes_back_equal_with_its_pictures_and_its_log() throws Exception {
        MakeBackup.Done made = backup();
        assertThat(names(temp)).containsExactly("bridge.zip", "files", "project");
        RestoreBackup.Done back = RestoreBackup.into(file, fresh());
        assertThat(back).isEqualTo(new RestoreBackup.Done(made.made(), made.version(), made.pictures()));
        assertThat(made.pictures()).isPositive();
        assertThat(exported(fresh(), "two")).containsExactlyInAnyOrderEntriesOf(exported(project, "one"));
        try (Db before = project.open(PlainProject.CLOCK);
                Db after = fresh().open(PlainProject.CLOCK)) {
            assertThat(after.version()).isEqualTo(before.version());
            assertThat(changes(after)).isEqualTo(changes(before));
        }
        assertThat(names(fresh().path())).noneMatch(name -> name.startsWith(".restore"));
    }

    private static long changes(Db db) {
        return db.read(read -> read.handle()
                .createQuery("SELECT count(*) FROM change")
                .mapTo(Long.class)
                .one());
    }

    @Test
    void writing_goes_on_meanwhile_and_all_that_was_saved_before_is_in_it() throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        AtomicLong saved = new AtomicLong();
        CountDownLatch some = new CountDownLatch(20);
        try (Db db = project.open(PlainProject.CLOCK)) {
            Thread writer = new Thread(() -> {
                while (!stop.get()) {
                    renamed(db);
                    saved.set(db.version());
                    some.countDown();
                }
            });
            writer.start();
            some.await();
            long before = saved.get();
            MakeBackup.Done made = MakeBackup.into(db, project, file, PlainProject.CLOCK);
            stop.set(true);
            writer.join();
            assertThat(made.version()).isBetween(before, saved.get());
            RestoreBackup.into(file, fresh());
            try (Db back = fresh().open(PlainProject.CLOCK)) {
                assertThat(back.version()).isEqualTo(made.version());
                assertThat(back.read(SettingsStore::get).project().name()).isNotEmpty();
            }
        }
    }

    private static void renamed(Db db) {
        try {
            db.write("ann", write -> {
                var stored = SettingsStore.one(write, SettingsStore.WEATHER);
                SettingsStore.update(write, SettingsStore.WEATHER, stored.version(), stored.value());
                return null;
            });
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void who_is_logged_in_and_start_codes_are_not_in_it() throws Exception {
        try (Db db = project.open(PlainProject.CLOCK)) {
            db.write("test", write -> {
                write.handle().execute("INSERT INTO start_code VALUES ('ann', 'planted-code', '2026-11-26T09:00:00Z')");
                write.handle()
                        .execute("INSERT INTO session VALUES ('planted-token', 'ann', '2026-11-25T09:00:00Z',"
                                + " '2026-11-25T09:00:00Z', 'a phone')");
                return null;
            });
        }
        backup();
        assertThat(new String(entries().get(ReadBackup.DATABASE), StandardCharsets.ISO_8859_1))
                .doesNotContain("planted-");
        RestoreBackup.into(file, fresh());
        try (Db back = fresh().open(PlainProject.CLOCK)) {
            long left = back.read(read -> read.handle()
                    .createQuery("SELECT (SELECT count(*) FROM session) + (SELECT count(*) FROM start_code)")
                    .mapTo(Long.class)
                    .one());
            assertThat(left).isZero();
        }
    }

    private void refused(String finding) throws Exception {
        assertThatThrownBy(() -> RestoreBackup.into(file, fresh()))
                .isInstanceOf(FolderRefused.class)
                .hasMessage(file + " is no whole backup: " + finding + ". Nothing was written to " + fresh().path()
                        + ". Take another backup.");
        assertThat(fresh().path()).doesNotExist();
        Files.createDirectory(fresh().path());
        assertThatThrownBy(() -> RestoreBackup.into(file, fresh())).isInstanceOf(FolderRefused.class);
        assertThat(names(fresh().path())).isSubsetOf("server.lock");
    }

    /** Its entries in order; what is done to them stands in the test. */
    private LinkedHashMap<String, byte[]> entries() throws Exception {
        LinkedHashMap<String, byte[]> entries = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                entries.put(entry.getName(), zip.readAllBytes());
            }
        }
        return entries;
    }

    private void write(Map<String, byte[]> entries) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue());
            }
        }
        Files.write(file, bytes.toByteArray());
    }

    @Test
    void a_backup_that_was_cut_off_is_refused_and_nothing_is_written() throws Exception {
        backup();
        byte[] whole = Files.readAllBytes(file);
        Files.write(file, Arrays.copyOf(whole, whole.length / 2));
        refused("it cannot be unpacked: Unexpected end of ZLIB input stream");
    }

    @Test
    void a_text_is_no_backup() throws Exception {
        Files.writeString(file, "Dear Sir");
        refused("it has no list of contents: it is no backup, or its end is missing");
    }

    @Test
    void a_picture_that_was_changed_is_named() throws Exception {
        backup();
        LinkedHashMap<String, byte[]> entries = entries();
        entries.get("drawing.svg")[1] = 'S';
        write(entries);
        refused("its files are not those of its list of contents: drawing.svg");
    }

    @Test
    void a_damaged_database_is_found_even_where_the_list_was_made_to_fit() throws Exception {
        backup();
        LinkedHashMap<String, byte[]> entries = entries();
        byte[] database = entries.get(ReadBackup.DATABASE);
        Arrays.fill(database, database.length / 2, database.length / 2 + 8192, (byte) 0x5a);
        String list = new String(entries.get(ReadBackup.CONTENTS), StandardCharsets.UTF_8);
        String hash = HexFormat.of().formatHex(ReadBackup.sha256().digest(database));
        entries.put(
                ReadBackup.CONTENTS,
                list.replaceFirst("[0-9a-f]{64}  project\\.db", hash + "  project.db")
                        .getBytes(StandardCharsets.UTF_8));
        write(entries);
        assertThatThrownBy(() -> RestoreBackup.into(file, fresh()))
                .isInstanceOf(FolderRefused.class)
                .hasMessageStartingWith(file + " is no whole backup: its database is damaged: ")
                .hasMessageEndingWith(". Nothing was written to " + fresh().path() + ". Take another backup.");
        assertThat(fresh().path()).doesNotExist();
    }

    @Test
    @Requirement({"5.2.5", "5.3.2"})
    void a_file_that_would_land_elsewhere_is_refused() throws Exception {
        backup();
        LinkedHashMap<String, byte[]> entries = new LinkedHashMap<>();
        entries.put("photos/../../letter.txt", new byte[] {1});
        entries.putAll(entries());
        write(entries);
        refused("it holds \"photos/../../letter.txt\", which belongs in no backup");
        assertThat(temp.resolve("letter.txt")).doesNotExist();
    }

    @Test
    @Requirement({"5.2.3"})
    void a_small_file_that_unpacks_to_very_much_is_refused() throws Exception {
        write(Map.of("photos/grey.png", new byte[40 << 20]));
        refused("it unpacks to far more than a project is");
    }

    @Test
    void a_database_with_a_trigger_of_its_own_is_refused() throws Exception {
        try (Db db = project.open(PlainProject.CLOCK)) {
            db.write(
                    "test",
                    write -> write.handle()
                            .execute("CREATE TRIGGER other AFTER UPDATE ON meta BEGIN DELETE FROM notes; END"));
            assertThatThrownBy(() -> MakeBackup.into(db, project, file, PlainProject.CLOCK))
                    .isInstanceOf(FolderRefused.class)
                    .hasMessage("The backup " + file
                            + " was written, read back and found wrong (the tables of its database are not those of"
                            + " schema " + schema(db)
                            + "). It was not kept. Look after the disk, and check the project.");
        }
        assertThat(names(temp)).containsExactly("files", "project");
    }

    private static int schema(Db db) {
        return db.read(read -> read.handle()
                .createQuery("PRAGMA user_version")
                .mapTo(Integer.class)
                .one());
    }

    @Test
    void a_change_log_that_ends_elsewhere_than_the_project_is_found() throws Exception {
        try (Db db = project.open(PlainProject.CLOCK)) {
            long version = db.version();
            db.write("test", write -> write.handle().execute("UPDATE meta SET project_version = project_version + 7"));
            assertThatThrownBy(() -> MakeBackup.into(db, project, file, PlainProject.CLOCK))
                    .hasMessageContaining("(its project has version " + (version + 7) + ", its change log ends with "
                            + version + ")");
        }
    }
}
