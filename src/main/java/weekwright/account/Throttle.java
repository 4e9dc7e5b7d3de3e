package weekwright.account;

import java.time.Duration;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * How often somebody may try a passphrase (OWASP ASVS 5.0.0, 6.1.1 and 6.3.1). After five wrong ones for one name from one
 * address the next waits a second, then two, four … at most 900; after twenty wrong ones from one address, whatever the
 * name, that address waits the same way. So nobody elsewhere can lock a person out. Forgotten after an hour, or when 2,000
 * others came since. Time is what passes, not what a clock is set to. Safe for use from several threads.
 */
public final class Throttle {
    private static final int NAME_FREE = 5;
    private static final int ADDRESS_FREE = 20;
    private static final int REMEMBERED = 2_000;
    private static final Duration LONGEST = Duration.ofSeconds(900);
    private static final Duration FORGOTTEN = Duration.ofHours(1);

    private final LongSupplier nanos;
    private final Map<String, Tries> names = new Remembered<>(REMEMBERED);
    private final Map<String, Tries> addresses = new Remembered<>(REMEMBERED);

    /** Both in nanoseconds of the counter; only their differences mean something. */
    private record Tries(int wrong, long last, long until) {}

    /** @param nanos a counter that nobody sets, such as {@link System#nanoTime} */
    public Throttle(LongSupplier nanos) {
        this.nanos = nanos;
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
        addresses.computeIfPresent(address, (key, tries) -> new Tries(tries.wrong() - 1, tries.last(), tries.last()));
    }

    private void count(Map<String, Tries> tries, String key, int free) {
        long now = nanos.getAsLong();
        Tries before = tries.get(key);
        int wrong = before == null || now - before.last() > FORGOTTEN.toNanos() ? 1 : before.wrong() + 1;
        long seconds = wrong < free ? 0 : Math.min(LONGEST.toSeconds(), 1L << Math.min(20, wrong - free));
        tries.put(key, new Tries(wrong, now, now + Duration.ofSeconds(seconds).toNanos()));
    }

    private Duration left(Tries tries) {
        return tries == null ? Duration.ZERO : Duration.ofNanos(Math.max(0, tries.until() - nanos.getAsLong()));
    }
}
