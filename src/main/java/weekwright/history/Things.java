package weekwright.history;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import weekwright.base.Id;
import weekwright.build.CautionStore;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMemberStore;
import weekwright.build.DayWordsStore;
import weekwright.build.DaysOffStore;
import weekwright.build.EquipmentStore;
import weekwright.build.GatheringStore;
import weekwright.build.HazardCodes;
import weekwright.build.HazardReadStore;
import weekwright.build.HoursEntryStore;
import weekwright.build.IncidentStore;
import weekwright.build.LinkStore;
import weekwright.build.Said;
import weekwright.build.SettingsStore;
import weekwright.build.StageStore;
import weekwright.build.StoppedStore;
import weekwright.build.TaskStore;
import weekwright.build.WeekLineStore;
import weekwright.db.Table;
import weekwright.episodes.ClipStore;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MusicStore;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.RollStore;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.ShotStore;
import weekwright.episodes.SkippedSlotStore;
import weekwright.episodes.StepByStore;
import weekwright.episodes.TellStore;
import weekwright.forecast.KeptLeversStore;
import weekwright.funds.BankFileStore;
import weekwright.funds.BankSourceStore;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RegularItemStore;
import weekwright.funds.StockItemStore;
import weekwright.funds.SupplierStore;
import weekwright.funds.SupporterMonthStore;
import weekwright.history.Thing.Kind;
import weekwright.notes.NoteStore;
import weekwright.notes.PhotoStore;

/** Every kind of thing that has a history, and what each is called. */
public final class Things {
    private static final Map<String, Thing<?>> ALL = new LinkedHashMap<>();

    static {
        add(StageStore.TABLE, "stage", "stages", Kind.BUILD, (names, stage) -> stage.name());
        add(TaskStore.TABLE, "task", "tasks", Kind.BUILD, (names, task) -> task.title());
        add(
                LinkStore.TABLE,
                "link",
                "links",
                Kind.BUILD,
                (names, link) -> names.of("tasks", link.task()) + ", after " + names.of("tasks", link.after()));
        add(
                HoursEntryStore.TABLE,
                "hours entry",
                "hours entries",
                Kind.HOURS,
                (names, entry) -> names.of("crew", entry.crew())
                        + ", " + Said.day(entry.date())
                        + on(names, entry.task(), entry.episode()));
        add(
                StoppedStore.TABLE,
                "stopped day",
                "stopped days",
                Kind.HOURS,
                (names, day) -> names.of("crew", day.crew(), "Everybody") + ", " + Said.day(day.date()));
        add(
                DaysOffStore.TABLE,
                "days off",
                "days off",
                Kind.HOURS,
                (names, off) -> names.of("crew", off.crew(), "Everybody") + ", " + Said.day(off.from())
                        + (off.to().equals(off.from()) ? "" : " to " + Said.day(off.to())));
        add(
                CrewHoursStore.TABLE,
                "other hours",
                "other hours",
                Kind.HOURS,
                (names, hours) -> names.of("crew", hours.crew())
                        + hours.from().map(day -> ", from " + Said.day(day)).orElse(""));
        add(
                WeekLineStore.TABLE,
                "week line",
                "week lines",
                Kind.WEEK,
                (names, line) -> names.of("crew", line.crew(), "Nobody in particular") + ", " + Said.day(line.date())
                        + on(names, line.task(), line.episode()));
        add(
                GatheringStore.TABLE,
                "gathering",
                "gatherings",
                Kind.WEEK,
                (names, gathering) -> Said.day(gathering.date()));
        add(MaterialStore.TABLE, "material", "material lines", Kind.MATERIALS, (names, line) -> line.item());
        add(StockItemStore.TABLE, "stock", "stock", Kind.MATERIALS, (names, item) -> item.item());
        add(
                EpisodeStore.TABLE,
                "episode",
                "episodes",
                Kind.EPISODES,
                (names, episode) ->
                        episode.number().map(number -> "no. " + number + ", ").orElse("") + episode.title());
        add(
                TellStore.TABLE,
                "telling",
                "tellings",
                Kind.EPISODES,
                (names, tell) -> names.of("episodes", tell.episode()) + ": " + names.of("tasks", tell.task()));
        add(
                SegmentStore.TABLE,
                "part of an episode",
                "parts of episodes",
                Kind.EPISODES,
                (names, part) -> names.of("episodes", part.episode()) + ": " + part.title());
        add(MusicStore.TABLE, "music", "music", Kind.EPISODES, (names, music) -> music.title());
        add(ReleaseStore.TABLE, "release", "releases", Kind.EPISODES, (names, release) -> release.who());
        add(
                StepByStore.TABLE,
                "step of an episode",
                "steps of episodes",
                Kind.EPISODES,
                (names, by) ->
                        names.of("episodes", by.episode()) + ": " + by.step().words());
        add(
                RollStore.TABLE,
                "roll of supporters",
                "rolls of supporters",
                Kind.EPISODES,
                (names, roll) -> names.of("episodes", roll.episode()));
        add(ShotStore.TABLE, "shot", "shots", Kind.EPISODES, (names, shot) -> shot.what());
        add(
                ClipStore.TABLE,
                "clip",
                "clips",
                Kind.EPISODES,
                (names, clip) -> (clip.card() + " " + clip.clip()).strip() + ", " + Said.day(clip.date()));
        add(
                SkippedSlotStore.TABLE,
                "skipped slot",
                "skipped slots",
                Kind.EPISODES,
                (names, slot) -> Said.day(slot.date()));
        add(
                LedgerEntryStore.TABLE,
                "entry of the books",
                "entries of the books",
                Kind.FUNDS,
                (names, entry) -> (entry.payee().isEmpty() ? "" : entry.payee() + ", ") + Said.day(entry.date()));
        add(BankFileStore.TABLE, "bank file", "bank files", Kind.FUNDS, (names, file) -> file.name());
        add(
                BankSourceStore.TABLE,
                "source of bank files",
                "sources of bank files",
                Kind.FUNDS,
                (names, one) -> one.name());
        add(
                ClosedMonthStore.TABLE,
                "closed month",
                "closed months",
                Kind.FUNDS,
                (names, month) -> Said.month(month.month()));
        add(
                ClosedMonthStore.LINES,
                "line of a statement",
                "lines of statements",
                Kind.FUNDS,
                (names, line) -> Said.month(line.month()) + ", " + line.name());
        add(SupplierStore.TABLE, "supplier", "suppliers", Kind.FUNDS, (names, one) -> one.name());
        add(RegularItemStore.TABLE, "regular item", "regular items", Kind.FUNDS, (names, item) -> item.name());
        add(PledgeLevelStore.TABLE, "pledge level", "pledge levels", Kind.FUNDS, (names, level) -> level.name());
        add(
                SupporterMonthStore.TABLE,
                "supporters",
                "supporters",
                Kind.FUNDS,
                (names, month) -> names.of("pledge_levels", month.level()) + ", " + month.month());
        add(NoteStore.TABLE, "build note", "build notes", Kind.NOTES, (names, note) -> note.title());
        add(
                PhotoStore.TABLE,
                "photo",
                "photos",
                Kind.NOTES,
                (names, photo) -> photo.caption().isEmpty() ? photo.file() : photo.caption());
        add(CrewMemberStore.TABLE, "person", "people", Kind.CREW, (names, member) -> member.name());
        add(EquipmentStore.TABLE, "equipment", "equipment", Kind.CREW, (names, one) -> one.name());
        add(
                IncidentStore.TABLE,
                "incident",
                "incidents",
                Kind.CREW,
                (names, incident) -> incident.who() + ", " + Said.day(incident.date()));
        add(KeptLeversStore.TABLE, "levers", "kept levers", Kind.LEVERS, (names, kept) -> kept.name());
        add(
                DayWordsStore.TABLE,
                "words of a day sheet",
                "words of day sheets",
                Kind.BUILD,
                (names, words) -> names.of("tasks", words.task()));
        add(
                HazardReadStore.TABLE,
                "reading of a hazard",
                "readings of hazards",
                Kind.CREW,
                (names, one) -> names.of("crew", one.crew()) + ", "
                        + HazardCodes.title(one.hazard()).orElse(one.hazard()));
        add(CautionStore.TABLE, "own caution", "own cautions", Kind.CREW, (names, caution) -> caution.hazard());
        settings(SettingsStore.PROJECT, "the project's settings");
        settings(SettingsStore.PUBLISHING, "the settings of publishing");
        settings(SettingsStore.WEATHER, "the settings of weather");
        settings(SettingsStore.ORDERS, "the settings of orders");
        settings(SettingsStore.MONEY, "the settings of tax");
        settings(SettingsStore.EMERGENCY, "what to do in an emergency");
        settings(SettingsStore.MODEL, "the settings of the forecast");
        settings(SettingsStore.BUILD_LOG, "the settings of the build log");
    }

    private Things() {}

    private static <R extends Record> void add(
            Table<R> table, String one, String many, Kind kind, BiFunction<Names, R, String> naming) {
        ALL.put(table.name(), new Thing<>(table, one, many, kind, naming));
    }

    private static <R extends Record> void settings(Table<R> table, String words) {
        add(table, words, words, Kind.SETTINGS, (names, row) -> "");
    }

    private static String on(Names names, Optional<Id> task, Optional<Id> episode) {
        return task.map(id -> ", " + names.of("tasks", id))
                .or(() -> episode.map(id -> ", " + names.of("episodes", id)))
                .orElse("");
    }

    public static List<Thing<?>> all() {
        return List.copyOf(ALL.values());
    }

    /** @throws IllegalArgumentException for a table that has no history */
    public static Thing<?> of(String table) {
        return find(table).orElseThrow(() -> new IllegalArgumentException("no thing " + table));
    }

    public static Optional<Thing<?>> find(String table) {
        return Optional.ofNullable(ALL.get(table));
    }
}
