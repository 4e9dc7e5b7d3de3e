package weekwright.testkit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
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
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.Weather;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Db;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
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
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;

/**
 * An invented project small enough to keep in mind, as of Wednesday 25 November 2026: Ilse (mason, joiner), Bram (camera,
 * joiner, editor) and the helper Noor build a weir and a sluice gate. Two stages, six tasks, two episodes to come.
 */
public final class SmallProject {
    private SmallProject() {}

    /** Writes the project into an empty store. */
    public static void fill(Db db) {
        db.write("test", write -> {
            settings(write);
            crew(write);
            build(write);
            episodes(write);
            funds(write);
            return null;
        });
    }

    /** Settings and one person, nothing else. */
    public static void fillWithOnePerson(Db db) {
        db.write("test", write -> {
            settings(write);
            add(
                    write,
                    CrewMemberStore.TABLE,
                    CrewMember.class,
                    "id name trades mon tue wed thu fri access",
                    "ilse Ilse mason,joiner 8 8 8 8 4 crew");
            return null;
        });
    }

    /** Settings of a project with nothing set but these of publishing: column, text, column, text … */
    public static Settings publishing(String... pairs) {
        return bare(new String[0], pairs);
    }

    /** As above with nothing set but these of the project. */
    public static Settings project(String... pairs) {
        return bare(pairs, new String[0]);
    }

    private static Settings bare(String[] project, String[] publishing) {
        String[] named = {"name", "The weir", "started", "1990-01-01", "currency", "EUR", "zone", "Europe/Berlin"};
        return new Settings(
                of(
                        Project.class,
                        Stream.concat(Stream.of(named), Stream.of(project)).toArray(String[]::new)),
                of(Publishing.class, publishing),
                of(Weather.class),
                of(OrderSettings.class),
                of(MoneySettings.class),
                of(Emergency.class),
                of(ModelSettings.class));
    }

    /** Writes the project and one line of the week to come: Bram's errand on Friday. */
    public static void fillWithWeekLine(Db db) {
        fill(db);
        db.write(
                "test",
                write -> WeekLineStore.TABLE.insert(
                        write,
                        of(
                                WeekLine.class,
                                "id",
                                "week.1",
                                "date",
                                "2026-11-27",
                                "crew",
                                "bram",
                                "kind",
                                "errand",
                                "hours",
                                "1",
                                "text",
                                "Post the parcel")));
    }

    /** Writes the project and two build notes, the first with a picture that lies nowhere. */
    public static void fillWithNotes(Db db) {
        fill(db);
        db.write("test", write -> {
            NoteStore.TABLE.insert(
                    write,
                    of(
                            Note.class,
                            "id",
                            "n1",
                            "title",
                            "Sill stones",
                            "date",
                            "2026-11-09",
                            "author",
                            "ilse",
                            "stage",
                            "weir",
                            "tasks",
                            "weir.2",
                            "visible",
                            "everyone",
                            "text",
                            "Two of *nine* lie.\n\n- [x] bedded\n\n<script>alert(1)</script>"));
            NoteStore.TABLE.insert(
                    write, of(Note.class, "id", "n2", "title", "Frost", "date", "2026-11-20", "text", "No lime."));
            PhotoStore.TABLE.insert(
                    write,
                    of(
                            Photo.class,
                            "note",
                            "n1",
                            "file",
                            "sill.png",
                            "caption",
                            "The first two",
                            "alternative",
                            "Two dressed stones in a row"));
            return null;
        });
    }

    private static void settings(Write write) {
        SettingsStore.insert(
                write,
                new Settings(
                        of(
                                Project.class,
                                "name",
                                "The weir",
                                "started",
                                "2026-09-01",
                                "currency",
                                "EUR",
                                "zone",
                                "Europe/Berlin",
                                "reserve",
                                "500",
                                "opening_cash",
                                "4000"),
                        of(Publishing.class, "weekday", "friday", "first", "2026-09-04"),
                        of(Weather.class),
                        of(OrderSettings.class),
                        of(MoneySettings.class),
                        of(
                                Emergency.class,
                                "number",
                                "112",
                                "address",
                                "Mill lane 3",
                                "way_in",
                                "Gate by the pond",
                                "first_aider",
                                "Ilse",
                                "kit",
                                "By the door",
                                "shut_offs",
                                "Mains behind the saw"),
                        of(ModelSettings.class)));
    }

    private static void crew(Write write) {
        add(
                write,
                CrewMemberStore.TABLE,
                CrewMember.class,
                "id name trades mon tue wed thu fri access",
                "ilse Ilse mason,joiner 8 8 8 8 4 crew",
                "bram Bram camera,joiner,edit 6 6 6 6 6 crew",
                "noor Noor joiner 0 0 0 0 4 helper");
    }

    private static void build(Write write) {
        add(write, StageStore.TABLE, Stage.class, "id name", "weir Weir", "gate Sluice_gate");
        add(
                write,
                TaskStore.TABLE,
                Task.class,
                "id stage title kind low likely high trades camera story_minutes hazards started done",
                "weir.1 weir Dig_the_footing work 12 16 24 mason fixed 6 - 2026-10-05 2026-10-16",
                "weir.2 weir Set_the_sill_stones work 20 30 50 mason fixed 10 lift 2026-11-09 -",
                "weir.3 weir Lime_cures wait 7 7 10 - - - - - -",
                "gate.1 gate Plane_the_gate_boards work 8 12 18 joiner fixed 8 dust - -",
                "gate.2 gate Hang_the_gate work 4 6 10 joiner once 9 - - -",
                "gate.3 gate Forge_the_straps work 5 8 12 joiner operator 7 hot - -");
        add(
                write,
                LinkStore.TABLE,
                Link.class,
                "task after",
                "weir.2 weir.1",
                "weir.3 weir.2",
                "gate.2 weir.3",
                "gate.2 gate.1",
                "gate.2 gate.3");
        add(
                write,
                HoursEntryStore.TABLE,
                HoursEntry.class,
                "id date crew task as hours filmed",
                "hours.1 2026-10-05 ilse weir.1 hands 8 yes",
                "hours.2 2026-10-06 ilse weir.1 hands 8 -",
                "hours.3 2026-10-16 ilse weir.1 hands 3.5 yes",
                "hours.4 2026-11-09 ilse weir.2 hands 7 yes",
                "hours.5 2026-11-10 ilse weir.2 hands 6.5 -");
    }

    private static void episodes(Write write) {
        add(
                write,
                EpisodeStore.TABLE,
                Episode.class,
                "id number slot title kind minutes editor footage_complete cut published",
                "ep.10 10 2026-11-20 The_footing build 18 bram 2026-11-12 2026-11-18 2026-11-20",
                "ep.11 11 2026-11-27 Sill_stones build 20 bram 2026-11-21 2026-11-25 -",
                "ep.12 12 2026-12-04 Boards_for_the_gate build 20 bram - - -",
                "ep.s1 - - Why_a_weir standby 15 bram - - -");
        add(
                write,
                TellStore.TABLE,
                Tell.class,
                "episode task share",
                "ep.10 weir.1 -",
                "ep.11 weir.2 0.3",
                "ep.12 gate.1 -");
        add(
                write,
                ShotStore.TABLE,
                Shot.class,
                "id episode task what size must once",
                "shot.1 ep.12 gate.1 First_shaving_off_the_board close yes -",
                "shot.2 - gate.2 The_gate_drops_home wide yes yes");
    }

    private static void funds(Write write) {
        add(
                write,
                MaterialStore.TABLE,
                Material.class,
                "id task item quantity unit price_likely source supplier lead_low lead_likely lead_high deposit",
                "mat.1 gate.1 Oak_boards 14 m 21.50 bought Sawmill_upstream 14 21 35 30",
                "mat.2 gate.3 Flat_iron 6 m 9 bought Iron_yard 2 3 5 -");
        add(
                write,
                PledgeLevelStore.TABLE,
                PledgeLevel.class,
                "id name amount charged fee_percent payout_days",
                "plank Plank 5 month 8 5");
        add(
                write,
                SupporterMonthStore.TABLE,
                SupporterMonth.class,
                "month level start joined left",
                "2026-09 plank 60 8 2",
                "2026-10 plank 66 6 3",
                "2026-11 plank 69 5 1");
        add(
                write,
                LedgerEntryStore.TABLE,
                LedgerEntry.class,
                "id date amount kind",
                "ledger.1 2026-10-06 303.60 payout",
                "ledger.2 2026-11-06 317.40 payout",
                "ledger.3 2026-11-12 -86.20 other-cost");
    }

    private static <R extends Record> void add(
            Write write, Table<R> table, Class<R> type, String head, String... rows) {
        String[] columns = head.split(" ");
        for (String row : rows) {
            String[] cells = row.split(" ");
            Map<String, String> texts = new LinkedHashMap<>();
            for (int i = 0; i < columns.length; i++) {
                String cell = cells[i].equals("-") ? "" : cells[i];
                texts.put(columns[i], cell.replace('_', ' ').replace(',', ' '));
            }
            table.insert(write, parse(type, texts));
        }
    }

    /** A record of texts: column, text, column, text … */
    public static <R extends Record> R of(Class<R> type, String... pairs) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            texts.put(pairs[i], pairs[i + 1]);
        }
        return parse(type, texts);
    }

    private static <R extends Record> R parse(Class<R> type, Map<String, String> texts) {
        Problems problems = new Problems();
        return Shape.of(type)
                .parse(texts, Reading.file(2), problems)
                .orElseThrow(() -> new IllegalArgumentException(type + " " + texts + " " + problems.list()));
    }
}
