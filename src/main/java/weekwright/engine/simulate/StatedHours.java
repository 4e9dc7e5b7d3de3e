package weekwright.engine.simulate;

import java.util.List;
import weekwright.engine.Inputs;

/** How many minutes people have said they are there (rule 3). */
public final class StatedHours {
    private StatedHours() {}

    /**
     * Stated minutes of a person on a date (rule 3): the season's weekday hours replace the usual ones, the last {@code from}
     * wins; a day-off row of the person replaces the hours, one of several days only on days worked anyway; a row for
     * everyone is a ceiling; among equals the later row wins.
     */
    public static int minutes(
            List<Inputs.CrewHours> crewHours, List<Inputs.DaysOff> daysOff, Inputs.Crew person, int date) {
        if (!within(date, person.from(), person.to())) {
            return 0;
        }
        int weekday = Math.floorMod(date + 3, 7);
        int m = weekdayMinutes(person.weekdayMinutes(), weekday);
        int bestFrom = Integer.MIN_VALUE;
        for (Inputs.CrewHours row : crewHours) {
            if (row.crew().equals(person.id()) && within(date, row.from(), row.to()) && row.from() >= bestFrom) {
                bestFrom = row.from();
                m = weekdayMinutes(row.weekdayMinutes(), weekday);
            }
        }
        int usual = m;
        int ceiling = Integer.MAX_VALUE;
        for (Inputs.DaysOff row : daysOff) {
            if (within(date, row.from(), row.to())) {
                if (row.crew().isEmpty()) {
                    ceiling = row.minutes();
                } else if (row.crew().equals(person.id()) && (usual > 0 || row.from() == row.to())) {
                    m = row.minutes();
                }
            }
        }
        return Math.min(m, ceiling);
    }

    private static int weekdayMinutes(List<Integer> week, int weekday) {
        return weekday < week.size() ? week.get(weekday) : 0;
    }

    /** Whether a date lies in from-to, both included, {@link Inputs#NONE} for no bound. */
    static boolean within(int date, int from, int to) {
        return (from == Inputs.NONE || date >= from) && (to == Inputs.NONE || date <= to);
    }
}
