package weekwright.forecast;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.build.HoursEntry;
import weekwright.build.Stopped;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.StatedHours;

/**
 * What each person's past weeks say of turning out (rule 120): hours logged on tasks and episodes, and hours stopped for what the
 * simulation has itself, divided by stated hours; of the last 52 whole weeks those in which somebody logged anything. Pure.
 */
final class TurnoutInputs {
    private static final int WEEKS = 52;
    private static final double MOST = 1.5;
    /** The simulation loses these hours by itself. */
    private static final Set<Stopped.Reason> SIMULATED =
            EnumSet.of(Stopped.Reason.WEATHER, Stopped.Reason.MATERIAL, Stopped.Reason.MACHINE, Stopped.Reason.COMPANY);

    private final Facts facts;
    private final List<Inputs.Crew> crew;
    private final List<Inputs.CrewHours> crewHours;
    private final List<Inputs.DaysOff> daysOff;

    TurnoutInputs(Facts facts, CrewInputs crew) {
        this.facts = facts;
        this.crew = crew.crew();
        crewHours = crew.crewHours();
        daysOff = crew.daysOff();
    }

    List<Inputs.Turnout> weeks() {
        LocalDate end = facts.asOf().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        LocalDate start = end.minusWeeks(WEEKS);
        Map<String, Integer> minutes = new HashMap<>();
        Set<String> loggedEver = new HashSet<>();
        Set<LocalDate> told = new HashSet<>();
        for (HoursEntry entry : facts.hours()) {
            if (entry.date().isBefore(start) || !entry.date().isBefore(end)) {
                continue;
            }
            LocalDate week = entry.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            told.add(week);
            if (entry.task().isPresent() || entry.episode().isPresent()) {
                String person = facts.id("crew", entry.crew());
                loggedEver.add(person);
                minutes.merge(person + " " + week, entry.hours().minutes(), Integer::sum);
            }
        }
        for (Stopped row : facts.stopped()) {
            if (!row.date().isBefore(start) && row.date().isBefore(end) && SIMULATED.contains(row.reason())) {
                LocalDate week = row.date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
                for (Inputs.Crew person : crew) {
                    String of = facts.id("crew", row.crew());
                    if (of.isEmpty() || of.equals(person.id())) {
                        minutes.merge(person.id() + " " + week, stopped(row, person), Integer::sum);
                    }
                }
            }
        }
        List<Inputs.Turnout> found = new ArrayList<>();
        for (Inputs.Crew person : crew) {
            List<Double> weeks = new ArrayList<>();
            for (LocalDate week = start; week.isBefore(end); week = week.plusWeeks(1)) {
                int stated = told.contains(week) ? stated(person, week) : 0;
                if (stated > 0) {
                    int given = minutes.getOrDefault(person.id() + " " + week, 0);
                    weeks.add(Math.min(MOST, (double) given / stated));
                }
            }
            if (loggedEver.contains(person.id())) {
                found.add(new Inputs.Turnout(person.id(), weeks));
            }
        }
        return found;
    }

    private int stated(Inputs.Crew person, LocalDate week) {
        int minutes = 0;
        for (int day = 0; day < 7; day++) {
            minutes += minutes(person, week.plusDays(day));
        }
        return minutes;
    }

    /** Without hours the whole of the person's day was lost. */
    private int stopped(Stopped row, Inputs.Crew person) {
        return row.hours().map(hours -> hours.minutes()).orElseGet(() -> minutes(person, row.date()));
    }

    private int minutes(Inputs.Crew person, LocalDate date) {
        return StatedHours.minutes(crewHours, daysOff, person, Facts.day(date));
    }
}
