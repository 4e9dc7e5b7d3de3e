package weekwright.engine.plan;

import java.util.List;
import weekwright.engine.Inputs;

/**
 * The order of work: what the daily dispatch follows, and what it comes to with expected values.
 *
 * @param ranks ids of all open tasks, first to be worked first
 * @param notBefore days before which a task is not started although it could be
 * @param start planned first day (epoch day) of each task of {@link Inputs#tasks}, past ones included; {@link
 *     weekwright.engine.Outcome#LATER} if not before the horizon
 * @param landing planned day of its end, likewise
 * @param objective sum of stage weight times landing in days after the as-of day, plus empty slots (rule 55); small is good
 * @param kept whether the ranks are those kept with the last forecast (rule 52: a new list replaces the kept one only if it
 *     betters the objective by more than 1 %)
 */
public record Plan(
        List<String> ranks,
        List<Inputs.NotBefore> notBefore,
        List<Integer> start,
        List<Integer> landing,
        double objective,
        boolean kept) {
    public Plan {
        ranks = List.copyOf(ranks);
        notBefore = List.copyOf(notBefore);
        start = List.copyOf(start);
        landing = List.copyOf(landing);
    }

    /** What a later forecast keeps. */
    public Inputs.Kept keep() {
        return new Inputs.Kept(ranks, notBefore);
    }
}
