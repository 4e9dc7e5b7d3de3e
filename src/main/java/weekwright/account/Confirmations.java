package weekwright.account;

import java.time.Duration;
import java.util.Map;
import java.util.function.LongSupplier;

/**
 * At which browsers the passphrase was typed within the last ten minutes (OWASP ASVS 5.0.0, 7.5.1): what opens a door for others
 * asks for it again. Kept in memory alone, so that a start forgets it. Safe for use from several threads.
 */
final class Confirmations {
    private static final Duration HOLDS = Duration.ofMinutes(10);
    private static final int REMEMBERED = 2_000;

    private final LongSupplier nanos;
    private final Map<String, Long> since = new Remembered<>(REMEMBERED);

    Confirmations(LongSupplier nanos) {
        this.nanos = nanos;
    }

    synchronized void confirm(String tokenSha256) {
        since.put(tokenSha256, nanos.getAsLong());
    }

    synchronized boolean holds(String tokenSha256) {
        Long then = since.get(tokenSha256);
        return then != null && nanos.getAsLong() - then < HOLDS.toNanos();
    }
}
