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
        x.bank[0] = 0;
        for (int t = 0; t < setup.tasks.count; t++) {
            x.inBank[t] = 0;
            if (setup.tasks.story[t] > 0 && x.filmed[t] > 0) {
                update(t);
            }
        }
    }

    /** Goes on with a copied state. */
    void restart(State state) {
        x = state;
    }

    /** So many person-minutes of a task were filmed. */
    void filmed(int t, double minutes) {
        x.filmed[t] += minutes;
        if (setup.tasks.story[t] > 0) {
            update(t);
        }
    }

    private void update(int t) {
        int total = luck.total[t];
        double share = total > 0 ? StrictMath.min(1, x.filmed[t] / total) : 1;
        double now = setup.tasks.story[t] * StrictMath.max(0, share - setup.episodes.told[t]);
        x.bank[0] += now - x.inBank[t];
        x.inBank[t] = now;
    }
}
