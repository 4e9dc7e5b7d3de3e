package weekwright.web.crew;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.build.CrewHours;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.Gathering;
import weekwright.build.GatheringStore;
import weekwright.build.Stopped;
import weekwright.build.StoppedStore;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The days that are not like the others: off, with other hours, with many hands, and those on which nothing was done. */
public final class CrewDaysPage implements Page {
    public record View(List<Line> off, List<Line> hours, List<Line> gatherings, List<Line> stopped) {}

    /**
     * A row.
     *
     * @param when a day or from one to another
     * @param what who, how long, how many
     * @param why the reason or the note
     */
    public record Line(long row, LocalDate first, String when, String what, String why, boolean past) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        Map<String, String> reasons = new HashMap<>();
        for (Form.Choice choice : RowKinds.lists(request).reasons()) {
            reasons.put(choice.value(), choice.label());
        }
        return request.read(read -> {
            Map<String, String> names = new HashMap<>();
            CrewMemberStore.TABLE
                    .values(read)
                    .forEach(member -> names.put(member.id().folded(), member.name()));
            return new View(
                    newest(DaysOffStore.TABLE.list(read).stream()
                            .map(row -> off(row, names, formats))
                            .toList()),
                    newest(CrewHoursStore.TABLE.list(read).stream()
                            .map(row -> hours(row, names, formats))
                            .toList()),
                    newest(GatheringStore.TABLE.list(read).stream()
                            .map(row -> gathering(row, formats))
                            .toList()),
                    newest(StoppedStore.TABLE.list(read).stream()
                            .map(row -> stopped(read, row, names, reasons, formats))
                            .toList()));
        });
    }

    private static List<Line> newest(List<Line> lines) {
        return lines.stream()
                .sorted(Comparator.comparing(Line::first).reversed())
                .toList();
    }

    private static String who(Optional<Id> crew, Map<String, String> names) {
        return crew.map(id -> names.getOrDefault(id.folded(), id.value())).orElse("Everybody");
    }

    private static String days(LocalDate from, LocalDate to, Formats formats) {
        return from.equals(to) ? formats.dateShort(from) : formats.dateShort(from) + " to " + formats.dateShort(to);
    }

    private static Line off(Stored<DaysOff> row, Map<String, String> names, Formats formats) {
        DaysOff off = row.value();
        String hours = off.hours()
                .filter(time -> time.minutes() > 0)
                .map(time -> Formats.hoursLong(time.minutes()) + " a day")
                .orElse("away");
        return new Line(
                row.row(),
                off.from(),
                days(off.from(), off.to(), formats),
                who(off.crew(), names) + ", " + hours,
                off.reason(),
                off.to().isBefore(formats.today()));
    }

    private static Line hours(Stored<CrewHours> row, Map<String, String> names, Formats formats) {
        CrewHours hours = row.value();
        int week = 0;
        List<String> days = new ArrayList<>();
        for (DayOfWeek day : DayOfWeek.values()) {
            int minutes = hours.on(day).minutes();
            week += minutes;
            if (minutes > 0) {
                days.add(Formats.weekdayShort(LocalDate.of(2024, 1, day.getValue())) + " " + Formats.hours(minutes));
            }
        }
        String from = hours.from().map(day -> "from " + formats.dateShort(day)).orElse("");
        String to = hours.to().map(day -> "to " + formats.dateShort(day)).orElse("");
        return new Line(
                row.row(),
                hours.from().orElse(LocalDate.MIN),
                (from + " " + to).strip(),
                who(Optional.of(hours.crew()), names) + ", " + Formats.hoursLong(week) + " a week",
                String.join(", ", days),
                hours.to().map(day -> day.isBefore(formats.today())).orElse(false));
    }

    private static Line gathering(Stored<Gathering> row, Formats formats) {
        Gathering one = row.value();
        String come = one.comeShare()
                .map(share -> ", of whom "
                        + share.value().movePointRight(2).stripTrailingZeros().toPlainString() + " % come")
                .orElse("");
        return new Line(
                row.row(),
                one.date(),
                formats.dateShort(one.date()),
                Formats.count(one.hands(), "helper") + come + ", "
                        + Formats.hoursLong(one.hours().minutes()) + " each",
                one.note(),
                one.date().isBefore(formats.today()));
    }

    private static Line stopped(
            Read read, Stored<Stopped> row, Map<String, String> names, Map<String, String> reasons, Formats formats) {
        Stopped one = row.value();
        String task = one.task()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .map(stored -> ", " + stored.value().title())
                .orElse("");
        return new Line(
                row.row(),
                one.date(),
                formats.dateShort(one.date()),
                who(one.crew(), names) + ", "
                        + one.hours()
                                .map(Hours::minutes)
                                .map(Formats::hoursLong)
                                .orElse("the whole day"),
                reasons.get(Codec.word(one.reason())) + task + (one.note().isEmpty() ? "" : ". " + one.note()),
                false);
    }
}
