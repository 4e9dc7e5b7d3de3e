package weekwright.worlds;

/**
 * What is true in a world, and what its settings say of it.
 *
 * @param turnout the crew gives a part of its hours, another each week, with spells of illness; it has half a year of log before
 * @param found tasks come up that nobody had listed
 * @param replanned the crew makes ranks and order days anew every four weeks
 * @param learned whether the settings let the model learn of turnout and found work, or switch it off
 * @param slower each year's work takes a fifth more of the estimate than that of the year before
 * @param lostMonth nobody comes for 28 days, some time after the as-of day
 * @param clumps deliveries of a quarter are late or early together
 */
public record Kind(
        String name,
        boolean turnout,
        boolean found,
        boolean replanned,
        boolean learned,
        boolean slower,
        boolean lostMonth,
        boolean clumps) {
    public static final Kind PLAIN = new Kind("as the model says", false, false, false, true, false, false, false);
    public static final Kind REPLANNED =
            new Kind("re-planned every four weeks", false, false, true, true, false, false, false);
    public static final Kind TURNOUT = new Kind("turnout alone", true, false, false, true, false, false, false);
    public static final Kind FOUND = new Kind("found work alone", false, true, false, true, false, false, false);
    public static final Kind REAL = new Kind("turnout and found work", true, true, false, true, false, false, false);
    public static final Kind REAL_UNLEARNED =
            new Kind("the same, rules 120 and 122 off", true, true, false, false, false, false, false);
    public static final Kind SLOWER = new Kind("crew that gets slower", false, false, false, true, true, false, false);
    public static final Kind LOST_MONTH = new Kind("a lost month", false, false, false, true, false, true, false);
    public static final Kind CLUMPS =
            new Kind("late materials in clumps", false, false, false, true, false, false, true);

    /** All that are measured. */
    public static java.util.List<Kind> all() {
        return java.util.List.of(PLAIN, REPLANNED, TURNOUT, FOUND, REAL, REAL_UNLEARNED, SLOWER, LOST_MONTH, CLUMPS);
    }

    /** Whether the crew lives from plan to plan of four weeks. */
    boolean inSteps() {
        return replanned || found;
    }
}
