package weekwright.files.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/**
 * Something that stands in a calendar.
 *
 * @param uid the same for the same thing as long as it lives, unique within the project
 * @param day on which it is; the day in the project's zone
 * @param start the instant at which it begins; empty for the whole day
 * @param end the instant at which it ends, after the start; empty for a moment or the whole day
 * @param description lines of text; empty for none
 */
public record CalendarEntry(
        String uid, LocalDate day, Optional<Instant> start, Optional<Instant> end, String summary, String description) {
    public CalendarEntry {
        if (end.isPresent() && !start.map(begin -> end.get().isAfter(begin)).orElse(false)) {
            throw new IllegalArgumentException("entry " + uid + " ends before it begins");
        }
    }

    /** For the whole day. */
    public static CalendarEntry day(String uid, LocalDate day, String summary, String description) {
        return new CalendarEntry(uid, day, Optional.empty(), Optional.empty(), summary, description);
    }

    /**
     * At a time of the clock. A time that the clock leaves out in spring is as much later as it leaves out; of a time that
     * comes twice in autumn the first is meant.
     *
     * @param to left out where it is not after the start
     */
    public static CalendarEntry at(
            String uid,
            LocalDate day,
            LocalTime from,
            Optional<LocalTime> to,
            ZoneId zone,
            String summary,
            String description) {
        Instant start = LocalDateTime.of(day, from).atZone(zone).toInstant();
        Optional<Instant> end = to.map(
                        time -> LocalDateTime.of(day, time).atZone(zone).toInstant())
                .filter(time -> time.isAfter(start));
        return new CalendarEntry(uid, day, Optional.of(start), end, summary, description);
    }
}
