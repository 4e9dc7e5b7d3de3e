package weekwright.account;

import java.time.Duration;
import java.time.Instant;
import weekwright.base.Id;

/**
 * One browser at which somebody is logged in.
 *
 * @param tokenSha256 hash of the secret in the browser's cookie
 * @param browser what it calls itself, at most 200 letters
 */
public record Session(String tokenSha256, Id crew, Instant since, Instant lastSeen, String browser) {
    /** It ends when it was not used for so long. NIST SP 800-63B allows longer; from memory. */
    public static final Duration IDLE = Duration.ofDays(14);
    /** It ends so long after the log-in. NIST SP 800-63B, AAL1: reauthentication every 30 days; from memory. */
    public static final Duration WHOLE = Duration.ofDays(30);

    private static final Duration SEEN_AGAIN = Duration.ofMinutes(10);

    public boolean alive(Instant now) {
        return now.isBefore(lastSeen.plus(IDLE)) && now.isBefore(since.plus(WHOLE));
    }

    /** Whether its use is to be written down again. */
    public boolean stale(Instant now) {
        return !now.isBefore(lastSeen.plus(SEEN_AGAIN));
    }

    /** Names it in a list; tells nothing of the secret. */
    public String mark() {
        return tokenSha256.substring(0, 16);
    }
}
