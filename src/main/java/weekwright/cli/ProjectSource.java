package weekwright.cli;

import java.io.IOException;
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
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ProjectData;
import weekwright.files.csv.ProjectToml;
import weekwright.files.csv.ReadResult;
import weekwright.forecast.Basis;
import weekwright.forecast.Forecast;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.InputsBuilder;
import weekwright.forecast.Replay;
import weekwright.forecast.WeekPlan;

/** A project to be read by a command: a project's folder, or plain files, which are checked as an import checks them. */
abstract sealed class ProjectSource implements AutoCloseable {
    private final Clock clock;

    private ProjectSource(Clock clock) {
        this.clock = clock;
    }

    /** @param asked the day that plain files are judged against, null for today in the zone of the clock */
    static ProjectSource open(Path place, Clock clock, LocalDate asked) throws Failure, FolderRefused, Rejected {
        mustBeFolder(place);
        if (new Folder(place).isProject()) {
            Db db = new Folder(place).open(clock);
            if (db.read(SettingsStore::find).isEmpty()) {
                db.close();
                throw Failure.fault(place + " holds no project yet. Start one with: weekwright serve " + place);
            }
            return new OfStore(db, clock);
        }
        if (!Files.isRegularFile(place.resolve(ProjectToml.FILE))) {
            throw Failure.fault(place + " is no project: it has neither a database nor " + ProjectToml.FILE
                    + ". Name a project's folder, or a folder of plain files.");
        }
        ReadResult read = PlainFiles.read(place, asked == null ? LocalDate.now(clock) : asked);
        return new OfFiles(read.data().orElseThrow(() -> new Rejected(read.problems())), read.remarks(), clock);
    }

    static void mustBeFolder(Path place) throws Failure {
        if (!Files.exists(place)) {
            throw Failure.fault(place + " does not exist. Name a folder that does.");
        }
        if (!Files.isDirectory(place)) {
            throw Failure.fault(place + " is a file, not a folder. Name the folder.");
        }
    }

    /** The day asked for, else today in the project's zone. */
    LocalDate day(LocalDate asked) {
        return asked == null ? LocalDate.now(clock.withZone(settings().zone())) : asked;
    }

    abstract Settings settings();

    abstract Basis basis(LocalDate day);

    /** What a track record is made from. */
    abstract Replay.Asked replay(LocalDate day);

    /** The week's sheet, orders by their forecast. */
    abstract WeekPlan week(Basis basis, ForecastRun.Planned planned, Forecast forecast);

    /** What is odd in the plain files; a project's folder shows it on its pages. */
    abstract List<Problem> remarks();

    @Override
    public abstract void close();

    private static final class OfStore extends ProjectSource {
        private final Db db;

        OfStore(Db db, Clock clock) {
            super(clock);
            this.db = db;
        }

        @Override
        Settings settings() {
            return db.read(SettingsStore::get);
        }

        @Override
        Basis basis(LocalDate day) {
            return db.read(read -> InputsBuilder.build(read, day));
        }

        @Override
        Replay.Asked replay(LocalDate day) {
            return db.read(read -> Replay.ask(read, day));
        }

        @Override
        WeekPlan week(Basis basis, ForecastRun.Planned planned, Forecast forecast) {
            return db.read(read -> WeekPlan.of(read, basis, planned, Optional.of(forecast)));
        }

        @Override
        List<Problem> remarks() {
            return List.of();
        }

        @Override
        public void close() {
            db.close();
        }
    }

    private static final class OfFiles extends ProjectSource {
        private final ProjectData data;
        private final List<Problem> remarks;

        OfFiles(ProjectData data, List<Problem> remarks, Clock clock) {
            super(clock);
            this.data = data;
            this.remarks = remarks;
        }

        @Override
        Settings settings() {
            return data.settings();
        }

        @Override
        Basis basis(LocalDate day) {
            return InputsBuilder.build(data, day);
        }

        @Override
        Replay.Asked replay(LocalDate day) {
            return Replay.ask(data, day);
        }

        @Override
        WeekPlan week(Basis basis, ForecastRun.Planned planned, Forecast forecast) {
            return WeekPlan.of(data, basis, planned, Optional.of(forecast));
        }

        @Override
        List<Problem> remarks() {
            return remarks;
        }

        @Override
        public void close() {
            // nothing is held open
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
