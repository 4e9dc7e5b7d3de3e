package weekwright.files.csv;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import weekwright.base.Problems;
import weekwright.build.CautionStore;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMemberStore;
import weekwright.build.CrewRules;
import weekwright.build.DayWordsStore;
import weekwright.build.DaysOffStore;
import weekwright.build.EquipmentRules;
import weekwright.build.EquipmentStore;
import weekwright.build.GatheringStore;
import weekwright.build.HazardReadStore;
import weekwright.build.HoursEntryStore;
import weekwright.build.HoursRules;
import weekwright.build.IncidentStore;
import weekwright.build.LinkRules;
import weekwright.build.LinkStore;
import weekwright.build.SayRead;
import weekwright.build.StageRules;
import weekwright.build.StageStore;
import weekwright.build.StoppedStore;
import weekwright.build.TaskRules;
import weekwright.build.TaskStore;
import weekwright.build.WeekLineStore;
import weekwright.db.Table;
import weekwright.episodes.ClipStore;
import weekwright.episodes.EpisodeRules;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MusicStore;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.ShotStore;
import weekwright.episodes.SkippedSlotStore;
import weekwright.episodes.StepByStore;
import weekwright.episodes.TellStore;
import weekwright.forecast.KeepLevers;
import weekwright.forecast.KeptLeversStore;
import weekwright.funds.BankFileStore;
import weekwright.funds.BankSourceStore;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.LedgerRules;
import weekwright.funds.MaterialRules;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RegularItemStore;
import weekwright.funds.SaveBankSource;
import weekwright.funds.StockItemStore;
import weekwright.funds.SupplierRules;
import weekwright.funds.SupplierStore;
import weekwright.funds.SupporterMonthStore;

/**
 * A table of the store that is a CSV file of a plain-file project.
 *
 * @param file the file's name
 * @param rule what must hold within one row, given the digits of the currency; returns the row as it is to be kept
 */
record FileTable<R extends Record>(String file, Table<R> table, Rule<R> rule) {

    /** Checks one row. */
    interface Rule<R> {
        R check(R row, int moneyDigits, Problems problems);
    }

    /** All CSV files, in the order in which they are read and written. */
    static final List<FileTable<?>> ALL = List.of(
            of("crew.csv", CrewMemberStore.TABLE, CrewRules::check),
            of("crew-hours.csv", CrewHoursStore.TABLE, CrewRules::check),
            of("days-off.csv", DaysOffStore.TABLE, CrewRules::check),
            free("stopped.csv", StoppedStore.TABLE),
            of("equipment.csv", EquipmentStore.TABLE, EquipmentRules::check),
            of("stages.csv", StageStore.TABLE, StageRules::check),
            new FileTable<>("tasks.csv", TaskStore.TABLE, (row, digits, problems) -> {
                TaskRules.check(row, problems);
                return TaskRules.onWholeMinutes(row, problems);
            }),
            of("links.csv", LinkStore.TABLE, LinkRules::check),
            of("hours.csv", HoursEntryStore.TABLE, HoursRules::check),
            of("week.csv", WeekLineStore.TABLE, HoursRules::check),
            free("gatherings.csv", GatheringStore.TABLE),
            of("materials.csv", MaterialStore.TABLE, MaterialRules::check),
            of("stock.csv", StockItemStore.TABLE, MaterialRules::check),
            of("suppliers.csv", SupplierStore.TABLE, SupplierRules::check),
            new FileTable<>("ledger.csv", LedgerEntryStore.TABLE, (row, digits, problems) -> {
                LedgerRules.check(row, digits, problems);
                return row;
            }),
            of("regular.csv", RegularItemStore.TABLE, LedgerRules::check),
            of("pledge-levels.csv", PledgeLevelStore.TABLE, LedgerRules::check),
            of("supporters.csv", SupporterMonthStore.TABLE, LedgerRules::check),
            of("episodes.csv", EpisodeStore.TABLE, EpisodeRules::check),
            free("tells.csv", TellStore.TABLE),
            of("shots.csv", ShotStore.TABLE, EpisodeRules::check),
            of("clips.csv", ClipStore.TABLE, EpisodeRules::check),
            of("bank-sources.csv", BankSourceStore.TABLE, SaveBankSource::check),
            free("bank-files.csv", BankFileStore.TABLE),
            free("closed-months.csv", ClosedMonthStore.TABLE),
            free("statements.csv", ClosedMonthStore.LINES),
            free("skipped.csv", SkippedSlotStore.TABLE),
            of("incidents.csv", IncidentStore.TABLE, CrewRules::check),
            free("day-words.csv", DayWordsStore.TABLE),
            of("cautions.csv", CautionStore.TABLE, CrewRules::check),
            of("hazards-read.csv", HazardReadStore.TABLE, SayRead::check),
            of("segments.csv", SegmentStore.TABLE, EpisodeRules::check),
            of("music.csv", MusicStore.TABLE, EpisodeRules::check),
            of("releases.csv", ReleaseStore.TABLE, EpisodeRules::check),
            free("steps.csv", StepByStore.TABLE),
            of("levers.csv", KeptLeversStore.TABLE, KeepLevers::check));

    private static <R extends Record> FileTable<R> of(String file, Table<R> table, BiConsumer<R, Problems> rule) {
        BiFunction<R, Problems, R> keeping = RecordCsv.keeping(rule);
        return new FileTable<>(file, table, (row, digits, problems) -> keeping.apply(row, problems));
    }

    private static <R extends Record> FileTable<R> free(String file, Table<R> table) {
        return new FileTable<>(file, table, (row, digits, problems) -> row);
    }

    BiFunction<R, Problems, R> rule(int moneyDigits) {
        return (row, problems) -> rule.check(row, moneyDigits, problems);
    }
}
