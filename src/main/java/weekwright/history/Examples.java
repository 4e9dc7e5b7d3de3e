package weekwright.history;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.LinkStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ShotStore;
import weekwright.episodes.TellStore;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RegularItemStore;
import weekwright.funds.SupporterMonthStore;
import weekwright.notes.NoteStore;

/**
 * A few invented rows that show what belongs where: put in as one change, counted by the forecast while they are in, and taken out again
 * as far as nobody has changed them and nothing real hangs on them.
 */
public final class Examples {
    private static final int SLOT_IN_DAYS = 56;

    private Examples() {}

    /**
     * What became of taking them out.
     *
     * @param gone how many rows
     * @param stays what stays, with why
     */
    public record TakenOut(int gone, List<String> stays) {}

    /** Whether any row of theirs is still in. */
    public static boolean there(Read read) {
        return !known(read).isEmpty();
    }

    private static List<ExampleStore.Known> known(Read read) {
        return ExampleStore.all(read).stream()
                .filter(known -> Things.of(known.thing()).stands(read, known.row()))
                .toList();
    }

    // ---- in

    /**
     * Puts them in.
     *
     * @param today in the project's zone
     * @throws Rejected while some are in already
     */
    public static void put(Write write, LocalDate today) throws Rejected {
        if (there(write)) {
            throw new Rejected(Problem.fault(
                    "", "", "some of the example is in already", "take it out first, or change what is there"));
        }
        ExampleStore.forget(write);
        Settings settings = SettingsStore.get(write);
        add(write, StageStore.TABLE, "id", "example", "name", "Example: the sluice gate");
        add(
                write,
                TaskStore.TABLE,
                texts(
                        "example.1",
                        "Example: plane six oak boards",
                        "8",
                        "12",
                        "20",
                        "camera",
                        "fixed",
                        "story_minutes",
                        "6"));
        add(write, TaskStore.TABLE, texts("example.2", "Example: forge the rack", "10", "16", "28"));
        add(
                write,
                TaskStore.TABLE,
                texts(
                        "example.3",
                        "Example: hang the gate and try it",
                        "4",
                        "6",
                        "12",
                        "camera",
                        "fixed",
                        "story_minutes",
                        "8"));
        add(write, LinkStore.TABLE, "task", "example.3", "after", "example.1");
        add(write, LinkStore.TABLE, "task", "example.3", "after", "example.2");
        add(
                write,
                MaterialStore.TABLE,
                "id",
                "example.oak",
                "task",
                "example.1",
                "item",
                "Example: oak boards, 32 mm",
                "quantity",
                "0.4",
                "unit",
                "m3",
                "price_likely",
                "900",
                "lead_likely",
                "10");
        add(
                write,
                EpisodeStore.TABLE,
                "id",
                "example.film",
                "title",
                "Example: the gate goes in",
                "kind",
                "build",
                "slot",
                slot(write, settings, today));
        add(write, TellStore.TABLE, "episode", "example.film", "task", "example.3");
        add(
                write,
                ShotStore.TABLE,
                "id",
                "example.shot",
                "episode",
                "example.film",
                "task",
                "example.3",
                "what",
                "Example: the gate drops into its grooves",
                "must",
                "yes",
                "once",
                "yes");
        add(
                write,
                PledgeLevelStore.TABLE,
                "id",
                "example.peg",
                "name",
                "Example: Peg",
                "amount",
                "3",
                "charged",
                "month",
                "fee_percent",
                "8",
                "payout_days",
                "5");
        add(
                write,
                SupporterMonthStore.TABLE,
                "month",
                YearMonth.from(today).toString(),
                "level",
                "example.peg",
                "start",
                "40");
        add(
                write,
                RegularItemStore.TABLE,
                "id",
                "example.rent",
                "name",
                "Example: rent of the yard",
                "amount",
                "-190",
                "every",
                "month",
                "from",
                YearMonth.from(today).plusMonths(1).atDay(1).toString());
        add(
                write,
                NoteStore.TABLE,
                "id",
                "example.note",
                "title",
                "Example: the first board",
                "date",
                today.toString(),
                "stage",
                "example",
                "text",
                "What was done, what it took, what comes next.\n\nThe first board is planed. It took *two hours*; the knife wanted"
                        + " honing halfway. Tomorrow the other five.");
    }

    private static String[] texts(String id, String title, String low, String likely, String high, String... more) {
        List<String> all = new ArrayList<>(List.of(
                "id", id, "stage", "example", "title", title, "kind", "work", "low", low, "likely", likely, "high",
                high));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    /** The first free slot some weeks ahead. */
    private static String slot(Read read, Settings settings, LocalDate today) {
        Set<LocalDate> taken = EpisodeStore.TABLE.values(read).stream()
                .map(Episode::slot)
                .flatMap(Optional::stream)
                .collect(Collectors.toSet());
        LocalDate day = settings.firstSlot();
        while (day.getDayOfWeek() != settings.weekday()) {
            day = day.plusDays(1);
        }
        while (day.isBefore(today.plusDays(SLOT_IN_DAYS))
                || taken.contains(day)
                || settings.skip().contains(day)) {
            day = day.plusWeeks(settings.everyWeeks());
        }
        return day.toString();
    }

    private static <R extends Record> void add(Write write, Table<R> table, String... pairs) throws Rejected {
        Map<String, String> texts = new HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            texts.put(pairs[i], pairs[i + 1]);
        }
        Problems problems = new Problems();
        R row = table.shape()
                .parse(texts, SettingsStore.get(write).typed(), problems)
                .orElseThrow(() -> new IllegalStateException(problems.list().toString()));
        if (texts.containsKey("id")
                && table.find(write, new Id(texts.get("id"))).isPresent()) {
            throw new Rejected(Problem.fault(
                    "",
                    texts.get("id"),
                    "is there already, from an example that became your own",
                    "remove it first, or do without the example"));
        }
        Stored<R> stored = table.insert(write, row);
        ExampleStore.note(write, new ExampleStore.Known(table.name(), stored.row(), stored.version()));
    }

    // ---- out

    /** Takes out what is unchanged and on which nothing else hangs; the last put in goes first. */
    public static TakenOut takeOut(Write write) throws Stale {
        List<ExampleStore.Known> rows = new ArrayList<>(known(write));
        Collections.reverse(rows);
        Names names = new Names(write);
        List<String> stays = new ArrayList<>();
        int gone = 0;
        for (ExampleStore.Known known : rows) {
            Optional<String> why = takeOut(write, Things.of(known.thing()), known, names);
            if (why.isPresent()) {
                stays.add(why.get());
            } else {
                gone++;
            }
        }
        // what stays is the crew's own from now on
        ExampleStore.forget(write);
        return new TakenOut(gone, stays);
    }

    /** Why a row stays; nothing if it went. */
    private static <R extends Record> Optional<String> takeOut(
            Write write, Thing<R> thing, ExampleStore.Known known, Names names) throws Stale {
        Stored<R> stored = thing.table().find(write, known.row()).orElseThrow();
        String called = thing.called(names, stored.value());
        if (stored.version() != known.version()) {
            return Optional.of(called + ", which was changed");
        }
        Optional<String> hangs = thing.id(stored.value())
                .flatMap(id -> hanging(write, thing.table().name(), id, names));
        if (hangs.isPresent()) {
            return Optional.of(called + ", on which " + hangs.get() + " hangs");
        }
        thing.table().delete(write, stored.row(), stored.version());
        return Optional.empty();
    }

    /** The first row that refers to an id of a table. */
    private static Optional<String> hanging(Read read, String table, Id id, Names names) {
        for (Thing<?> thing : Things.all()) {
            for (Shape.Field field : thing.shape().fields()) {
                if (field.ref().filter(table::equals).isPresent()) {
                    Optional<String> found = first(read, thing, field.name(), id, names);
                    if (found.isPresent()) {
                        return found;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static <R extends Record> Optional<String> first(
            Read read, Thing<R> thing, String column, Id id, Names names) {
        return thing.table().where(read, column, id.value()).stream()
                .findFirst()
                .map(row -> thing.called(names, row.value()));
    }
}
