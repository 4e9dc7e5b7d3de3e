package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.build.HoursEntry;
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
    private static final int MOST = 400;
    private static final Map<String, HoursEntry.As> AS = Map.of(
            "work", HoursEntry.As.HANDS,
            "film", HoursEntry.As.CAMERA,
            "edit", HoursEntry.As.EDIT);

    /** The fields that say which line it is, for the page to carry. */
    static Map<String, String> carried(int number, LocalDate date, String crew, String kind, String what) {
        Map<String, String> fields = new HashMap<>();
        fields.put("date." + number, date.toString());
        fields.put("crew." + number, crew);
        fields.put("kind." + number, kind);
        fields.put("what." + number, what);
        return fields;
    }

    /** All rows with something in a box; faults stand on their fields. */
    static List<SheetRow> read(FormReader form) {
        List<SheetRow> rows = new ArrayList<>();
        for (int i = 0; i < MOST && form.has("date." + i); i++) {
            Optional<LocalDate> date = form.needed("date." + i, LocalDate.class);
            Optional<Id> crew = form.read("crew." + i, Id.class);
            String kind = form.text("kind." + i).toLowerCase(Locale.ROOT);
            String what = form.text("what." + i);
            Optional<Hours> hours = form.read("hours." + i, Hours.class);
            boolean done = form.ticked("done." + i);
            boolean typed = !form.text("hours." + i).isEmpty() || done;
            if (!typed) {
                continue;
            }
            if (form.text("crew." + i).isEmpty()) {
                form.fault("crew." + i, "", "is missing", "say whose line it is");
            }
            Optional<Id> task = id(what, "task:");
            if (done && task.isEmpty()) {
                form.fault("done." + i, "", "is ticked on a line without a task", "choose the task, or take it out");
            }
            if (date.isPresent()) {
                rows.add(new SheetRow(
                        i,
                        date.get(),
                        crew,
                        task,
                        id(what, "episode:"),
                        AS.getOrDefault(kind, task.isPresent() ? HoursEntry.As.HANDS : HoursEntry.As.SHOP),
                        hours,
                        done));
            }
        }
        return rows;
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
