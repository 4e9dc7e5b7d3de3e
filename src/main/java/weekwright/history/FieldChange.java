package weekwright.history;

/**
 * One field of a row before and after a change, in words.
 *
 * @param label as the forms have it
 * @param before empty where nothing stood there
 * @param after empty where nothing stands there any more
 */
public record FieldChange(String label, String before, String after) {
    private static final int LONG = 80;

    /** Whether it is too long for a line beside others. */
    public boolean isLong() {
        return before.length() > LONG || after.length() > LONG || before.contains("\n") || after.contains("\n");
    }
}
