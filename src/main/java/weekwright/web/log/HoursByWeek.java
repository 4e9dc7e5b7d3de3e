package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.build.CrewHours;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMember;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.SettingsStore;
import weekwright.build.StatedHours;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.chart.Tally;

/**
 * Hours logged by week and person against those stated, a tally each; all tallies share one scale.
 *
 * @param people in the order of the cells
 * @param weeks the latest first
 */
public record HoursByWeek(List<String> people, List<Week> weeks) {
    private static final int WEEKS = 8;
    private static final int DAYS = 7;

    public HoursByWeek {
        people = List.copyOf(people);
        weeks = List.copyOf(weeks);
    }

    /** A week from its Monday on. */
    public record Week(LocalDate monday, List<Cell> cells) {}

    /**
     * What one person logged in a week.
     *
     * @param stated minutes that were stated for it
     * @param tally the drawing
     */
    public record Cell(int logged, int stated, String tally) {}

    private record Figures(int logged, int stated) {}

    /** The eight weeks up to this one. */
    static HoursByWeek until(Read read, LocalDate monday, List<CrewMember> people) {
        LocalDate first = monday.minusWeeks(WEEKS - 1L);
        List<Stored<HoursEntry>> entries = HoursEntryStore.between(read, first, monday.plusDays(DAYS - 1L));
        List<CrewHours> seasons = CrewHoursStore.TABLE.values(read);
        List<DaysOff> off = DaysOffStore.TABLE.values(read);
        LocalDate started = SettingsStore.get(read).project().started();
        List<List<Figures>> figures = new ArrayList<>();
        int most = 0;
        for (LocalDate week = monday; !week.isBefore(first); week = week.minusWeeks(1)) {
            List<Figures> row = new ArrayList<>();
            for (CrewMember person : people) {
                Figures one = figures(entries, week, person, seasons, off, started);
                most = Math.max(most, Math.max(one.logged(), one.stated()));
                row.add(one);
            }
            figures.add(row);
        }
        List<Week> weeks = new ArrayList<>();
        for (List<Figures> row : figures) {
            List<Cell> cells = new ArrayList<>();
            for (Figures one : row) {
                cells.add(new Cell(one.logged(), one.stated(), Tally.of(one.stated(), one.logged(), 0, most)));
            }
            weeks.add(new Week(monday.minusWeeks(weeks.size()), cells));
        }
        return new HoursByWeek(people.stream().map(CrewMember::name).toList(), weeks);
    }

    private static Figures figures(
            List<Stored<HoursEntry>> entries,
            LocalDate monday,
            CrewMember person,
            List<CrewHours> seasons,
            List<DaysOff> off,
            LocalDate started) {
        int logged = entries.stream()
                .map(Stored::value)
                .filter(entry -> entry.crew().same(person.id())
                        && !entry.date().isBefore(monday)
                        && entry.date().isBefore(monday.plusDays(DAYS)))
                .mapToInt(entry -> entry.hours().minutes())
                .sum();
        int stated = 0;
        for (int i = 0; i < DAYS; i++) {
            LocalDate day = monday.plusDays(i);
            // before the build's first day nothing is logged, so nothing was stated for it
            stated += day.isBefore(started)
                    ? 0
                    : StatedHours.on(day, person, seasons, off).minutes();
        }
        return new Figures(logged, stated);
    }
}
