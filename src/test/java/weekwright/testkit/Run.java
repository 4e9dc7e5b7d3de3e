package weekwright.testkit;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Simulation;

/**
 * A small simulation, asked by ids: dates as ISO text, "later" for not before the horizon. Single answers are those of the first
 * trial, for projects in which nothing is drawn. An order of work that the project keeps is followed even where a better one was
 * found.
 */
public record Run(Inputs inputs, Plan plan, Outcome outcome) {
    /** One trial. */
    public static Run of(ProjectInputs project) {
        return of(project, 1);
    }

    /** So many trials with seed 1 on one thread. */
    public static Run of(ProjectInputs project, int trials) {
        Inputs inputs = project.inputs();
        Plan plan = inKeptOrder(inputs, Planner.plan(inputs, 1, 0));
        return new Run(inputs, plan, Simulation.run(inputs, plan, trials, 1, 1, Progress.NONE));
    }

    private static Plan inKeptOrder(Inputs inputs, Plan plan) {
        Set<String> ranks = new LinkedHashSet<>(inputs.kept().ranks());
        ranks.addAll(plan.ranks());
        return new Plan(
                List.copyOf(ranks), plan.notBefore(), plan.start(), plan.landing(), plan.objective(), plan.kept());
    }

    public int task(String id) {
        for (int i = 0; i < inputs.tasks().size(); i++) {
            if (inputs.tasks().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no task " + id);
    }

    public int stage(String id) {
        for (int i = 0; i < inputs.stages().size(); i++) {
            if (inputs.stages().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no stage " + id);
    }

    public int material(String id) {
        for (int i = 0; i < inputs.materials().size(); i++) {
            if (inputs.materials().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no material line " + id);
    }

    public int episode(String id) {
        for (int i = 0; i < inputs.episodes().size(); i++) {
            if (inputs.episodes().get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no episode " + id);
    }

    /** First day worked or waited. */
    public String start(String task) {
        return text(outcome.taskStart[task(task)][0]);
    }

    /** Day on which the task is done. */
    public String landing(String task) {
        return text(outcome.taskLanding[task(task)][0]);
    }

    public String stageLanding(String stage) {
        return text(outcome.held.stageLanding[stage(stage)][0]);
    }

    public String ordered(String line) {
        return text(outcome.orderDay[material(line)][0]);
    }

    public String cut(String episode) {
        return text(outcome.episodeCut[episode(episode)][0]);
    }

    /** What the slot of a date came to. */
    public Outcome.Slot slot(String date) {
        for (int i = 0; i < outcome.slots.length; i++) {
            if (outcome.slots[i] == ProjectInputs.day(date)) {
                return Outcome.Slot.values()[outcome.slot[i][0]];
            }
        }
        throw new IllegalArgumentException("no slot on " + date);
    }

    /** The balance on a Sunday's evening, held for funds. */
    public long cash(String sunday) {
        return outcome.held.cash[week(sunday)][0];
    }

    public double bank(String sunday) {
        return outcome.bank[week(sunday)][0];
    }

    public int week(String sunday) {
        for (int i = 0; i < outcome.weeks.length; i++) {
            if (outcome.weeks[i] == ProjectInputs.day(sunday)) {
                return i;
            }
        }
        throw new IllegalArgumentException(sunday + " is no Sunday of the run");
    }

    public String plannedStart(String task) {
        return text(plan.start().get(task(task)));
    }

    public String plannedLanding(String task) {
        return text(plan.landing().get(task(task)));
    }

    public static String text(int day) {
        return day == Outcome.LATER
                ? "later"
                : day == Inputs.NONE ? "" : LocalDate.ofEpochDay(day).toString();
    }
}
