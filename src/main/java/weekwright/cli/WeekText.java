package weekwright.cli;

import java.util.List;
import java.util.stream.Collectors;
import weekwright.base.Problem;
import weekwright.build.HazardCodes;
import weekwright.forecast.Basis;
import weekwright.forecast.Names;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;

/** A week's sheet in lines, remarks first. */
final class WeekText {
    private final WeekPlan week;
    private final Basis basis;
    private final Names names;
    private final List<Problem> remarks;
    private final Formats formats;
    private final Sheet sheet = new Sheet();

    WeekText(WeekPlan week, Basis basis, List<Problem> remarks) {
        this.week = week;
        this.basis = basis;
        this.names = basis.names();
        this.remarks = remarks;
        this.formats = new Formats(basis.currency(), basis.asOf());
    }

    String text() {
        if (!remarks.isEmpty()) {
            sheet.head("Remarks");
            remarks.forEach(remark -> sheet.line(remark.text()));
        }
        sheet.head(names.project() + ", week of "
                + formats.dateLong(week.days().get(0).date()));
        week.days().forEach(this::day);
        sheet.head("Lines marked * were written by the crew; the others are proposals.");
        sheet.head("Local rules and qualified people decide; a sheet never says that something is safe.");
        return sheet.text();
    }

    private void day(WeekPlan.Day day) {
        sheet.head(Formats.weekday(day.date()) + " " + Formats.dayMonthLong(day.date()));
        if (day.people().isEmpty()) {
            sheet.line(day.date().isBefore(basis.asOf()) ? "Nothing was written." : "Nothing planned.");
        }
        for (WeekPlan.Person person : day.people()) {
            for (WeekPlan.Line line : person.lines()) {
                sheet.line((line.own() ? "* " : "  ") + names.person(person.crew()) + ": " + doing(line));
            }
        }
        day.rain()
                .forEach(rain ->
                        sheet.under("If it rains, " + names.person(rain.crew()) + ": " + names.task(rain.task())));
        day.onceOnly().forEach(task -> sheet.under("Once only: " + names.task(task)));
        list("To film", day.shots().stream().map(names::shot).toList());
        list(
                "Careful",
                day.hazards().stream()
                        .map(code -> HazardCodes.title(code).orElse(code))
                        .toList());
        list("Due to arrive", day.deliveries().stream().map(names::material).toList());
        list("To order", day.orders().stream().map(names::material).toList());
        day.episode().ifPresent(id -> sheet.under("Slot: " + names.episode(id)));
    }

    private void list(String head, List<String> words) {
        if (!words.isEmpty()) {
            sheet.under(head + ": " + words.stream().collect(Collectors.joining("; ")));
        }
    }

    private String doing(WeekPlan.Line line) {
        String what = line.task()
                .map(names::task)
                .or(() -> line.episode().map(names::episode))
                .orElse("");
        String kind = line.kind().equals("work") && !what.isEmpty() ? "" : line.kind();
        String words =
                List.of(kind, what).stream().filter(word -> !word.isEmpty()).collect(Collectors.joining(" "));
        String hours = line.hours().minutes() == 0
                ? ""
                : ", " + Formats.hoursShort(line.hours().minutes());
        return words + hours + (line.text().isEmpty() ? "" : " (" + line.text() + ")");
    }
}
