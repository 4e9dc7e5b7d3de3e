package weekwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.ImportProject;
import weekwright.files.csv.ProjectToml;
import weekwright.forecast.Basis;
import weekwright.forecast.InputsBuilder;

/**
 * A project to be read by a command: a project's folder, or plain files, which are imported into a temporary folder that is
 * removed at the end.
 */
final class ProjectSource implements AutoCloseable {
    private final Db db;
    private final List<Problem> remarks;
    private final Optional<Path> temporary;
    private final Clock clock;

    private ProjectSource(Db db, List<Problem> remarks, Optional<Path> temporary, Clock clock) {
        this.db = db;
        this.remarks = remarks;
        this.temporary = temporary;
        this.clock = clock;
    }

    static ProjectSource open(Path place, Clock clock) throws Failure, FolderRefused, Rejected {
        mustBeFolder(place);
        if (new Folder(place).isProject()) {
            return new ProjectSource(new Folder(place).open(clock), List.of(), Optional.empty(), clock)
                    .withSettings(place);
        }
        if (!Files.isRegularFile(place.resolve(ProjectToml.FILE))) {
            throw Failure.fault(place + " is no project: it has neither " + Folder.DATABASE + " nor " + ProjectToml.FILE
                    + ". Name a project's folder, or a folder of plain files.");
        }
        Path temporary = temporaryFolder();
        try {
            Folder folder = new Folder(temporary.resolve("project"));
            ImportProject.Done done = ImportProject.into(place, folder, false, LocalDate.now(clock), clock);
            return new ProjectSource(folder.open(clock), done.remarks(), Optional.of(temporary), clock);
        } catch (FolderRefused | Rejected | RuntimeException e) {
            remove(temporary);
            throw e;
        }
    }

    static void mustBeFolder(Path place) throws Failure {
        if (!Files.exists(place)) {
            throw Failure.fault(place + " does not exist. Name a folder that does.");
        }
        if (!Files.isDirectory(place)) {
            throw Failure.fault(place + " is a file, not a folder. Name the folder.");
        }
    }

    private ProjectSource withSettings(Path place) throws Failure {
        if (db.read(SettingsStore::find).isEmpty()) {
            close();
            throw Failure.fault(place + " holds no project yet. Start one with: weekwright serve " + place);
        }
        return this;
    }

    /** The day asked for, else today in the project's zone. */
    LocalDate day(LocalDate asked) {
        return asked == null
                ? LocalDate.now(clock.withZone(db.read(SettingsStore::get).zone()))
                : asked;
    }

    Basis basis(LocalDate day) {
        return db.read(read -> InputsBuilder.build(read, day));
    }

    Db db() {
        return db;
    }

    /** What is odd in the plain files; a project's folder shows it on its pages. */
    List<Problem> remarks() {
        return remarks;
    }

    @Override
    public void close() {
        db.close();
        temporary.ifPresent(ProjectSource::remove);
    }

    private static Path temporaryFolder() {
        try {
            return Files.createTempDirectory("weekwright");
        } catch (IOException e) {
            throw new UncheckedIOException("no temporary folder can be made", e);
        }
    }

    /** Removes a folder with all that is in it. */
    static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException e) {
            // what is left lies in the folder for temporary files and holds nothing that is not in the plain files
            folder.toFile().deleteOnExit();
        }
    }
}
