package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;

/**
 * The evening's waits (rules 31 to 33, 44): each begins when its links, materials, first-day season and equipment allow it, by rank
 * where equipment is short, again and again until nothing more begins.
 */
final class Waits {
    private final Setup setup;
    private final Luck luck;
    private final Flow flow;
    private final Tools tools;
    Trace trace;

    Waits(Setup setup, Luck luck, Flow flow, Tools tools) {
        this.setup = setup;
        this.luck = luck;
        this.flow = flow;
        this.tools = tools;
    }

    void evening(int day, State x) {
        tools.evening(day);
        int at = 0;
        while (at < x.waiting) {
            TaskState k = x.waits[at];
            int t = k.number;
            int season = k.season;
            if (season >= 0 && setup.seasons[season][day] != day) {
                unlist(x, k, at);
                x.account(k, setup.reasons.season, day);
                flow.sleep(t, setup.seasons[season][day], setup.reasons.season);
                continue;
            }
            if (k.booked != TaskTable.NO_DAY && k.booked < day) {
                unlist(x, k, at);
                x.account(k, setup.reasons.booking, day);
                flow.place(t);
                continue;
            }
            if (k.stop == LATER) {
                needed(x, t, day);
                unlist(x, k, at);
                continue;
            }
            int lacking = tools.lackingOverNight(t);
            if (lacking >= 0) {
                x.account(k, setup.reasons.equipment + lacking, day);
                at++;
                continue;
            }
            needed(x, t, day);
            unlist(x, k, at);
            if (trace != null) {
                trace.waitBegins(day, t, k.failed == 0 ? luck.total[t] : luck.again[t]);
            }
            flow.event = false;
            flow.beginWait(t);
            if (flow.event) {
                at = 0;
            }
        }
    }

    private static void unlist(State x, TaskState k, int at) {
        State.remove(x.waits, x.waiting--, at);
        k.listed = false;
    }

    private void needed(State x, int t, int day) {
        for (int i = setup.lines.start[t]; i < setup.lines.start[t + 1]; i++) {
            int m = setup.lines.ofTask[i];
            if (x.needDay[m] == LATER) {
                x.needDay[m] = day;
            }
        }
    }
}
