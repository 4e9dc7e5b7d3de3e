package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.testkit.Requirement;
import weekwright.testkit.SmallProject;

/** Network drives, rights, and files that are damaged. What SQLite says of each: its codes 11 and 26 (rescode.html). */
class DiskTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path temp;

    @ParameterizedTest
    @ValueSource(strings = {"nfs", "nfs4", "cifs", "smb3", "9p", "fuse.sshfs", "davfs"})
    void a_folder_on_a_network_drive_is_refused(String type) {
        assertThatThrownBy(() -> Disk.refuseNetwork(Path.of("/mill"), type))
                .isInstanceOf(FolderRefused.class)
                .hasMessage("/mill lies on a network drive (" + type
                        + "), where two programs may write at once and damage it. Put the project on a disk of this"
                        + " machine, and copies of its backups on the network drive.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ext4", "xfs", "btrfs", "overlay", "tmpfs", "apfs", "NTFS", "vfat", "zfs", "fuseblk"})
    void a_disk_of_this_machine_is_taken(String type) throws FolderRefused {
        Disk.refuseNetwork(Path.of("/mill"), type);
        Disk.refuseNetwork(temp.resolve("not/there/yet"));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    @Requirement({"13.3.2"})
    void a_new_project_is_its_owners_alone() throws Exception {
        new Folder(temp.resolve("mill")).create(CLOCK).close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(temp.resolve("mill"))))
                .isEqualTo("rwx------");
    }

    private Path project() throws FolderRefused {
        Path folder = temp.resolve("mill");
        try (Db db = new Folder(folder).create(CLOCK)) {
            SmallProject.fill(db);
        }
        return folder;
    }

    /** A header of noughts, a version of the format that nobody has, pages of noughts in the middle. */
    @ParameterizedTest
    @CsvSource({"0, 100, 0", "18, 2, 9", "8192, 4096, 0", "20480, 4096, 0"})
    void a_damaged_database_is_refused_and_stays_as_it_is_with_the_newest_backup_named(long from, int length, byte with)
            throws Exception {
        Path folder = project();
        Path file = folder.resolve("build.db");
        Path newest = folder.resolve("backups/2026-11-24-070000.zip");
        Files.createDirectories(newest.getParent());
        Files.createFile(newest);
        Files.createFile(folder.resolve("backups/2026-11-02-070000.zip"));
        Files.createFile(folder.resolve("backups/letter.zip"));
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.seek(from);
            byte[] damage = new byte[length];
            Arrays.fill(damage, with);
            bytes.write(damage);
        }
        assertRefused(folder, file, newest);
    }

    private static void assertRefused(Path folder, Path file, Path newest) throws Exception {
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> new Folder(folder).open(CLOCK))
                .isInstanceOf(FolderRefused.class)
                .hasMessageMatching("(?s)\\Q" + file
                        + " is damaged (\\E.*\\Q). Nothing was changed. Keep the file and bring"
                        + " the newest backup back into a new folder: weekwright restore " + newest + " " + folder
                        + "-restored.\\E");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void a_database_cut_in_half_is_refused_and_where_there_is_no_backup_that_is_said() throws Exception {
        Path folder = project();
        Path file = folder.resolve("build.db");
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.setLength(bytes.length() / 2);
        }
        byte[] before = Files.readAllBytes(file);
        assertThatThrownBy(() -> new Folder(folder).open(CLOCK))
                .isInstanceOf(FolderRefused.class)
                .hasMessageStartingWith(file + " is damaged (")
                .hasMessageEndingWith(
                        "). Nothing was changed. Keep the file and restore the newest backup; none lies in "
                                + folder.resolve("backups") + ".");
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
    }

    @Test
    void a_folder_by_another_name_is_the_same_folder() throws Exception {
        Path folder = project();
        Path link = Files.createSymbolicLink(temp.resolve("link"), folder);
        try (AutoCloseable lock = new Folder(folder).lock()) {
            assertThat(lock).isNotNull();
            assertThatThrownBy(() -> new Folder(link).lock())
                    .hasMessage(link + " is already open in another weekwright (process "
                            + ProcessHandle.current().pid() + "). Use that one, or stop it first.");
        }
    }
}
