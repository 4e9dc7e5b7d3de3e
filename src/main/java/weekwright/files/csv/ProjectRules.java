package weekwright.files.csv;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rows;
import weekwright.build.BuildRows;
import weekwright.build.BuildRules;
import weekwright.build.DateRules;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Task;
import weekwright.db.AllRows;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.episodes.EpisodeRows;
import weekwright.episodes.PartRules;
import weekwright.episodes.ShotRules;
import weekwright.episodes.ShotStore;
import weekwright.episodes.SlotRules;
import weekwright.funds.FundsRows;
import weekwright.funds.FundsRules;
import weekwright.notes.NoteStore;

/** The rules over the rows of a whole project, from plain files or in the store. */
public final class ProjectRules {
    private ProjectRules() {}

    /** Where a fault of a stored project stands. */
    public record Place(String table, long row) {}

    /** @param settings empty where they could not be read */
    static Problems check(Optional<Settings> settings, AllRows rows, LocalDate today) {
        Problems found = new Problems();
        BuildRows build = BuildRows.of(rows);
        EpisodeRows episodes = EpisodeRows.of(rows);
        BuildRules.check(build, today, found);
        ShotRules.check(rows.of(ShotStore.TABLE), build.tasks().by(Task::id), found);
        FundsRules.check(FundsRows.of(rows), settings.map(Settings::moneyDigits).orElse(2), found);
        settings.ifPresent(read -> {
            PartRules.check(episodes, today, found);
            SlotRules.check(episodes, build, read, today, found);
            FileTable.ALL.forEach(
                    file -> dates(rows, file.table(), read.project().started(), found));
            dates(rows, NoteStore.TABLE, read.project().started(), found);
            started(read, today, found);
        });
        return found;
    }

    /** The form of a new project refuses such a day; files may come from a machine whose clock goes ahead. */
    private static void started(Settings settings, LocalDate today, Problems found) {
        LocalDate day = settings.project().started();
        if (day.isAfter(today)) {
            found.add(Problem.remark(
                            "started",
                            day.toString(),
                            "is after today, " + today,
                            "hours can be logged from that day on; write the day it began if it has")
                    .at(ProjectToml.FILE, 0));
        }
    }

    private static <R extends Record> void dates(AllRows rows, Table<R> table, LocalDate started, Problems found) {
        Rows<R> all = rows.of(table);
        for (int i = 0; i < all.size(); i++) {
            Problems ofRow = new Problems();
            DateRules.check(table.shape(), all.get(i), started, ofRow);
            int index = i;
            ofRow.list().forEach(problem -> found.add(all.placed(index, problem)));
        }
    }

    /** The faults of a project as it stands in the store; {@link #place} tells the row of each. */
    public static List<Problem> faults(Read read, LocalDate today) {
        AllRows rows = new AllRows();
        ProjectData.tables().forEach(table -> putPlaced(rows, table, read));
        return check(SettingsStore.find(read), rows, today).faults();
    }

    private static <R extends Record> void putPlaced(AllRows rows, Table<R> table, Read read) {
        List<Stored<R>> all = table.list(read);
        rows.put(
                table,
                new Rows<>(
                        all.stream().map(Stored::value).toList(),
                        all.stream()
                                .map(stored -> new weekwright.base.Place(table.name() + "#" + stored.row(), 0))
                                .toList()));
    }

    /** The row of a fault that {@link #faults} gave. */
    public static Place place(Problem fault) {
        String[] halves = fault.file().split("#");
        return new Place(halves[0], Long.parseLong(halves[1]));
    }
}
