package weekwright.base;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * The one grammar of decimal numbers: an optional sign, one to twelve ASCII digits, at most six after the point. Checked
 * before any number class sees the text, so that NaN, 1e5, 0x1p3, digits of other scripts and 200-digit numbers are
 * refused in no time.
 */
final class Decimals {
    private static final Pattern GRAMMAR = Pattern.compile("[+-]?[0-9]{1,12}(\\.[0-9]{1,6})?");
    private static final Pattern THOUSANDS = Pattern.compile("[0-9]{1,3}[.,][0-9]{3}");

    private Decimals() {}

    /** Reads {@code 3.5}; where typed also {@code 3,5}, but not 1,234, which two habits read differently. */
    static BigDecimal parse(String text, Reading reading, String what, String example) throws Refused {
        String plain = text.strip();
        if (reading.typed()) {
            if (isAmbiguous(plain)) {
                throw readTwoWays(plain, plain.replace(',', '.') + "0 with the point");
            }
            plain = plain.replace(',', '.');
        }
        if (!GRAMMAR.matcher(plain).matches()) {
            if (plain.matches("[+-]?[0-9]+,[0-9]+")) {
                throw new Refused("has a decimal comma", "write " + plain.replace(',', '.'));
            }
            if (plain.matches("[+-]?[0-9]{13,}(\\.[0-9]*)?")) {
                throw new Refused("is too large", "write at most twelve digits");
            }
            throw new Refused("is not " + what, "write " + example);
        }
        return new BigDecimal(plain);
    }

    /** Whether two habits read it differently: 1,234 and 1.234, but not 0.234. */
    static boolean isAmbiguous(String typed) {
        String plain = typed.strip();
        return THOUSANDS.matcher(plain).matches() && !plain.startsWith("0");
    }

    /** @param fraction how it is to be written where its point parts whole from tenths */
    static Refused readTwoWays(String typed, String fraction) {
        String point = typed.strip().replace(',', '.');
        String digits = point.replace(".", "");
        return new Refused("can be read as " + point + " or as " + digits, "write " + digits + ", or " + fraction);
    }

    /** Shortest form: no trailing zeros, never an exponent. */
    static String text(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }
}
