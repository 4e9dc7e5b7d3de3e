package weekwright.base;

import java.text.Normalizer;

/** What any text of a person has to be, whatever it is for. */
public final class Text {
    private Text() {}

    /**
     * The text in NFC, without the marks that turn the direction of what follows, without zero-width padding at its ends.
     *
     * @param lines whether line breaks and tabs may stand in it; they come out as LF
     * @throws Refused for control characters, lone surrogates and non-characters, with the position counted from 1
     */
    public static String checked(String text, boolean lines) throws Refused {
        if (isPlain(text)) {
            return text;
        }
        String plain = lines ? text.replace("\r\n", "\n").replace('\r', '\n') : text;
        for (int i = 0; i < plain.length(); ) {
            int point = plain.codePointAt(i);
            boolean lineMark = point == '\n' || point == '\t';
            if (lineMark && !lines) {
                throw new Refused("has a line break or tab at character " + (i + 1), "write it on one line");
            }
            boolean control = point < 0x20 && !lineMark || point >= 0x7f && point < 0xa0;
            boolean broken = point >= 0xd800 && point <= 0xdfff || (point & 0xfffe) == 0xfffe;
            if (control || broken) {
                throw new Refused("has a character that is no text at character " + (i + 1), "take it out");
            }
            i += Character.charCount(point);
        }
        String turned = plain.replaceAll("[\\u202A-\\u202E\\u2066-\\u2069]", "");
        return Normalizer.normalize(turned, Normalizer.Form.NFC)
                .replaceAll("^[\\s\\u200B-\\u200D\\uFEFF]+|[\\s\\u200B-\\u200D\\uFEFF]+$", "");
    }

    /** Letters, digits and signs of ASCII without a blank at either end: nothing below would change them. */
    private static boolean isPlain(String text) {
        int length = text.length();
        if (length == 0) {
            return true;
        }
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~') {
                return false;
            }
        }
        return text.charAt(0) != ' ' && text.charAt(length - 1) != ' ';
    }
}
