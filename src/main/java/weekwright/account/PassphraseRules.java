package weekwright.account;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.base.Problems;

/**
 * What a new passphrase must be: OWASP ASVS 5.0.0, 6.2.1 (fifteen signs are what it strongly recommends), 6.2.4, 6.2.5 (no
 * rule on kinds of signs), 6.2.9, 6.2.11.
 */
public final class PassphraseRules {
    public static final int LEAST = 15;
    public static final int MOST = 256;

    private static final int DIFFERENT = 5;
    /** Without blanks, in lower case. From memory: what is often typed and is long enough. */
    private static final List<String> COMMON = List.of(
            "correcthorsebatterystaple",
            "thequickbrownfoxjumpsoverthelazydog",
            "thequickbrownfox",
            "letmeinpleasenow",
            "passwordpassword",
            "iloveyouforever",
            "iloveyousomuch",
            "todayisagoodday",
            "tobeornottobe",
            "tobeornottobethatisthequestion",
            "openthedoorplease",
            "changemechangeme",
            "changethispassword",
            "changethispassphrase",
            "thisismypassword",
            "thisismypassphrase",
            "mysecretpassword",
            "mysecretpassphrase",
            "qwertyuiopasdfghjklzxcvbnm",
            "onceuponatime",
            "maytheforcebewithyou",
            "abcdefghijklmnopqrstuvwxyz",
            "12345678901234567890",
            "123456789012345",
            "1234567890123456",
            "qwertyuiopasdfg",
            "qwertzuiopasdfg",
            "1q2w3e4r5t6z7u8i9o0p",
            "1q2w3e4r5t6y7u8i9o0p");

    private PassphraseRules() {}

    /** @param own words that are known to others: the person's name, the project's */
    public static void check(String field, String passphrase, List<String> own, Problems problems) {
        refusal(passphrase, own).ifPresent(rule -> problems.fault(field, "", rule[0], rule[1]));
    }

    /** Rule and remedy; never the passphrase itself. */
    private static Optional<String[]> refusal(String passphrase, List<String> own) {
        int length = passphrase.codePointCount(0, passphrase.length());
        if (length < LEAST) {
            return refused(
                    "is too short",
                    "take " + LEAST + " characters or more: four or five words that nobody would expect together");
        }
        if (length > MOST) {
            return refused("is too long", "take " + MOST + " characters at most");
        }
        String plain = plain(passphrase);
        if (plain.codePoints().distinct().count() < DIFFERENT || repeats(plain) || runs(plain)) {
            return refused("repeats itself or counts up", "take several words that nobody would expect together");
        }
        if (COMMON.contains(plain)) {
            return refused("is one that many people take", "take several words that nobody would expect together");
        }
        String left = plain.replaceAll("weekwright|passphrase|password", "");
        for (String word : own) {
            String known = plain(word);
            if (known.length() > 2) {
                left = left.replace(known, "");
            }
        }
        if (left.replaceAll("[^\\p{L}]", "").length() < DIFFERENT && !left.equals(plain)) {
            return refused("is made of names that others know", "take several words that nobody would expect together");
        }
        return Optional.empty();
    }

    private static Optional<String[]> refused(String rule, String remedy) {
        return Optional.of(new String[] {rule, remedy});
    }

    /** Without blanks, in lower case. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\s", "");
    }

    /** Whether it is one shorter text over and over. */
    private static boolean repeats(String text) {
        return !text.isEmpty() && (text + text).indexOf(text, 1) < text.length();
    }

    /** Whether each sign follows or precedes the one before it in the order of signs. */
    private static boolean runs(String text) {
        int step = text.length() < 2 ? 0 : text.charAt(1) - text.charAt(0);
        for (int i = 1; i < text.length(); i++) {
            if (text.charAt(i) - text.charAt(i - 1) != step) {
                return false;
            }
        }
        return Math.abs(step) <= 1;
    }
}
