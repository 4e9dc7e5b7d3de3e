package weekwright.bench;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Emergency;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
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
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.Weather;
import weekwright.db.Db;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.testkit.SmallProject;

/**
 * Ten years of a made-up project, as of 25 November 2026, always the same: 40 stages, 2,000 tasks of which the last 100 are
 * open, 30,000 hours entries, 520 episodes, 4,000 rows in the books, 1,000 material lines, 600 build notes, three pledge
 * levels counted in 119 months.
 */
public final class TenYears {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final LocalDate BEGUN = LocalDate.of(2017, 1, 2);
    private static final int STAGES = 40;
    private static final int TASKS = 2_000;
    private static final int OPEN = 100;
    private static final int HOURS = 30_000;
    private static final int EPISODES = 520;
    private static final int LEDGER = 4_000;
    private static final int MATERIALS = 1_000;
    private static final int NOTES = 600;
    private static final String[] WORK = {
        "Cut", "Plane", "Joint", "Peg", "Forge", "Dress", "Lay", "Point", "Hang", "Fit"
    };
    private static final String[] OF = {
        "beam", "post", "brace", "coping stone", "floor board", "bracket", "stair", "hatch", "chute", "hopper"
    };
    private static final String[] PEOPLE = {"hedda", "joris", "wren"};

    private final Random random = new Random(20261125);

    private TenYears() {}

    public static void fill(Db db) {
        db.write("made", write -> {
            new TenYears().write(write);
            return null;
        });
    }

    private void write(Write write) {
        SettingsStore.insert(
                write,
                new Settings(
                        of(
                                Project.class,
                                "name",
                                "Ten years",
                                "started",
                                BEGUN.toString(),
                                "currency",
                                "EUR",
                                "zone",
                                "Europe/Berlin",
                                "reserve",
                                "1000",
                                "opening_cash",
                                "5000"),
                        of(Publishing.class, "weekday", "friday", "first", "2017-01-06"),
                        of(Weather.class),
                        of(OrderSettings.class),
                        of(MoneySettings.class),
                        of(Emergency.class, "number", "112"),
                        of(ModelSettings.class)));
        insert(
                write,
                CrewMemberStore.TABLE,
                List.of(
                        of(
                                CrewMember.class,
                                "id",
                                "hedda",
                                "name",
                                "Hedda",
                                "trades",
                                "mason joiner smith",
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
                                "access",
                                "crew"),
                        of(
                                CrewMember.class,
                                "id",
                                "joris",
                                "name",
                                "Joris",
                                "trades",
                                "camera edit joiner",
                                "mon",
                                "7",
                                "tue",
                                "7",
                                "wed",
                                "7",
                                "thu",
                                "7",
                                "fri",
                                "7",
                                "access",
                                "crew"),
                        of(
                                CrewMember.class,
                                "id",
                                "wren",
                                "name",
                                "Wren",
                                "trades",
                                "joiner",
                                "sat",
                                "6",
                                "access",
                                "helper")));
        List<Equipment> machines = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            machines.add(of(Equipment.class, "id", "m" + i, "name", "Machine " + i));
        }
        insert(write, EquipmentStore.TABLE, machines);
        build(write);
        film(write);
        money(write);
    }

    private LocalDate day(int index, int of) {
        return BEGUN.plusDays((long) index * BEGUN.until(TODAY, ChronoUnit.DAYS) / of);
    }

    private void build(Write write) {
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < STAGES; i++) {
            stages.add(of(Stage.class, "id", "s" + i, "name", "Part " + (i + 1) + " of the mill"));
        }
        insert(write, StageStore.TABLE, stages);
        List<Task> tasks = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        int done = TASKS - OPEN;
        for (int i = 0; i < TASKS; i++) {
            String title = WORK[random.nextInt(WORK.length)] + " the " + OF[random.nextInt(OF.length)] + " no. " + i;
            boolean open = i >= done;
            tasks.add(of(
                    Task.class,
                    "id",
                    "t" + i,
                    "stage",
                    "s" + i * STAGES / TASKS,
                    "title",
                    title,
                    "kind",
                    "work",
                    "likely",
                    String.valueOf(8 + random.nextInt(30)),
                    "trades",
                    i % 3 == 0 ? "mason" : "joiner",
                    "camera",
                    i % 4 == 0 ? "fixed" : "none",
                    "story_minutes",
                    String.valueOf(i % 7),
                    "started",
                    open ? "" : day(i, done).toString(),
                    "done",
                    open ? "" : day(i, done).plusDays(random.nextInt(9)).toString()));
            if (i % STAGES > 0) {
                links.add(of(Link.class, "task", "t" + i, "after", "t" + (i - 1 - random.nextInt(Math.min(i, 3)))));
            }
        }
        insert(write, TaskStore.TABLE, tasks);
        insert(write, LinkStore.TABLE, links);
        List<HoursEntry> hours = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < HOURS; i++) {
            LocalDate date = day(i, HOURS);
            String who = PEOPLE[date.getDayOfWeek() == DayOfWeek.SATURDAY ? 2 : i % 2];
            boolean first = taken.add(who + date);
            hours.add(of(
                    HoursEntry.class,
                    "id",
                    "h" + i,
                    "date",
                    date.toString(),
                    "crew",
                    who,
                    "task",
                    "t" + (int) ((long) i * done / HOURS),
                    "hours",
                    first ? "2.5" : "0.75"));
        }
        insert(write, HoursEntryStore.TABLE, hours);
    }

    private void film(Write write) {
        List<Episode> episodes = new ArrayList<>();
        List<Tell> tells = new ArrayList<>();
        LocalDate slot = LocalDate.of(2017, 1, 6);
        for (int i = 0; i < EPISODES; i++) {
            boolean out = !slot.isAfter(TODAY);
            String when = out ? slot.minusDays(1).toString() : "";
            episodes.add(of(
                    Episode.class,
                    "id",
                    "e" + i,
                    "number",
                    String.valueOf(i + 1),
                    "slot",
                    slot.toString(),
                    "title",
                    "Week " + (i + 1) + " at the mill",
                    "kind",
                    "build",
                    "minutes",
                    "18",
                    "editor",
                    "joris",
                    "footage_complete",
                    out ? slot.minusDays(6).toString() : "",
                    "cut",
                    when,
                    "published",
                    out ? slot.toString() : ""));
            tells.add(of(Tell.class, "episode", "e" + i, "task", "t" + (int) ((long) i * (TASKS - 1) / EPISODES)));
            slot = slot.plusWeeks(1);
        }
        insert(write, EpisodeStore.TABLE, episodes);
        insert(write, TellStore.TABLE, tells);
        List<Note> notes = new ArrayList<>();
        for (int i = 0; i < NOTES; i++) {
            LocalDate date = day(i, NOTES);
            notes.add(of(
                    Note.class,
                    "id",
                    "n" + i,
                    "title",
                    "A day at the " + OF[random.nextInt(OF.length)] + ", no. " + i,
                    "date",
                    date.toString(),
                    "author",
                    PEOPLE[i % 2],
                    "stage",
                    "s" + i * STAGES / NOTES,
                    "text",
                    ("We " + WORK[i % WORK.length].toLowerCase(Locale.ROOT) + " oak all day. ").repeat(20)));
        }
        insert(write, NoteStore.TABLE, notes);
    }

    private void money(Write write) {
        List<Material> materials = new ArrayList<>();
        for (int i = 0; i < MATERIALS; i++) {
            int task = i * 2;
            boolean open = task >= TASKS - OPEN;
            materials.add(of(
                    Material.class,
                    "id",
                    "x" + i,
                    "task",
                    "t" + task,
                    "item",
                    "Oak " + (40 + i % 9 * 10) + " mm, lot " + i,
                    "quantity",
                    String.valueOf(1 + i % 5),
                    "unit",
                    "m",
                    "price_likely",
                    "24",
                    "supplier",
                    "The sawmill",
                    "lead_likely",
                    "21",
                    "ordered",
                    open
                            ? ""
                            : day(task, TASKS).minusDays(30).isBefore(BEGUN)
                                    ? BEGUN.toString()
                                    : day(task, TASKS).minusDays(30).toString(),
                    "received",
                    open
                            ? ""
                            : day(task, TASKS).isBefore(BEGUN)
                                    ? BEGUN.toString()
                                    : day(task, TASKS).toString()));
        }
        insert(write, MaterialStore.TABLE, materials);
        List<PledgeLevel> levels = new ArrayList<>();
        for (String id : List.of("peg", "beam", "bucket")) {
            levels.add(of(
                    PledgeLevel.class,
                    "id",
                    id,
                    "name",
                    id,
                    "amount",
                    "5",
                    "charged",
                    id.equals("bucket") ? "episode" : "month",
                    "fee_percent",
                    "8",
                    "payout_days",
                    "5"));
        }
        insert(write, PledgeLevelStore.TABLE, levels);
        List<SupporterMonth> months = new ArrayList<>();
        for (YearMonth month = YearMonth.of(2017, 1);
                !month.isAfter(YearMonth.from(TODAY));
                month = month.plusMonths(1)) {
            for (PledgeLevel level : levels) {
                months.add(of(
                        SupporterMonth.class,
                        "month",
                        month.toString(),
                        "level",
                        level.id().value(),
                        "start",
                        "120",
                        "joined",
                        "9",
                        "left",
                        "8"));
            }
        }
        insert(write, SupporterMonthStore.TABLE, months);
        List<LedgerEntry> ledger = new ArrayList<>();
        for (int i = 0; i < LEDGER; i++) {
            boolean in = i % 3 == 0;
            ledger.add(of(
                    LedgerEntry.class,
                    "id",
                    "l" + i,
                    "date",
                    day(i, LEDGER).toString(),
                    "amount",
                    in ? "610" : "-" + (200 + random.nextInt(180)),
                    "kind",
                    in ? "payout" : i % 2 == 0 ? "material" : "other-cost",
                    "payee",
                    in ? "peg" : "The iron yard",
                    "stage",
                    in ? "" : "s" + i * STAGES / LEDGER));
        }
        insert(write, LedgerEntryStore.TABLE, ledger);
    }

    private static <R extends Record> void insert(Write write, Table<R> table, List<R> rows) {
        table.insertAll(write, rows);
    }

    private static <R extends Record> R of(Class<R> type, String... pairs) {
        return SmallProject.of(type, pairs);
    }

    /** An example for each part of an address that stands in braces, by the address up to it. */
    static Map<String, String> examples() {
        Map<String, String> examples = new LinkedHashMap<>();
        examples.put("/build/stages/", "s38");
        examples.put("/build/tasks/", "t1950");
        examples.put("/build/materials/", "x975");
        examples.put("/build/equipment/", "m3");
        examples.put("/episodes/", "e515");
        examples.put("/notes/", "n599");
        examples.put("/crew/members/", "hedda");
        examples.put("/funds/entries/", "3999");
        examples.put("/funds/levels/", "peg");
        examples.put("/log/entries/", "29999");
        return examples;
    }
}
