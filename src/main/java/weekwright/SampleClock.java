package weekwright;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;

/**
 * The clock under which the sample is served: the day of starting counts as {@link #DAY}, the time of day stays, and later
 * days follow as they do (rule 109: no date of the sample is ever moved).
 */
public final class SampleClock extends Clock {
    /** The day on which the sample stands. */
    public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private final Clock real;
    private final long days;

    private SampleClock(Clock real, long days) {
        this.real = real;
        this.days = days;
    }

    /** @param real in the zone in which the day of starting is meant */
    public static SampleClock startingNow(Clock real) {
        return new SampleClock(real, ChronoUnit.DAYS.between(LocalDate.now(real), DAY));
    }

    @Override
    public Instant instant() {
        return ZonedDateTime.now(real).plusDays(days).toInstant();
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new SampleClock(real.withZone(zone), days);
    }
}
