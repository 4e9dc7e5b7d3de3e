package weekwright.web.log;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import weekwright.base.Codec;
import weekwright.base.Refused;
import weekwright.build.CrewMember;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.db.Stored;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** What each person logged in a week, by day, with sums. A helper sees their own line alone. */
public final class LogWeekPage implements Page {
    private static final int DAYS = 7;

    /**
     * @param days from Monday on
     * @param rows a person a row
     * @param sum of all rows; empty where nobody logged anything
     * @param later whether the week after has begun
     * @param byWeek this week and those before it
     */
    public record View(
            String head,
            List<LocalDate> days,
            List<Row> rows,
            Optional<Row> sum,
            List<Line> lines,
            LocalDate before,
            LocalDate after,
            boolean later,
            HoursByWeek byWeek) {}

    /**
     * One person's hours.
     *
     * @param minutes of each day, 0 where nothing was logged; hours of unnamed others are not among them
     */
    public record Row(String name, List<Integer> minutes, int sum) {}

    /** An entry, with where it is changed. */
    public record Line(LocalDate day, String who, String what, int minutes, String link) {}

    @Override
    public View show(Request request) {
        LocalDate monday = day(request).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        List<LocalDate> days =
                IntStream.range(0, DAYS).mapToObj(monday::plusDays).toList();
        return request.read(read -> {
            List<Stored<HoursEntry>> entries = HoursEntryStore.between(read, monday, days.get(DAYS - 1));
            List<Row> rows = new ArrayList<>();
            List<Line> lines = new ArrayList<>();
            for (CrewMember person : LogPage.people(request)) {
                List<Stored<HoursEntry>> own = entries.stream()
                        .filter(entry -> entry.value().crew().same(person.id()))
                        .toList();
                List<Integer> minutes =
                        days.stream().map(day -> minutes(own, day)).toList();
                rows.add(new Row(person.name(), minutes, sum(minutes)));
                own.forEach(entry -> lines.add(new Line(
                        entry.value().date(),
                        person.name(),
                        LogDay.what(read, entry.value()),
                        entry.value().hours().minutes(),
                        "/log/entries/" + entry.row() + "/edit")));
            }
            lines.sort(Comparator.comparing(Line::day));
            List<Integer> all = IntStream.range(0, DAYS)
                    .mapToObj(i ->
                            rows.stream().mapToInt(row -> row.minutes().get(i)).sum())
                    .toList();
            return new View(
                    "Logged from " + Formats.dayMonthLong(monday) + " to " + Formats.dayMonthLong(days.get(DAYS - 1)),
                    days,
                    rows,
                    Optional.of(new Row("Together", all, sum(all))).filter(row -> row.sum() > 0),
                    lines,
                    monday.minusWeeks(1),
                    monday.plusWeeks(1),
                    !monday.plusWeeks(1).isAfter(request.today()),
                    HoursByWeek.until(read, monday, LogPage.people(request)));
        });
    }

    private static int sum(List<Integer> minutes) {
        return minutes.stream().mapToInt(Integer::intValue).sum();
    }

    private static int minutes(List<Stored<HoursEntry>> entries, LocalDate day) {
        return entries.stream()
                .filter(entry -> entry.value().date().equals(day))
                .mapToInt(entry -> entry.value().hours().minutes())
                .sum();
    }

    /** A day of the week asked for; today where none is, or where it is no day. */
    private static LocalDate day(Request request) {
        String text = request.query("of");
        try {
            return text.isEmpty()
                    ? request.today()
                    : Codec.of(LocalDate.class).parse(text, request.settings().typed());
        } catch (Refused refused) {
            return request.today();
        }
    }
}
