package weekwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.csv.Pictures;
import weekwright.files.csv.PlainText;
import weekwright.files.csv.ProjectData;

/**
 * Writes a project as plain files in canonical form: UTF-8, comma, CRLF, rows in stored order, numbers in shortest form,
 * money with all digits of the currency. Import brings back an equal project.
 */
public final class ExportProject {
    private ExportProject() {}

    /**
     * Exports into a folder that is new or empty; nothing is ever overwritten.
     *
     * @throws FolderRefused when there is no project, or the target cannot take it; then nothing is left in it
     */
    public static void into(Db db, Folder folder, Path target) throws FolderRefused {
        ProjectData data = db.read(read -> ProjectData.of(read, folder.path()))
                .orElseThrow(
                        () -> new FolderRefused(folder.path() + " holds no project yet. There is nothing to export."));
        Folder place = new Folder(target);
        boolean there = Files.exists(place.path());
        if (!place.isEmpty()) {
            throw new FolderRefused(
                    place.path() + " is not empty, and an export overwrites nothing. Name a new or empty folder.");
        }
        boolean whole = false;
        try {
            Files.createDirectories(place.path());
            PlainText.write(data, place.path());
            pictures(folder.path(), place.path());
            whole = true;
        } catch (IOException e) {
            throw new FolderRefused(
                    "The files cannot be written to " + place.path() + ": " + e.getMessage()
                            + ". Look after the disk and the right to write there.",
                    e);
        } finally {
            if (!whole) {
                tidy(place.path(), there);
            }
        }
    }

    private static void pictures(Path folder, Path target) throws IOException {
        PictureMove.copy(folder, target);
        for (String name : List.of("photos", "receipts")) {
            if (Pictures.names(target.resolve(name)).isEmpty()) {
                Files.delete(target.resolve(name));
            }
        }
    }

    private static void tidy(Path target, boolean wasThere) throws FolderRefused {
        try {
            if (!wasThere) {
                PictureMove.remove(target);
                return;
            }
            try (var files = Files.list(target)) {
                for (Path file : files.toList()) {
                    PictureMove.remove(file);
                }
            }
        } catch (IOException e) {
            throw new FolderRefused("The export failed, and " + target + " cannot be tidied up. Remove it.", e);
        }
    }
}
