package weekwright.files.csv;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Rows;
import weekwright.build.BuildRows;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOffStore;
import weekwright.build.EquipmentStore;
import weekwright.build.GatheringStore;
import weekwright.build.HoursEntryStore;
import weekwright.build.LinkStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.TaskStore;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Table;
import weekwright.episodes.EpisodeRows;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.SkippedSlotStore;
import weekwright.episodes.StepByStore;
import weekwright.episodes.TellStore;
import weekwright.forecast.Source;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.FundsRows;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MaterialStore;
import weekwright.funds.StockItemStore;
import weekwright.funds.SupplierStore;
import weekwright.funds.SupporterMonthStore;
import weekwright.notes.NoteStore;
import weekwright.notes.PhotoStore;

/**
 * A whole project: settings, the rows of every table, and where its pictures lie.
 *
 * @param rows by the table's name; a table that is not in it has no rows
 * @param source the folder of plain files or of the project
 */
public record ProjectData(Settings settings, Map<String, Rows<?>> rows, Path source) implements Source {
    public ProjectData {
        rows = Map.copyOf(rows);
    }

    /** All tables that a project is exported as, settings apart; referring tables need not come after the others. */
    public static Set<Table<?>> tables() {
        Set<Table<?>> tables = new LinkedHashSet<>();
        FileTable.ALL.forEach(file -> tables.add(file.table()));
        tables.add(NoteStore.TABLE);
        tables.add(PhotoStore.TABLE);
        return tables;
    }

    /** The project as the store has it, or empty while the folder has none. */
    public static Optional<ProjectData> of(Read read, Path folder) {
        return SettingsStore.find(read).map(settings -> {
            Map<String, Rows<?>> rows = new HashMap<>();
            tables().forEach(table -> rows.put(table.name(), Rows.of(table.values(read))));
            return new ProjectData(settings, rows, folder);
        });
    }

    /** The rows of a table. */
    public <R extends Record> Rows<R> rows(Table<R> table) {
        return rows(rows, table);
    }

    @Override
    public <R extends Record> List<R> list(Table<R> table) {
        return rows(table).list();
    }

    @SuppressWarnings("unchecked")
    static <R extends Record> Rows<R> rows(Map<String, Rows<?>> rows, Table<R> table) {
        return (Rows<R>) rows.getOrDefault(table.name(), Rows.none());
    }

    static BuildRows build(Map<String, Rows<?>> rows) {
        return new BuildRows(
                rows(rows, CrewMemberStore.TABLE),
                rows(rows, CrewHoursStore.TABLE),
                rows(rows, DaysOffStore.TABLE),
                rows(rows, EquipmentStore.TABLE),
                rows(rows, TaskStore.TABLE),
                rows(rows, LinkStore.TABLE),
                rows(rows, HoursEntryStore.TABLE),
                rows(rows, WeekLineStore.TABLE),
                rows(rows, GatheringStore.TABLE));
    }

    static EpisodeRows episodes(Map<String, Rows<?>> rows) {
        return new EpisodeRows(
                rows(rows, EpisodeStore.TABLE),
                rows(rows, TellStore.TABLE),
                rows(rows, SkippedSlotStore.TABLE),
                rows(rows, SegmentStore.TABLE),
                rows(rows, StepByStore.TABLE),
                rows(rows, ReleaseStore.TABLE));
    }

    static FundsRows funds(Map<String, Rows<?>> rows) {
        return new FundsRows(
                rows(rows, MaterialStore.TABLE),
                rows(rows, StockItemStore.TABLE),
                rows(rows, LedgerEntryStore.TABLE),
                rows(rows, SupporterMonthStore.TABLE),
                rows(rows, ClosedMonthStore.TABLE),
                rows(rows, ClosedMonthStore.LINES),
                rows(rows, SupplierStore.TABLE));
    }
}
