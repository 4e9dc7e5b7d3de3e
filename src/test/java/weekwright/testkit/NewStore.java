package weekwright.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.ImportProject;
import weekwright.files.SampleFiles;
import weekwright.files.csv.PlainFiles;

/**
 * A project's folder that is made once in a run and copied for each server, as where it was moved to another machine: to take
 * every migration takes five times as long as to open what has had them.
 */
enum NewStore {
    /** Of the newest schema, with nothing in it. */
    EMPTY((folder, db) -> {}),
    /** With {@link SmallProject}. */
    SMALL((folder, db) -> SmallProject.fill(db)),
    /** With the sample. */
    SAMPLE((folder, db) -> {
        try (SampleFiles sample = SampleFiles.unpack()) {
            LocalDate today = LocalDate.ofInstant(ServerFixture.CLOCK.instant(), ServerFixture.CLOCK.getZone());
            ImportProject.into(
                    PlainFiles.read(sample.folder(), today).data().orElseThrow(), folder, db, ServerFixture.CLOCK);
        }
    });

    private interface Fill {
        void into(Folder folder, Db db) throws Exception;
    }

    private final Fill fill;
    private Map<String, byte[]> files;

    NewStore(Fill fill) {
        this.fill = fill;
    }

    /** Puts a copy into the folder {@code project} of this one. @return this one */
    Path copyInto(Path folder) {
        Path path = folder.resolve("project");
        Folder project = new Folder(path);
        try {
            Files.createDirectories(project.photos());
            Files.createDirectories(project.receipts());
            for (Map.Entry<String, byte[]> file : files().entrySet()) {
                Path copy = path.resolve(file.getKey());
                Files.createDirectories(copy.getParent());
                Files.write(copy, file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folder;
    }

    /** No two servers have the same keys. */
    static void renew(Db db) {
        db.write(
                "test",
                write -> write.handle()
                        .execute(
                                "UPDATE meta SET project_key = ?, csrf_key = ?",
                                UUID.randomUUID() + "",
                                UUID.randomUUID() + ""));
    }

    private synchronized Map<String, byte[]> files() throws IOException {
        if (files == null) {
            Path path = Files.createTempDirectory("weekwright-store");
            Folder folder = new Folder(path);
            try (Db db = folder.create(ServerFixture.CLOCK)) {
                fill.into(folder, db);
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
            Map<String, byte[]> all = new HashMap<>();
            for (Path file : deepestFirst(path)) {
                if (Files.isRegularFile(file)) {
                    all.put(path.relativize(file).toString(), Files.readAllBytes(file));
                }
                Files.delete(file);
            }
            files = all;
        }
        return files;
    }

    static List<Path> deepestFirst(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.sorted(Comparator.reverseOrder()).toList();
        }
    }
}
