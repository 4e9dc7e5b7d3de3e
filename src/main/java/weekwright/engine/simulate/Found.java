package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.statistics.distribution.GammaDistribution;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.As;
import weekwright.engine.Inputs.Task;

/**
 * Found work (rule 122): the hours that turn up in a stage beside its listed tasks, as a share of those. Of a finished stage: hours of the
 * tasks put down after its first hours, divided by the hours of the rest.
 *
 * <p>A stage's share is exponential with rate λ, λ ~ Gamma(3 + n, rate 0.3 + Σ shares) after n finished stages: conjugate, and its
 * predictive mean (0.3 + Σ) / (2 + n) weighs the prior mean of 0.15 (trade judgement, no source) as two stages.
 *
 * <p>What turns up comes in jobs of their own, so what the parts of a stage bring is independent and adds up: a part p of it brings
 * gamma of shape p and rate λ (a gamma process, of which the exponential is the whole stage; the additivity of gamma shapes at a common
 * rate is standard). Near its end a stage therefore brings mostly nothing and now and then a whole job, and not a little every time.
 *
 * @param shares of the finished stages whose tasks say when they were put down
 * @param fixed the share as set, under 0 if it is learned
 */
public record Found(List<Double> shares, double fixed) {
    private static final double PRIOR_SHAPE = 3;
    private static final double PRIOR_RATE = 0.3;
    /** More than this is no stage that was planned at all. */
    private static final double MOST = 3;

    public Found {
        shares = List.copyOf(shares);
    }

    /**
     * Work that turned up.
     *
     * @param jobs how many tasks were put down after their stage's first hours
     * @param minutes logged on them
     * @param since the first such day, as epoch day; {@link Inputs#NONE} for none
     */
    public record TurnedUp(int jobs, long minutes, int since) {}

    /** What turned up so far, in finished stages and in those under way. */
    public static TurnedUp turnedUp(Inputs inputs) {
        int jobs = 0;
        long minutes = 0;
        int since = Inputs.NONE;
        Set<String> later = later(inputs);
        for (Task task : inputs.tasks()) {
            if (later.contains(task.id())) {
                jobs++;
                minutes += minutes(task);
                since = since == Inputs.NONE ? task.added() : Math.min(since, task.added());
            }
        }
        return new TurnedUp(jobs, minutes, since);
    }

    /** Tasks put down after their stage's first hours. */
    static Set<String> later(Inputs inputs) {
        Set<String> later = new HashSet<>();
        for (Inputs.Stage stage : inputs.stages()) {
            List<Task> tasks = inputs.tasks().stream()
                    .filter(task -> task.stage().equals(stage.id()) && task.dropped() == Inputs.NONE)
                    .toList();
            int first = firstHours(tasks);
            tasks.stream()
                    .filter(task -> first != Inputs.NONE && task.added() != Inputs.NONE && task.added() > first)
                    .forEach(task -> later.add(task.id()));
        }
        return later;
    }

    private static int firstHours(List<Task> tasks) {
        return tasks.stream()
                .flatMap(task -> task.log().stream())
                .filter(worked -> worked.as() == As.HANDS)
                .mapToInt(Inputs.Worked::date)
                .min()
                .orElse(Inputs.NONE);
    }

    private static long minutes(Task task) {
        return task.log().stream()
                .filter(worked -> worked.as() == As.HANDS)
                .mapToLong(Inputs.Worked::minutes)
                .sum();
    }

    static Found of(Inputs inputs) {
        List<Double> shares = new ArrayList<>();
        for (Inputs.Stage stage : inputs.stages()) {
            double share = share(inputs, stage.id());
            if (share >= 0) {
                shares.add(share);
            }
        }
        return new Found(shares, inputs.model().foundShare());
    }

    /** The found share of a finished stage; under 0 if it is not finished or tells nothing. */
    private static double share(Inputs inputs, String stage) {
        List<Task> tasks = inputs.tasks().stream()
                .filter(task -> task.stage().equals(stage) && task.dropped() == Inputs.NONE)
                .toList();
        boolean dated = tasks.stream().anyMatch(task -> task.added() != Inputs.NONE);
        if (!dated || tasks.stream().anyMatch(task -> task.done() == Inputs.NONE || task.done() > inputs.asOf())) {
            return -1;
        }
        int first = firstHours(tasks);
        long planned = 0;
        long found = 0;
        for (Task task : tasks) {
            long minutes = minutes(task);
            if (task.added() != Inputs.NONE && task.added() > first) {
                found += minutes;
            } else {
                planned += minutes;
            }
        }
        return planned == 0 ? -1 : (double) found / planned;
    }

    /** Whether anything is ever found. */
    public boolean any() {
        return fixed != 0;
    }

    /** The mean share. */
    public double mean() {
        return fixed >= 0 ? fixed : rate() / (shape() - 1);
    }

    private double shape() {
        return PRIOR_SHAPE + shares.size();
    }

    private double rate() {
        return PRIOR_RATE + shares.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** λ at u. */
    double lambda(double u) {
        return GammaDistribution.of(shape(), 1 / rate()).inverseCumulativeProbability(u);
    }

    /** λ in trials. */
    QuantileTable rates() {
        return QuantileTable.of("found rate", shape(), rate(), this::lambda);
    }

    /**
     * What turns up in the part of a stage that is open, as a share of that part, in a trial: with a fixed mean that mean's own spread.
     *
     * @param part of the stage's hours that is open, by which the drawn share of the whole stage is to be divided
     * @param unit gamma of shape {@code part} and rate 1
     */
    double share(double lambda, double part, double unit) {
        double mean = fixed >= 0 ? fixed : 1 / lambda;
        return StrictMath.min(MOST, mean * unit) / part;
    }

    /** Gamma of shape {@code part} and rate 1 in trials; null for a whole stage, whose exponential needs no table. */
    static QuantileTable units(double part) {
        return part >= 1
                ? null
                : QuantileTable.of(
                        "found part",
                        part,
                        1,
                        u -> GammaDistribution.of(part, 1).inverseCumulativeProbability(u));
    }
}
