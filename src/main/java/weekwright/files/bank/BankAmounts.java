package weekwright.files.bank;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Money;
import weekwright.funds.BankSource.Decimals;

/**
 * Amounts as banks write them: 1.234,56 or 1,234.56 or 1 234.56 or 1'234.56, a sign before or after them or brackets around
 * them for minus, the currency's mark or letters beside them. Thousands are in threes or not parted at all.
 */
final class BankAmounts {
    private static final Pattern GAPS = Pattern.compile("(?<=[0-9])[ \u00a0\u202f'’](?=[0-9]{3}(?![0-9]))");
    private static final Pattern CURRENCY = Pattern.compile("^(\\p{Sc}|[A-Z]{3})\\s*|\\s*(\\p{Sc}|[A-Z]{3})$");
    private static final Pattern SIGNED = Pattern.compile("([+-]?)\\s*([0-9][0-9.,]*|[.,][0-9]+)\\s*([+-]?)");
    private static final Pattern COMMA = Pattern.compile("([0-9]{1,3}(\\.[0-9]{3})+|[0-9]{0,12})(,[0-9]{1,6})?");
    private static final Pattern POINT = Pattern.compile("([0-9]{1,3}(,[0-9]{3})+|[0-9]{0,12})(\\.[0-9]{1,6})?");
    private static final int DIGITS_MOST = 12;

    private BankAmounts() {}

    /** Empty where it is none in that way of writing, or has more places than the currency. */
    static Optional<Money> read(String text, Decimals decimals, int moneyDigits) {
        String plain = text.strip();
        return bare(plain) ? signed(plain, false, decimals, moneyDigits) : dressed(plain, decimals, moneyDigits);
    }

    /** Whether there is nothing beside digits, marks and signs. */
    private static boolean bare(String text) {
        for (int i = 0; i < text.length(); i++) {
            if ("0123456789.,+-".indexOf(text.charAt(i)) < 0) {
                return false;
            }
        }
        return true;
    }

    private static Optional<Money> dressed(String text, Decimals decimals, int moneyDigits) {
        String plain = GAPS.matcher(text.replace('−', '-')).replaceAll("");
        boolean brackets = plain.startsWith("(") && plain.endsWith(")");
        if (brackets) {
            plain = plain.substring(1, plain.length() - 1);
        }
        plain = CURRENCY.matcher(plain).replaceAll("").strip();
        String sign = plain.startsWith("-") || plain.startsWith("+") ? plain.substring(0, 1) : "";
        plain = sign + CURRENCY.matcher(plain.substring(sign.length()).strip()).replaceAll("");
        return signed(plain, brackets, decimals, moneyDigits);
    }

    private static Optional<Money> signed(String plain, boolean brackets, Decimals decimals, int moneyDigits) {
        Matcher signed = SIGNED.matcher(plain);
        if (!signed.matches() || !signed.group(1).isEmpty() && !signed.group(3).isEmpty()) {
            return Optional.empty();
        }
        String number = signed.group(2);
        if (!(decimals == Decimals.COMMA ? COMMA : POINT).matcher(number).matches()) {
            return Optional.empty();
        }
        number = decimals == Decimals.COMMA ? number.replace(".", "").replace(',', '.') : number.replace(",", "");
        BigDecimal value = new BigDecimal(number.startsWith(".") ? "0" + number : number).stripTrailingZeros();
        if (value.scale() > moneyDigits || value.precision() - value.scale() > DIGITS_MOST) {
            return Optional.empty();
        }
        boolean minus =
                brackets || signed.group(1).equals("-") || signed.group(3).equals("-");
        Money money = new Money(value.movePointRight(moneyDigits).longValueExact());
        return Optional.of(minus ? money.negated() : money);
    }
}
