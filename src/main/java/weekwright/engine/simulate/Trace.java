package weekwright.engine.simulate;

/**
 * Told of everything that happens in a trial, for tests that check each rule on simulated days. Days are numbers from the as-of day,
 * tasks, people and lines positions in the inputs (unlisted tasks and unnamed hands after the listed ones). Costs nothing when absent.
 */
public interface Trace {
    /**
     * A stretch of work.
     *
     * @param hands people as bits
     * @param company the person beside, -1 for none
     * @param operator the camera operator, -1 for none
     * @param from earliest minute of the day at which the task was possible
     * @param clock minutes of the stretch
     * @param filming minutes that the operator gave
     * @param progress person-minutes that came off the task
     * @param withEquipment false if it was done without its equipment
     */
    default void stretch(
            int day,
            int task,
            int hands,
            int company,
            int operator,
            int from,
            int clock,
            int filming,
            int progress,
            boolean withEquipment) {}

    /** A task is done. */
    default void landed(int day, int task) {}

    /** A task has failed at its end and begins again. */
    default void failed(int day, int task) {}

    /** A wait begins on the evening of a day and takes so many days. */
    default void waitBegins(int day, int task, int days) {}

    /** A person edits; {@code episode} is negative for one made from the story bank. */
    default void edits(int day, int person, int episode, int minutes) {}

    /** A line was ordered; cash and what is owed afterwards. */
    default void ordered(int day, int line, long cost, long cash, long owed) {}

    /** A line came and its balance was paid. */
    default void arrived(int day, int line, long paid) {}

    /** Money moved; {@code why} is a word such as payout, wages, regular. */
    default void money(int day, String why, long amount) {}

    /** The day is over. */
    default void evening(int day, long cash) {}

    /** A slot was served. */
    default void slot(int day, int outcome, int episode) {}
}
