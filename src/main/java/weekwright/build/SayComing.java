package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * A person says for a day whether they come. It is kept as a day off of one day, whose hours the forecast knows: none for
 * "cannot come", the stated ones for "come", or six where none are stated (common practice, no source). A later answer for
 * the day takes the place of the earlier one.
 */
public final class SayComing {
    /** Days ahead for which one can answer, today's included. */
    public static final int DAYS = 14;

    private static final String COMES = "Says: I come";
    private static final String CANNOT = "Says: I can't";
    private static final Hours WITHOUT_STATED = new Hours(6 * 60);

    private SayComing() {}

    /**
     * Keeps the answer.
     *
     * @param today in the project's zone
     */
    public static void say(Write write, CrewMember member, LocalDate day, boolean comes, LocalDate today)
            throws Rejected, Stale {
        Problems problems = new Problems();
        if (day.isBefore(today) || !day.isBefore(today.plusDays(DAYS))) {
            problems.fault(
                    "date", Said.day(day), "is no day to answer for", "answer for one of the next " + DAYS + " days");
        }
        Faults.refuse(problems);
        List<DaysOff> others = new ArrayList<>();
        for (Stored<DaysOff> row : DaysOffStore.TABLE.list(write)) {
            if (isAnswer(row.value(), member.id(), day)) {
                DaysOffStore.TABLE.delete(write, row.row(), row.version());
            } else {
                others.add(row.value());
            }
        }
        Hours stated = StatedHours.on(day, member, CrewHoursStore.TABLE.values(write), others);
        Hours hours = !comes ? Hours.ZERO : stated.minutes() > 0 ? stated : WITHOUT_STATED;
        SaveDaysOff.save(
                write,
                Optional.empty(),
                new DaysOff(Optional.of(member.id()), day, day, Optional.of(hours), comes ? COMES : CANNOT));
    }

    /** What a person has said of a day; empty for nothing yet. */
    public static Optional<Boolean> said(List<DaysOff> daysOff, Id crew, LocalDate day) {
        return daysOff.stream()
                .filter(row -> isAnswer(row, crew, day))
                .map(row -> row.reason().equals(COMES))
                .reduce((earlier, later) -> later);
    }

    private static boolean isAnswer(DaysOff row, Id crew, LocalDate day) {
        return row.from().equals(day)
                && row.to().equals(day)
                && row.crew().map(id -> id.same(crew)).orElse(false)
                && (row.reason().equals(COMES) || row.reason().equals(CANNOT));
    }
}
