package weekwright.base;

/**
 * How a text is to be read: the digits of the project's currency, and whether a person typed it into a form (then
 * 3,5 and 3:30 are hours too) or it stands in a plain file (decimal point only).
 *
 * @param moneyDigits ISO 4217 digits of the project's currency: 2 for EUR, 0 for JPY, 3 for KWD
 */
public record Reading(int moneyDigits, boolean typed) {
    public static Reading file(int moneyDigits) {
        return new Reading(moneyDigits, false);
    }

    public static Reading form(int moneyDigits) {
        return new Reading(moneyDigits, true);
    }
}
