package weekwright.render;

/** Chances from 0 to 1 in words (rule 115). A percent stands only in tables. */
public final class Chances {
    /** Below this a chance has no words of its own. */
    private static final double ALMOST_NONE = 0.03;

    private static final double NINETEEN_IN_TWENTY = 0.925;
    private static final double ALMOST_CERTAIN = 0.97;
    private static final double SAFE = 0.9;
    private static final double CLOSE = 2 / 3.0;
    /** Shares counted by trials are off by rounding; a bound that is met within this is met. */
    private static final double SLACK = 1e-9;

    private static final double[] CHANCES = {.1, .2, .25, 1 / 3.0, .5, 2 / 3.0, .75, .8, .9};
    private static final String[] WORDS = {
        "one in ten",
        "one in five",
        "one in four",
        "one in three",
        "even chances",
        "two in three",
        "three in four",
        "four in five",
        "nine in ten"
    };

    private Chances() {}

    /**
     * Almost certain from 97 %, nineteen in twenty from 92.5 %, then the nearest of nine in ten, four in five, three in
     * four, two in three, even chances, one in three, one in four, one in five, one in ten; almost no chance under 3 %.
     * Halfway between two, the smaller chance is said.
     */
    public static String words(double chance) {
        if (!(chance >= 0 && chance <= 1)) {
            throw new IllegalArgumentException("not a chance from 0 to 1: " + chance);
        }
        if (chance >= ALMOST_CERTAIN - SLACK) {
            return "almost certain";
        }
        if (chance >= NINETEEN_IN_TWENTY - SLACK) {
            return "nineteen in twenty";
        }
        if (chance < ALMOST_NONE - SLACK) {
            return "almost no chance";
        }
        int nearest = 0;
        for (int i = 1; i < CHANCES.length; i++) {
            if (Math.abs(chance - CHANCES[i]) < Math.abs(chance - CHANCES[nearest]) - SLACK) {
                nearest = i;
            }
        }
        return WORDS[nearest];
    }

    /** Safe from nine in ten, close from two in three, at risk under. */
    public static String safety(double chance) {
        return chance >= SAFE - SLACK ? "safe" : chance >= CLOSE - SLACK ? "close" : "at risk";
    }

    /** {@code 41 %}, for tables alone. */
    public static String percent(double chance) {
        return Math.round(chance * 100) + Formats.NBSP + "%";
    }

    /** A share of a whole as tenths in words: {@code four parts in ten}; under a twentieth {@code a small part}. */
    public static String parts(double share) {
        long tenths = Math.round(share * 10);
        return tenths == 0
                ? "a small part"
                : tenths == 10 ? "all of it" : Formats.number(tenths) + (tenths == 1 ? " part" : " parts") + " in ten";
    }
}
