package weekwright.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;

/**
 * Which work that can begin now gives the most story for the least delay: each task is put at the front of the order of work, and
 * futures of that order are held against futures of the order as it stands, drawn with the same seed, so that what differs is the
 * order and not the luck. Work with company by and work that happens once is never among it (rule 126). Immutable.
 *
 * @param version of the project it knows, as given
 * @param thin whether fewer weeks of story are in hand than the settings' floor
 * @param futures drawn of each order
 * @param rows the most minutes for a day of delay first
 */
public record StoryWork(long version, boolean thin, int futures, List<Row> rows) {
    /** Futures of each order: a difference of means is then known to a day or two even where landings differ by weeks. */
    static final int FUTURES = 400;

    /** Tasks that are tried, those with the most story first. */
    private static final int MOST = 8;
    /** Work that would begin this week, were it first, can begin now. */
    private static final int SOON_DAYS = 7;
    /** A delay under an hour or so is none. */
    private static final double NO_DELAY = 0.05;

    public StoryWork {
        rows = List.copyOf(rows);
    }

    /**
     * A task.
     *
     * @param minutes of story that it still adds to the bank
     * @param delayDays by which the stage that it puts off most lands later, the mean over futures
     * @param stage that stage, "" where none is open
     * @param emptyNow empty slots of the next twelve as the order stands, in the mean
     * @param emptyThen with the task first
     */
    public record Row(String task, double minutes, double delayDays, String stage, double emptyNow, double emptyThen) {
        /** Whether it holds nothing up. */
        public boolean free() {
            return delayDays < NO_DELAY;
        }

        double minutesForADay() {
            return minutes / Math.max(NO_DELAY, delayDays);
        }
    }

    /**
     * Tries them.
     *
     * @param plan the order of work that is followed
     * @param weeksInHand slots in a row that can be filled if nothing more is filmed
     */
    static StoryWork of(
            Inputs inputs, long version, Plan plan, int weeksInHand, int futures, int threads, Progress progress) {
        boolean thin = weeksInHand < inputs.publishing().bankFloorWeeks();
        Map<String, Double> gives = gives(inputs);
        Setup setup = new Setup(inputs);
        List<String> candidates = plan.ranks().stream()
                .filter(gives::containsKey)
                .sorted(Comparator.comparing((String id) -> -gives.get(id)))
                .toList();
        List<Row> rows = new ArrayList<>();
        if (candidates.isEmpty()) {
            return new StoryWork(version, thin, futures, rows);
        }
        LeverSide now = LeverSide.of(inputs, Simulation.run(setup, plan, futures, Forecasts.SEED, threads, progress));
        for (String id : candidates) {
            Plan first = Planner.follow(setup, forward(plan, id));
            if (rows.size() < MOST && begins(inputs, first, id)) {
                LeverSide then =
                        LeverSide.of(inputs, Simulation.run(setup, first, futures, Forecasts.SEED, threads, progress));
                rows.add(row(inputs, id, gives.get(id), now, then));
            }
        }
        rows.sort(Comparator.comparing((Row row) -> -row.minutesForADay()).thenComparing(row -> -row.minutes()));
        return new StoryWork(version, thin, futures, rows);
    }

    /** By task that may be proposed: minutes of story it still adds to the bank (rule 72). */
    private static Map<String, Double> gives(Inputs inputs) {
        Map<String, Double> told = WeeksInHand.told(inputs);
        Map<String, Double> gives = new HashMap<>();
        for (Inputs.Task task : inputs.tasks()) {
            boolean filmed = task.camera() == Inputs.Camera.FIXED || task.camera() == Inputs.Camera.OPERATOR;
            if (task.kind() == Inputs.Kind.WORK
                    && filmed
                    && task.company() != Inputs.Company.BY
                    && !task.storyTold()
                    && task.asideUntil() <= inputs.asOf()) {
                // what was done unfilmed yields nothing any more
                double sofar = WeeksInHand.filmed(task);
                double all = Math.min(1, sofar + 1 - WeeksInHand.doneShare(task));
                double had = Math.max(sofar, told.getOrDefault(task.id(), 0.0));
                double minutes = task.storyMinutes() * (all - had);
                if (minutes >= 0.5) {
                    gives.put(task.id(), minutes);
                }
            }
        }
        return gives;
    }

    private static Inputs.Kept forward(Plan plan, String id) {
        List<String> ranks = new ArrayList<>(plan.ranks());
        ranks.remove(id);
        ranks.add(0, id);
        return new Inputs.Kept(
                ranks,
                plan.notBefore().stream()
                        .filter(hold -> !hold.task().equals(id))
                        .toList());
    }

    private static boolean begins(Inputs inputs, Plan first, String id) {
        int t = IntStream.range(0, inputs.tasks().size())
                .filter(i -> inputs.tasks().get(i).id().equals(id))
                .findFirst()
                .orElseThrow();
        return first.start().get(t) < inputs.asOf() + SOON_DAYS;
    }

    /** The open stage of the build itself (or of what stands beside it, if there is nothing else) that is put off most, in the mean. */
    private static Row row(Inputs inputs, String id, double minutes, LeverSide now, LeverSide then) {
        boolean sideOnly = inputs.stages().stream().allMatch(Inputs.Stage::side);
        String stage = "";
        double most = Double.NEGATIVE_INFINITY;
        for (int s = 0; s < now.landing().length; s++) {
            Inputs.Stage one = inputs.stages().get(s);
            int[] before = now.landing()[s];
            int[] after = then.landing()[s];
            long sum = 0;
            int known = 0;
            for (int i = 0; i < before.length; i++) {
                if (before[i] >= inputs.asOf() && before[i] != Outcome.LATER && after[i] != Outcome.LATER) {
                    sum += after[i] - before[i];
                    known++;
                }
            }
            double days = known == 0 ? Double.NEGATIVE_INFINITY : (double) sum / known;
            if ((!one.side() || sideOnly) && one.weight() > 0 && days > most) {
                most = days;
                stage = one.id();
            }
        }
        return new Row(id, minutes, stage.isEmpty() ? 0 : most, stage, now.emptySlots(), then.emptySlots());
    }
}
