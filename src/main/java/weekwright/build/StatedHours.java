package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import weekwright.base.DayRange;
import weekwright.base.Hours;

/**
 * Hours of a person on a day, by rule 3: other hours for a season or a job (the one with the last {@code from}) replace
 * the weekday's; a day off of the person replaces both, one of several days only on days that have hours anyway; a day
 * off of everyone is a ceiling. Among equals the later row wins.
 */
public final class StatedHours {
    private StatedHours() {}

    public static Hours on(LocalDate day, CrewMember member, List<CrewHours> seasons, List<DaysOff> daysOff) {
        if (!new DayRange(member.from(), member.to()).holds(day)) {
            return Hours.ZERO;
        }
        Hours hours = member.on(day.getDayOfWeek());
        LocalDate last = LocalDate.MIN;
        for (CrewHours season : seasons) {
            LocalDate from = season.from().orElse(LocalDate.MIN);
            boolean holds = new DayRange(season.from(), season.to()).holds(day)
                    && season.crew().same(member.id());
            if (holds && !from.isBefore(last)) {
                hours = season.on(day.getDayOfWeek());
                last = from;
            }
        }
        Hours own = hours;
        for (DaysOff off : daysOff) {
            boolean mine = holds(off, day)
                    && off.crew().map(id -> id.same(member.id())).orElse(false);
            if (mine && (own.minutes() > 0 || off.from().equals(off.to()))) {
                hours = off.hours().orElse(Hours.ZERO);
            }
        }
        for (DaysOff off : daysOff) {
            if (off.crew().isEmpty() && holds(off, day)) {
                Hours ceiling = off.hours().orElse(Hours.ZERO);
                hours = hours.compareTo(ceiling) > 0 ? ceiling : hours;
            }
        }
        return hours;
    }

    private static boolean holds(DaysOff off, LocalDate day) {
        return !day.isBefore(off.from()) && !day.isAfter(off.to());
    }
}
