package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import weekwright.engine.plan.Plan;

/**
 * One future whose numbers are kept: drawn once by the engine, lived piece by piece, each piece from what is known on its first day
 * and with the order of work that the crew has then.
 */
public final class TrueFuture {
    /** What the model does not know. */
    public interface Hidden {
        /** Share of the stated hours that a person gives on a day. */
        double given(int person, int date);

        /** Factor on the hours of a task. */
        double longer(String task);

        /** Factor on the lead of a line. */
        double later(String line);
    }

    private final long seed;
    private final int number;
    private final Hidden hidden;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final Map<String, Long> costs = new HashMap<>();
    private double beta;
    private double kappa;

    public TrueFuture(long seed, int number, Hidden hidden) {
        this.seed = seed;
        this.number = number;
        this.hidden = hidden;
    }

    /** The crew's true effort ratio. */
    public double ratio() {
        return Math.exp(beta);
    }

    /**
     * Lives from the as-of day of a project to its horizon.
     *
     * @return by episode, on which day from the as-of day it is cut; {@link weekwright.engine.Outcome#LATER} if it is not
     */
    public int[] live(Setup setup, Plan plan, Trace trace) {
        Trial trial = new Trial(setup, true);
        trial.luck.draw(seed, number);
        if (kappa == 0) {
            beta = trial.luck.beta;
            kappa = trial.luck.kappa;
        }
        tasks(setup, trial.luck);
        trial.luck.takeMarks();
        lines(setup, trial.luck);
        rest(setup, trial.luck);
        trial.trace(trace);
        trial.run(WorkOrder.of(setup, plan));
        return trial.held.cutDay;
    }

    private int kept(String what, String id, int drawn) {
        return numbers.computeIfAbsent(what + " " + id, key -> drawn);
    }

    private void tasks(Setup setup, Luck luck) {
        TaskTable tasks = setup.tasks;
        for (int t = 0; t < tasks.count; t++) {
            if (t >= tasks.listed) {
                // what turns up is in the world itself, as tasks that are not listed yet
                luck.left[t] = 0;
                luck.total[t] = 0;
                luck.foundShare[t - tasks.listed] = 0;
            } else if (tasks.status[t] < TaskTable.DONE) {
                if (tasks.wait[t]) {
                    luck.total[t] = kept("days", tasks.id[t], luck.total[t]);
                } else {
                    double drawn =
                            tasks.effort[t].left(beta, kappa, Streams.uniform(luck.trialKey, setup.hoursKey[t], 0));
                    int total = kept("hours", tasks.id[t], (int)
                            Math.max(1, Math.round(drawn * hidden.longer(tasks.id[t]))));
                    luck.left[t] = Math.max(1, total - tasks.logged[t]);
                    luck.total[t] = tasks.logged[t] + luck.left[t];
                    luck.again[t] = Math.max(1, (int) Math.round(tasks.redo[t] * luck.total[t]));
                }
            }
        }
    }

    private void lines(Setup setup, Luck luck) {
        LineTable lines = setup.lines;
        Arrays.fill(luck.late, 1);
        for (int m = 0; m < lines.count; m++) {
            if (lines.status[m] < LineTable.OUT) {
                continue;
            }
            String id = setup.inputs.materials().get(m).id();
            // as the line itself says: what is late together is in the world
            double drawn = lines.lead[m].draw(Streams.uniform(luck.trialKey, lines.leadKey[m], 0));
            luck.lead[m] = kept("lead", id, (int) Math.max(1, Math.round(Math.round(drawn) * hidden.later(id))));
            luck.leadDays[m] = luck.lead[m];
            long cost = luck.cost[m];
            luck.cost[m] = costs.computeIfAbsent(id, key -> cost);
        }
    }

    private void rest(Setup setup, Luck luck) {
        LinkTable links = setup.links;
        for (int l = 0; l < links.count; l++) {
            luck.linkWait[l] =
                    kept("link", setup.tasks.id[links.to[l]] + " " + setup.tasks.id[links.from[l]], luck.linkWait[l]);
        }
        EpisodeTable episodes = setup.episodes;
        for (int e = 0; e < episodes.count; e++) {
            if (episodes.cut[e] == TaskTable.NO_DAY) {
                int all = kept("edit", setup.inputs.episodes().get(e).id(), luck.edit[e] + episodes.edited[e]);
                luck.edit[e] = Math.max(1, all - episodes.edited[e]);
            }
        }
        for (int day = 0; day < setup.calendar.days; day++) {
            for (int p = 0; p < setup.inputs.crew().size(); p++) {
                luck.turnout[luck.turnoutAt(day) + p] =
                        (int) Math.round(hidden.given(p, setup.calendar.asOf + day) * Turnout.WHOLE);
            }
        }
    }
}
