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

    /** The zone of the sample, in which its days begin; a test holds it to the sample's own. */
    public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");

    private final Clock real;
    private final long days;

    private SampleClock(Clock real, long days) {
        this.real = real;
        this.days = days;
    }

    /** @param real in any zone: the day of starting is that of the sample's zone, as all days of a project are */
    public static SampleClock startingNow(Clock real) {
        return new SampleClock(real, ChronoUnit.DAYS.between(LocalDate.now(real.withZone(ZONE)), DAY));
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
