package weekwright.engine.simulate;

/**
 * The story bank (rule 72): finished minutes of filmed work not yet told, the sum over the tasks of story minutes times (filmed share -
 * told share, at least 0), less what was set aside for episodes made from it.
 */
final class StoryBank {
    private final Setup setup;
    private final Luck luck;
    private State x;

    StoryBank(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
    }

    /** On the as-of morning. */
    void begin(State state) {
        x = state;
        x.bank = 0;
        for (TaskState k : x.task) {
            k.inBank = 0;
            if (k.story > 0 && k.filmed > 0) {
                update(k, luck.total[k.number]);
            }
        }
    }

    /** Goes on with a copied state. */
    void restart(State state) {
        x = state;
    }

    /** So many person-minutes of a task were filmed. */
    void filmed(TaskState k, double minutes) {
        k.filmed += minutes;
        update(k, k.total);
    }

    private void update(TaskState k, int total) {
        double share = total > 0 ? StrictMath.min(1, k.filmed / total) : 1;
        double now = k.story * StrictMath.max(0, share - k.told);
        x.bank += now - k.inBank;
        k.inBank = now;
    }
}
