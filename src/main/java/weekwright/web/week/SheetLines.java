package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.forecast.WeekPlan;
import weekwright.render.Form;

/**
 * The lines of the sheet from the wall: at first those of the plan, with room for pencil under each day. A sheet that was
 * refused is shown with the lines it was posted with: by then the plan may have others, and a line's number in it would be
 * another line's.
 */
final class SheetLines {
    /** Empty lines under a day. */
    private static final int PENCILLED = 2;

    private final WeekFacts facts;
    private final Map<LocalDate, List<WeekSheetPage.Line>> days = new LinkedHashMap<>();
    private int number;

    private SheetLines(WeekFacts facts) {
        this.facts = facts;
    }

    /** Those of the plan, from a day up to a day. */
    static List<WeekSheetPage.Day> planned(WeekPlan plan, WeekFacts facts, LocalDate first, LocalDate last) {
        SheetLines lines = new SheetLines(facts);
        for (WeekPlan.Day day : plan.days()) {
            if (day.date().isAfter(last)) {
                break;
            }
            if (day.date().isBefore(first)) {
                continue;
            }
            for (WeekPlan.Person person : day.people()) {
                person.lines().stream()
                        .filter(line ->
                                !line.kind().equals("rest") && !person.crew().isEmpty())
                        .forEach(line -> lines.printed(day.date(), person.crew(), line));
            }
            for (int i = 0; i < PENCILLED; i++) {
                lines.pencilled(day.date());
            }
        }
        return lines.days();
    }

    /** Those that were posted, in their order. */
    static List<WeekSheetPage.Day> posted(Form form, WeekFacts facts, LocalDate monday) {
        SheetLines lines = new SheetLines(facts);
        LocalDate date = monday;
        while (form.values().containsKey("date." + lines.number)) {
            date = SheetRow.date(form, lines.number).orElse(date);
            lines.add(date, SheetRow.carried(form, lines.number));
        }
        return lines.days();
    }

    private void printed(LocalDate date, String crew, WeekPlan.Line line) {
        String what = line.task()
                .map(id -> SheetRow.TASK + id)
                .or(() -> line.episode().map(id -> SheetRow.EPISODE + id))
                .orElse("");
        int minutes = line.own()
                ? line.hours().minutes()
                : WeekDays.quarters(line.hours().minutes());
        Map<String, String> carried = new LinkedHashMap<>();
        carried.put("date", date.toString());
        carried.put("kind", line.kind());
        carried.put("crew", crew);
        carried.put("what", what);
        carried.put("text", WeekDays.text(line, facts));
        carried.put("planned", String.valueOf(minutes));
        add(date, carried);
    }

    private void pencilled(LocalDate date) {
        Map<String, String> carried = new LinkedHashMap<>();
        carried.put("date", date.toString());
        carried.put("kind", "");
        add(date, carried);
    }

    private void add(LocalDate date, Map<String, String> carried) {
        boolean pencilled = !carried.containsKey("text");
        String crew = carried.getOrDefault("crew", "");
        String what = carried.getOrDefault("what", "");
        String planned = carried.getOrDefault("planned", "");
        Map<String, String> fields = new LinkedHashMap<>();
        carried.forEach((name, text) -> fields.put(name + "." + number, text));
        days.computeIfAbsent(date, one -> new ArrayList<>())
                .add(new WeekSheetPage.Line(
                        number++,
                        pencilled ? "" : facts.person(crew),
                        carried.getOrDefault("text", ""),
                        planned.matches("[0-9]{1,4}") ? Integer.parseInt(planned) : 0,
                        pencilled ? 0 : logged(date, crew, what),
                        pencilled
                                || what.startsWith(SheetRow.TASK)
                                        && !carried.get("kind").equals("film"),
                        pencilled,
                        fields));
    }

    private int logged(LocalDate date, String crew, String what) {
        return facts.hours().stream()
                .filter(entry -> entry.date().equals(date)
                        && entry.crew().value().equalsIgnoreCase(crew)
                        && what.equals(entry.task()
                                .map(id -> SheetRow.TASK + id)
                                .or(() -> entry.episode().map(id -> SheetRow.EPISODE + id))
                                .orElse("")))
                .mapToInt(entry -> entry.hours().minutes())
                .sum();
    }

    private List<WeekSheetPage.Day> days() {
        return days.entrySet().stream()
                .map(day -> new WeekSheetPage.Day(day.getKey(), day.getValue()))
                .toList();
    }
}
