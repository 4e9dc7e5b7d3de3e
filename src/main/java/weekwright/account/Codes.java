package weekwright.account;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Locale;

/** Random secrets and their hashes. A code is read out or written on paper, a token lives in a cookie. */
public final class Codes {
    /** Without i, l, o and 1, 0: nobody takes one for the other. */
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";

    private static final int LENGTH = 28;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Codes() {}

    /** 28 signs of 31 in sevens, 138 random bits. */
    public static String code() {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            code.append(i > 0 && i % 7 == 0 ? "-" : "").append(LETTERS.charAt(RANDOM.nextInt(LETTERS.length())));
        }
        return code.toString();
    }

    /** 256 random bits, 43 letters. */
    public static String token() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** The hash of a code as it was typed: case, blanks and strokes do not matter. */
    public static String hashOfCode(String typed) {
        return sha256(typed.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", ""));
    }

    public static String sha256(String text) {
        try {
            return Base64.getUrlEncoder()
                    .withoutPadding()
                    .encodeToString(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Compares without telling by its time where two hashes differ. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
