package weekwright.testkit;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Emergency;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.ModelSettings;
import weekwright.build.MoneySettings;
import weekwright.build.OrderSettings;
import weekwright.build.Project;
import weekwright.build.Publishing;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.Weather;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;

/**
 * A small invented project in a real store: an oak mill in euro, begun 1 March 2026, with Ilse and Tomas of the crew and
 * Wren who helps, the stage Wheel shaft and four tasks of it. Today is Wednesday, 25 November 2026.
 */
public final class OakMill {
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    private OakMill() {}

    /** Makes the project in an empty folder. */
    public static Db create(Path folder) throws FolderRefused {
        Db db = new Folder(folder).create(CLOCK);
        db.write("ilse", write -> {
            SettingsStore.insert(write, settings());
            for (String[] one : new String[][] {
                {"ilse", "Ilse", "mason joiner", "crew"},
                {"tomas", "Tomas", "camera edit joiner", "crew"},
                {"wren", "Wren", "", "helper"}
            }) {
                CrewMemberStore.TABLE.insert(
                        write,
                        row(
                                CrewMember.class,
                                "id",
                                one[0],
                                "name",
                                one[1],
                                "trades",
                                one[2],
                                "access",
                                one[3],
                                "mon",
                                "8",
                                "tue",
                                "8",
                                "wed",
                                "8",
                                "thu",
                                "8",
                                "fri",
                                "6",
                                "sat",
                                one[0].equals("wren") ? "6" : ""));
            }
            StageStore.TABLE.insert(write, row(Stage.class, "id", "shaft", "name", "Wheel shaft", "order", "1"));
            StageStore.TABLE.insert(write, row(Stage.class, "id", "wheel", "name", "Waterwheel", "order", "2"));
            task(write, "shaft.1", "Square the log", "likely", "24", "started", "2026-09-14", "done", "2026-09-19");
            task(write, "shaft.2", "Arm mortises", "likely", "42", "pieces", "6");
            task(write, "shaft.3", "Shrink on the hoops", "likely", "28", "camera", "once");
            task(write, "shaft.4", "Oil soaks in", "kind", "wait", "likely", "7");
            link(write, "shaft.2", "shaft.1");
            link(write, "shaft.3", "shaft.2");
            link(write, "shaft.4", "shaft.3");
            return null;
        });
        return db;
    }

    private static Settings settings() {
        return new Settings(
                row(
                        Project.class,
                        "name",
                        "Oak mill",
                        "started",
                        "2026-03-01",
                        "currency",
                        "EUR",
                        "zone",
                        "Europe/Berlin",
                        "reserve",
                        "3000.00",
                        "opening_cash",
                        "5000.00"),
                row(Publishing.class),
                row(Weather.class),
                row(OrderSettings.class),
                row(MoneySettings.class),
                row(Emergency.class, "number", "112"),
                row(ModelSettings.class));
    }

    private static void task(Write write, String id, String title, String... more) {
        Map<String, String> texts = new LinkedHashMap<>(
                Map.of("id", id, "stage", id.replaceFirst("\\..*", ""), "title", title, "kind", "work"));
        for (int i = 0; i < more.length; i += 2) {
            texts.put(more[i], more[i + 1]);
        }
        TaskStore.TABLE.insert(write, of(Task.class, texts));
    }

    private static void link(Write write, String task, String after) {
        LinkStore.TABLE.insert(write, row(Link.class, "task", task, "after", after));
    }

    /** A record of column names and texts in turn, read as a file is. */
    public static <R extends Record> R row(Class<R> type, String... texts) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < texts.length; i += 2) {
            map.put(texts[i], texts[i + 1]);
        }
        return of(type, map);
    }

    private static <R extends Record> R of(Class<R> type, Map<String, String> texts) {
        Problems problems = new Problems();
        return Shape.of(type)
                .parse(texts, Reading.file(2), problems)
                .orElseThrow(() -> new IllegalArgumentException(
                        OakMill.texts(problems.list()).toString()));
    }

    /** The row of an id, as it stands. */
    public static <R extends Record> Stored<R> find(Db db, Table<R> table, String id) {
        return db.read(read -> table.find(read, new Id(id))).orElseThrow();
    }

    public static Task task(Db db, String id) {
        return find(db, TaskStore.TABLE, id).value();
    }

    /** The row of an id as a person is shown it now. */
    public static Shown shown(Db db, Table<?> table, String id) {
        return Shown.of(find(db, table, id));
    }

    public static List<String> texts(List<Problem> problems) {
        return problems.stream().map(Problem::text).toList();
    }

    public static Stored<HoursEntry> addHours(Db db, String... texts) {
        return db.write("ilse", write -> HoursEntryStore.TABLE.insert(write, row(HoursEntry.class, texts)));
    }

    public static Stored<Episode> addEpisode(Db db, String... texts) {
        return db.write("ilse", write -> EpisodeStore.TABLE.insert(write, row(Episode.class, texts)));
    }

    public static Stored<Shot> addShot(Db db, String... texts) {
        return db.write("ilse", write -> ShotStore.TABLE.insert(write, row(Shot.class, texts)));
    }

    public static Stored<Material> addMaterial(Db db, String... texts) {
        return db.write("ilse", write -> MaterialStore.TABLE.insert(write, row(Material.class, texts)));
    }

    public static Stored<LedgerEntry> addLedger(Db db, String... texts) {
        return db.write("ilse", write -> LedgerEntryStore.TABLE.insert(write, row(LedgerEntry.class, texts)));
    }

    public static Stored<PledgeLevel> addLevel(Db db, String... texts) {
        return db.write("ilse", write -> PledgeLevelStore.TABLE.insert(write, row(PledgeLevel.class, texts)));
    }
}
