package weekwright.cli;

/** Bounds of numbers given as options. */
final class Numbers {
    private Numbers() {}

    /** Both bounds included. */
    static void within(String option, int value, int least, int most) throws Failure {
        if (value < least || value > most) {
            throw Failure.usage(option + " " + value + " is not possible; give a number from " + least + " to " + most);
        }
    }
}
