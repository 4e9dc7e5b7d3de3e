package weekwright.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How often somebody may try a passphrase (OWASP ASVS 5.0.0, 6.1.1 and 6.3.1). After five wrong ones for one name from one
 * address the next waits a second, then two, four … at most 900; after twenty wrong ones from one address, whatever the
 * name, that address waits the same way. So nobody elsewhere can lock a person out. Forgotten after an hour, or when 2,000
 * others came since. Safe for use from several threads.
 */
public final class Throttle {
    private static final int NAME_FREE = 5;
    private static final int ADDRESS_FREE = 20;
    private static final int REMEMBERED = 2_000;
    private static final Duration LONGEST = Duration.ofSeconds(900);
    private static final Duration FORGOTTEN = Duration.ofHours(1);

    private final Clock clock;
    private final Map<String, Tries> names = bounded();
    private final Map<String, Tries> addresses = bounded();

    private record Tries(int wrong, Instant last, Instant until) {}

    public Throttle(Clock clock) {
        this.clock = clock;
    }

    /**
     * Asks to try this name from this address, and counts the try as wrong until {@link #right} is told.
     *
     * @return how long to wait first; zero when it may be tried now
     */
    public synchronized Duration ask(String name, String address) {
        Duration one = left(names.get(name + "\n" + address));
        Duration other = left(addresses.get(address));
        Duration wait = one.compareTo(other) > 0 ? one : other;
        if (wait.isZero()) {
            count(names, name + "\n" + address, NAME_FREE);
            count(addresses, address, ADDRESS_FREE);
        }
        return wait;
    }

    /** The right one was typed: the name is free again from this address, and the address has one try back. */
    public synchronized void right(String name, String address) {
        names.remove(name + "\n" + address);
        addresses.computeIfPresent(address, (key, tries) -> new Tries(tries.wrong() - 1, tries.last(), Instant.MIN));
    }

    private void count(Map<String, Tries> tries, String key, int free) {
        Instant now = clock.instant();
        Tries before = tries.get(key);
        int wrong = before == null || before.last().plus(FORGOTTEN).isBefore(now) ? 1 : before.wrong() + 1;
        long seconds = wrong < free ? 0 : Math.min(LONGEST.toSeconds(), 1L << Math.min(20, wrong - free));
        tries.put(key, new Tries(wrong, now, now.plusSeconds(seconds)));
    }

    /** Never longer than the longest wait, should the clock be put back. */
    private Duration left(Tries tries) {
        if (tries == null) {
            return Duration.ZERO;
        }
        if (!tries.until().isAfter(clock.instant())) {
            return Duration.ZERO;
        }
        Duration left = Duration.between(clock.instant(), tries.until());
        return left.compareTo(LONGEST) > 0 ? LONGEST : left;
    }

    private static Map<String, Tries> bounded() {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Tries> eldest) {
                return size() > REMEMBERED;
            }
        };
    }
}
