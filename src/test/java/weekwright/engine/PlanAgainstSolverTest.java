package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;

/**
 * Plans of random projects with people against a constraint solver that shares nothing with the engine (CP-SAT of OR-tools): whole days
 * of work for one pair of hands each, two trades, links, work interrupted at will. The solver is asked whether the plan's landings can be
 * kept at all, and for a sum of landings that no plan is under. Both are about the same days, the first being day 0.
 */
class PlanAgainstSolverTest {
    private static final int PROJECTS = 13;
    private static final int PASSES = 400;
    /** How long the solver looks, in its own measure of work done, the same on every machine. */
    private static final double WORK = 4;

    @BeforeAll
    static void solver() {
        try {
            Loader.loadNativeLibraries();
        } catch (RuntimeException | UnsatisfiedLinkError e) {
            Assumptions.abort("the solver's machine code is fetched for Linux on x86-64 alone: " + e.getMessage());
        }
    }

    private static int position(Inputs inputs, String task) {
        return inputs.tasks().stream().map(Inputs.Task::id).toList().indexOf(task);
    }

    /** The site as the solver sees it: who works on what on which day, and the day on which each task lands. */
    private static final class Model {
        private final CpModel model = new CpModel();
        private final IntVar[] landing;

        Model(SmallSite site) {
            int horizon = site.allDays();
            int tasks = site.days().length;
            landing = new IntVar[tasks];
            BoolVar[][] worked = new BoolVar[tasks][horizon];
            List<List<BoolVar>> busy = new ArrayList<>();
            for (int i = 0; i < site.person().length * horizon; i++) {
                busy.add(new ArrayList<>());
            }
            for (int t = 0; t < tasks; t++) {
                landing[t] = model.newIntVar(0, horizon - 1, "landing " + t);
                for (int d = 0; d < horizon; d++) {
                    worked[t][d] = model.newBoolVar("worked " + t + " " + d);
                    List<BoolVar> hands = new ArrayList<>();
                    for (int p = 0; p < site.person().length; p++) {
                        if (site.can(p, t)) {
                            BoolVar hand = model.newBoolVar("hand " + t + " " + d + " " + p);
                            hands.add(hand);
                            busy.get(p * horizon + d).add(hand);
                        }
                    }
                    model.addEquality(LinearExpr.sum(hands.toArray(BoolVar[]::new)), worked[t][d]);
                    model.addGreaterOrEqual(landing[t], d).onlyEnforceIf(worked[t][d]);
                }
                model.addEquality(LinearExpr.sum(worked[t]), site.days()[t]);
            }
            busy.forEach(hands -> model.addAtMostOne(hands.toArray(BoolVar[]::new)));
            for (int t = 0; t < tasks; t++) {
                for (int k = 0; k < t; k++) {
                    if (site.isBefore(k, t)) {
                        for (int d = 0; d < horizon; d++) {
                            model.addLessThan(landing[k], d).onlyEnforceIf(worked[t][d]);
                        }
                    }
                }
            }
        }

        boolean canLand(int[] days) {
            for (int t = 0; t < days.length; t++) {
                model.addLessOrEqual(landing[t], days[t]);
            }
            return solver().solve(model) == CpSolverStatus.OPTIMAL;
        }

        /** A sum of landings under which no schedule is. */
        double bound() {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            Arrays.stream(landing).forEach(sum::add);
            model.minimize(sum);
            CpSolver solver = solver();
            assertThat(solver.solve(model)).isIn(CpSolverStatus.OPTIMAL, CpSolverStatus.FEASIBLE);
            return solver.bestObjectiveBound();
        }

        private static CpSolver solver() {
            CpSolver solver = new CpSolver();
            solver.getParameters().setNumWorkers(1).setRandomSeed(1).setMaxDeterministicTime(WORK);
            return solver;
        }
    }

    @Test
    void plans_with_people_can_be_kept_and_are_never_better_than_the_bound_of_a_constraint_solver() {
        SplittableRandom random = new SplittableRandom(7);
        double gaps = 0;
        int reached = 0;
        for (int i = 0; i < PROJECTS; i++) {
            SmallSite site = SmallSite.random(random, 8 + random.nextInt(3), 3, 5, 5);
            Inputs inputs = site.inputs();
            Plan plan = Planner.plan(inputs, 1, PASSES);
            int[] landing = IntStream.range(0, site.days().length)
                    .map(t -> plan.landing().get(position(inputs, "t" + t)) - inputs.asOf())
                    .toArray();
            assertThat(Arrays.stream(landing).sum()).as("project %d", i).isEqualTo((int) plan.objective());
            assertThat(new Model(site).canLand(landing)).as("project %d", i).isTrue();
            double bound = new Model(site).bound();
            assertThat(plan.objective()).as("project %d", i).isGreaterThanOrEqualTo(bound);
            gaps += (plan.objective() - bound) / bound;
            reached += plan.objective() == bound ? 1 : 0;
        }
        // measured with this seed: 0.0045, 11 of 13 reached; no outside source
        assertThat(gaps / PROJECTS)
                .as("mean gap %.4f, %d of %d reached", gaps / PROJECTS, reached, PROJECTS)
                .isLessThan(0.01);
    }
}
