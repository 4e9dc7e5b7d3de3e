package weekwright.testkit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** A clock that stands until it is stepped on. */
public final class SettableClock extends Clock {
    private final ZoneId zone;
    private volatile Instant now;

    public SettableClock(Clock start) {
        now = start.instant();
        zone = start.getZone();
    }

    public void step(Duration by) {
        now = now.plus(by);
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        Clock here = this;
        return new Clock() {
            @Override
            public ZoneId getZone() {
                return other;
            }

            @Override
            public Clock withZone(ZoneId another) {
                return here.withZone(another);
            }

            @Override
            public Instant instant() {
                return here.instant();
            }
        };
    }

    @Override
    public Instant instant() {
        return now;
    }
}
