package weekwright.build;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problems;

/** What must hold for hours that somebody worked, and for the lines of the week sheet. */
public final class HoursRules {
    /** A day has no more. */
    public static final int MINUTES_A_DAY = 24 * 60;

    private HoursRules() {}

    public static void check(HoursEntry entry, Problems problems) {
        if (entry.task().isPresent() && entry.episode().isPresent()) {
            oneOf(entry.episode().get(), entry.task().get(), problems);
        }
        boolean counted = entry.pieces().orElse(0) > 0 || entry.spoiled().orElse(0) > 0;
        if (counted && (entry.task().isEmpty() || entry.asOrDefault() != HoursEntry.As.HANDS)) {
            problems.remark(
                    entry.pieces().orElse(0) > 0 ? "pieces" : "spoiled",
                    String.valueOf(
                            entry.pieces().orElse(0) > 0
                                    ? entry.pieces().get()
                                    : entry.spoiled().get()),
                    "pieces count only for hands on a task",
                    "name the task, and as hands");
        }
    }

    public static void check(WeekLine line, Problems problems) {
        if (line.task().isPresent() && line.episode().isPresent()) {
            oneOf(line.episode().get(), line.task().get(), problems);
        }
        if (line.from().isPresent()
                && line.to().isPresent()
                && !line.to().get().isAfter(line.from().get())) {
            problems.fault(
                    "to",
                    line.to().get().toString(),
                    "is not after from " + line.from().get(),
                    "write a later time of the same day");
        }
    }

    private static void oneOf(Id episode, Id task, Problems problems) {
        problems.fault(
                "episode",
                episode.value(),
                "is named beside the task " + task,
                "name one of the two, and write two rows");
    }

    /** Hours can be logged up to today in the project's zone. For forms: in a file, later facts are ignored (rule 1). */
    public static void notAfter(LocalDate today, HoursEntry entry, Problems problems) {
        if (entry.date().isAfter(today)) {
            problems.fault(
                    "date", entry.date().toString(), "is still to come", "write " + today + " or an earlier day");
        }
    }

    /** Minutes of these entries together. */
    public static int minutes(List<HoursEntry> entries) {
        return entries.stream().mapToInt(entry -> entry.hours().minutes()).reduce(0, Math::addExact);
    }

    /**
     * A person's day has 24 hours. The problem is told at the last entry, with the sum and all entries.
     *
     * @param ofTheDay all entries of one person on one date, the one that is being checked last
     */
    public static void dayTotal(List<HoursEntry> ofTheDay, Problems problems) {
        int sum = minutes(ofTheDay);
        if (sum <= MINUTES_A_DAY) {
            return;
        }
        HoursEntry last = ofTheDay.get(ofTheDay.size() - 1);
        problems.fault(
                "hours",
                last.hours().text(),
                "makes " + Said.hours(new Hours(sum)) + " of " + last.crew() + " on " + last.date() + " ("
                        + ofTheDay.stream()
                                .map(e -> e.id() + " " + e.hours().text())
                                .collect(Collectors.joining(", "))
                        + "), and a day has 24",
                "correct one of them");
    }

    /** More hours than the person's stated hours of that day are odd but possible (rule 105). */
    public static void overStated(List<HoursEntry> ofTheDay, Hours stated, Problems problems) {
        int sum = minutes(ofTheDay);
        if (sum > stated.minutes() && sum <= MINUTES_A_DAY) {
            HoursEntry last = ofTheDay.get(ofTheDay.size() - 1);
            problems.remark(
                    "hours",
                    last.hours().text(),
                    "makes " + Said.hours(new Hours(sum)) + " of " + last.crew() + " on " + last.date()
                            + ", whose stated hours that day are " + stated.text(),
                    "");
        }
    }

    /**
     * A line of a file must not put a person to hazards that are not for them (rule 125), where it is still to come.
     *
     * @param hazards those of the line's task and its equipment
     */
    public static void keptOff(CrewMember person, Collection<String> hazards, Problems problems) {
        if (HazardCodes.keptOff(person, hazards)) {
            problems.fault(
                    "crew",
                    person.id().value(),
                    "is kept off " + String.join(" ", hazards),
                    "name somebody else, or strike it out of not_for");
        }
    }
}
