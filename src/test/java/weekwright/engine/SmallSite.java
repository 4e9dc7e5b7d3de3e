package weekwright.engine;

import static weekwright.testkit.ProjectInputs.project;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import weekwright.testkit.ProjectInputs;

/**
 * A small project with people, plain enough to be planned by other means: whole days of work for one pair of hands each, two trades, links.
 *
 * @param person by person bits of trades
 * @param days by task whole days of work
 * @param trade by task bits of the trades that can do it
 * @param before by task the tasks before it as bits
 */
record SmallSite(int[] person, int[] days, int[] trade, int[] before) {
    private static final int HOURS = 8;
    private static final String[] TRADES = {"mason", "joiner"};

    /** @param oneLinkIn of so many pairs of tasks one is linked */
    static SmallSite random(SplittableRandom random, int tasks, int people, int mostDays, int oneLinkIn) {
        int[] person = new int[people];
        for (int p = 0; p < person.length; p++) {
            person[p] = p == 0 ? 3 : 1 + random.nextInt(3);
        }
        int[] days = new int[tasks];
        int[] trade = new int[tasks];
        int[] before = new int[tasks];
        for (int t = 0; t < tasks; t++) {
            days[t] = 1 + random.nextInt(mostDays);
            trade[t] = 1 + random.nextInt(3);
            for (int k = 0; k < t; k++) {
                before[t] |= random.nextInt(oneLinkIn) == 0 ? 1 << k : 0;
            }
        }
        return new SmallSite(person, days, trade, before);
    }

    /** The same for the engine: everybody is there eight hours every day, task 3 is {@code t3}. */
    Inputs inputs() {
        ProjectInputs project = project();
        for (int p = 0; p < person.length; p++) {
            project.person("p" + p, HOURS, HOURS, HOURS, HOURS, HOURS, HOURS, HOURS, words(person[p]));
        }
        for (int t = 0; t < days.length; t++) {
            project.task("t" + t).trades(words(trade[t])).exactly(HOURS * days[t]);
        }
        for (int t = 0; t < days.length; t++) {
            for (int k = 0; k < t; k++) {
                if (isBefore(k, t)) {
                    project.link("t" + t, "t" + k, 1, 0);
                }
            }
        }
        return project.inputs();
    }

    boolean isBefore(int task, int other) {
        return (before[other] & 1 << task) != 0;
    }

    boolean can(int p, int task) {
        return (person[p] & trade[task]) != 0;
    }

    int allDays() {
        return Arrays.stream(days).sum();
    }

    private static String[] words(int bits) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < TRADES.length; i++) {
            if ((bits & 1 << i) != 0) {
                words.add(TRADES[i]);
            }
        }
        return words.toArray(String[]::new);
    }
}
