package weekwright.testkit;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.concurrent.atomic.AtomicLong;

/** A clock that stands until time passes or somebody sets it. */
public final class SettableClock extends Clock {
    private final ZoneId zone;
    private volatile Instant now;
    private final AtomicLong passed = new AtomicLong();

    public SettableClock(Clock start) {
        now = start.instant();
        zone = start.getZone();
    }

    /** So much time passes. */
    public void step(Duration by) {
        now = now.plus(by);
        passed.addAndGet(by.toNanos());
    }

    /** It is put forward or back by so much while no time passes. */
    public void set(Duration by) {
        now = now.plus(by);
    }

    /** The time that has passed, whatever the clock was set to. */
    public long nanos() {
        return passed.get();
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
