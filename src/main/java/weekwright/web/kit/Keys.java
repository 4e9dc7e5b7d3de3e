package weekwright.web.kit;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Random keys, signatures and digests of the forms. */
final class Keys {
    private static final SecureRandom RANDOM = new SecureRandom();

    private Keys() {}

    /** 256 random bits, 43 letters that fit into an address or a cookie. */
    static String random() {
        byte[] bytes = new byte[32];
        RANDOM.nextBytes(bytes);
        return base64(bytes);
    }

    /** HMAC-SHA256 of a text, for one purpose, so that a signature made for one thing is none for another. */
    static String sign(String key, String purpose, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key.getBytes(StandardCharsets.UTF_8), "HmacSHA256"));
            return base64(mac.doFinal((purpose + "\n" + text).getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Compares without telling by its time where two texts differ. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }

    static String sha256(String text) {
        try {
            return base64(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    static String base64(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
