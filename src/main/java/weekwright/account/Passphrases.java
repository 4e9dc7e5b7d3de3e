package weekwright.account;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hashes passphrases with Argon2id and compares them. The stored text carries its own parameters:
 * {@code $argon2id$v=19$m=19456,t=2,p=1$salt$tag}. A passphrase is taken as typed, after Unicode normalisation to NFC, so that
 * every keyboard writes the same. Safe for use from several threads; one hash is made at a time,
 * so that a crowd at the door leaves a core to those who are in.
 */
public final class Passphrases {
    private static final int TAG = 32;
    private static final int SALT = 16;
    private static final Pattern STORED =
            Pattern.compile("\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})\\$([^$]+)\\$([^$]+)");

    private final Argon2Function argon2;
    private final SecureRandom random = new SecureRandom();
    private final Semaphore atOnce = new Semaphore(1, true);
    private final String nobodys;

    /** @param kibibytes of memory for each hash */
    public Passphrases(int kibibytes, int passes) {
        argon2 = function(kibibytes, passes, 1, TAG);
        nobodys = hash("nobody has this one");
    }

    /** 19 MiB, two passes, one lane: OWASP Password Storage Cheat Sheet, its first choice of the lesser memory. */
    public static Passphrases ofFullCost() {
        return new Passphrases(19_456, 2);
    }

    /** The text to store. */
    public String hash(String passphrase) {
        byte[] salt = new byte[SALT];
        random.nextBytes(salt);
        return "$argon2id$v=19$m=" + argon2.getMemory() + ",t=" + argon2.getIterations() + ",p="
                + argon2.getParallelism() + "$" + base64(salt) + "$" + base64(tag(argon2, passphrase, salt));
    }

    /** Whether it is the passphrase; without a stored text the same work is done and it is not. */
    public boolean matches(String passphrase, Optional<String> stored) {
        Matcher parts = STORED.matcher(stored.orElse(nobodys));
        if (!parts.matches()) {
            throw new IllegalStateException("a stored passphrase cannot be read");
        }
        byte[] tag = Base64.getDecoder().decode(parts.group(5));
        Argon2Function then = function(
                Integer.parseInt(parts.group(1)),
                Integer.parseInt(parts.group(2)),
                Integer.parseInt(parts.group(3)),
                tag.length);
        byte[] typed = tag(then, passphrase, Base64.getDecoder().decode(parts.group(4)));
        return MessageDigest.isEqual(tag, typed) & stored.isPresent();
    }

    /** Whether the stored text was made at another cost than this, so that it is to be made anew. */
    public boolean outdated(String stored) {
        return !stored.startsWith("$argon2id$v=19$m=" + argon2.getMemory() + ",t=" + argon2.getIterations() + ",p="
                + argon2.getParallelism() + "$");
    }

    /** Argon2id, version 1.3 of RFC 9106. */
    static Argon2Function function(int kibibytes, int passes, int lanes, int length) {
        return Argon2Function.getInstance(
                kibibytes, passes, lanes, length, Argon2.ID, Argon2Function.ARGON2_VERSION_13);
    }

    private byte[] tag(Argon2Function cost, String passphrase, byte[] salt) {
        byte[] typed = Normalizer.normalize(passphrase, Normalizer.Form.NFC).getBytes(StandardCharsets.UTF_8);
        atOnce.acquireUninterruptibly();
        try {
            return cost.hash(typed, salt).getBytes();
        } finally {
            atOnce.release();
        }
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().withoutPadding().encodeToString(bytes);
    }
}
