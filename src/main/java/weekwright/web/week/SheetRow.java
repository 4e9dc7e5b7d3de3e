package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.build.HoursEntry;
import weekwright.render.Form;
import weekwright.web.kit.FormReader;

/**
 * A line of the printed sheet as it comes back from the wall: whose, of which day, for what, and what stands in its two
 * boxes. A line added by pencil has its person and its work chosen.
 *
 * @param number of the row on the page; its fields end in it
 * @param as what the hours were
 * @param done whether the task's done box is ticked
 */
record SheetRow(
        int number,
        LocalDate date,
        Optional<Id> crew,
        Optional<Id> task,
        Optional<Id> episode,
        HoursEntry.As as,
        Optional<Hours> hours,
        boolean done) {
    static final String TASK = "task:";
    static final String EPISODE = "episode:";

    private static final int MOST = 400;
    private static final List<String> PENCILLED = List.of("date", "kind");
    private static final List<String> PRINTED = List.of("date", "kind", "crew", "what", "text", "planned");
    /** As {@code WeekLine.Kind}; empty on a pencilled line. */
    private static final List<String> KINDS = List.of("", "work", "film", "edit", "errand", "care");

    private static final Map<String, HoursEntry.As> AS = Map.of(
            "work", HoursEntry.As.HANDS,
            "film", HoursEntry.As.CAMERA,
            "edit", HoursEntry.As.EDIT);

    /** The posted fields that say which line it is, by their names without the number; a pencilled line has no text. */
    static Map<String, String> carried(Form form, int number) {
        boolean pencilled = !form.values().containsKey("text." + number);
        Map<String, String> fields = new LinkedHashMap<>();
        for (String name : pencilled ? PENCILLED : PRINTED) {
            fields.put(name, form.value(name + "." + number));
        }
        return fields;
    }

    /** The day of a posted line; empty where it is none. */
    static Optional<LocalDate> date(Form form, int number) {
        try {
            return Optional.of(Codec.of(LocalDate.class).parse(form.value("date." + number), Reading.form(0)));
        } catch (Refused none) {
            return Optional.empty();
        }
    }

    /** All rows with something in a box; faults stand on their fields. */
    static List<SheetRow> read(FormReader form) {
        List<SheetRow> rows = new ArrayList<>();
        for (int i = 0; i < MOST && form.has("date." + i); i++) {
            row(form, i).ifPresent(rows::add);
        }
        return rows;
    }

    private static Optional<SheetRow> row(FormReader form, int i) {
        boolean pencilled = !form.has("text." + i);
        Optional<LocalDate> date = form.needed("date." + i, LocalDate.class);
        String crewText = form.text("crew." + i);
        String kind = form.text("kind." + i).toLowerCase(Locale.ROOT);
        String what = form.text("what." + i);
        // what the line said stands on the page once more where the sheet is refused
        form.text("text." + i);
        form.text("planned." + i);
        Optional<Hours> hours = form.text("hours." + i).isEmpty()
                ? Optional.empty()
                : form.column("hours." + i, HoursEntry.class, "hours").map(Hours.class::cast);
        boolean done = form.ticked("done." + i);
        boolean chosen = pencilled && !(crewText + what).isEmpty();
        if (form.text("hours." + i).isEmpty() && !done) {
            if (chosen) {
                form.fault(
                        "hours." + i, "", "is missing", "write the hours, or choose nobody and nothing on this line");
            }
            return Optional.empty();
        }
        Optional<Id> crew = form.read("crew." + i, Id.class);
        if (crewText.isEmpty()) {
            form.fault("crew." + i, "", "is missing", "say whose line it is");
        }
        if (!KINDS.contains(kind)) {
            form.fault("kind." + i, kind, "is no kind of line", "load the page again and fill it in");
        }
        Optional<Id> task = id(what, TASK);
        Optional<Id> episode = id(what, EPISODE);
        if (!what.isEmpty() && task.isEmpty() && episode.isEmpty()) {
            form.fault("what." + i, what, "is not one of those here", "choose one of the list");
        } else if (done && task.isEmpty()) {
            form.fault("done." + i, "", "is ticked on a line without a task", "choose the task, or take it out");
        }
        return date.map(day -> new SheetRow(i, day, crew, task, episode, as(kind, task, episode), hours, done));
    }

    private static HoursEntry.As as(String kind, Optional<Id> task, Optional<Id> episode) {
        return Optional.ofNullable(AS.get(kind))
                .orElse(
                        task.isPresent()
                                ? HoursEntry.As.HANDS
                                : episode.isPresent() ? HoursEntry.As.EDIT : HoursEntry.As.SHOP);
    }

    private static Optional<Id> id(String what, String of) {
        return what.startsWith(of) && Id.isOne(what.substring(of.length()))
                ? Optional.of(new Id(what.substring(of.length())))
                : Optional.empty();
    }

    /** The entry of its hours, under an id. */
    HoursEntry entry(Id id) {
        return new HoursEntry(
                id,
                date,
                crew.orElseThrow(),
                Optional.empty(),
                task,
                episode,
                Optional.of(as),
                hours.orElseThrow(),
                Optional.empty(),
                Optional.empty(),
                as == HoursEntry.As.CAMERA,
                Optional.empty(),
                "");
    }
}
