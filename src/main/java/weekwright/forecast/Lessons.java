package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.Task;
import weekwright.db.Read;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.EffortRatio;
import weekwright.engine.simulate.Found;
import weekwright.engine.simulate.LateTogether;
import weekwright.engine.simulate.Learned;

/**
 * What the crew's own records teach the forecast, with what it is learned from: how long work takes, how much of the stated hours is
 * there, what turns up, what fails, what surges.
 *
 * @param ratio the effort ratio: middle and four-in-five range
 * @param tasks those it is learned from, the last finished first
 * @param trades ratios of trades with three finished tasks and more, the longest first
 * @param ignored titles of finished tasks on which next to nothing was logged
 * @param turnout by person
 * @param found what turns up
 * @param turnedUp what has turned up so far
 * @param guessing open tasks without hours
 * @param failing open tasks that may fail
 * @param redone how those did that might have failed
 * @param surging of supporters, nothing while nobody was counted
 * @param wandering of joining
 * @param editing how long editing takes
 * @param purchases what received lines teach of prices and leads
 * @param late whether deliveries are late together
 */
public record Lessons(
        Ratio ratio,
        List<TaskRatio> tasks,
        List<TradeRatio> trades,
        List<String> ignored,
        List<Turnout> turnout,
        Found found,
        Found.TurnedUp turnedUp,
        Learned.Guessing guessing,
        List<Failing> failing,
        Redone redone,
        Optional<Learned.Surging> surging,
        Optional<Learned.Wandering> wandering,
        Editing editing,
        PurchaseLessons purchases,
        LateTogether late) {
    private static final int ENOUGH_OF_A_TRADE = 3;

    /** How many times the estimate work takes, and from how many finished tasks. */
    public record Ratio(double p10, double p50, double p90, int finished) {
        static Ratio of(EffortRatio one) {
            return new Ratio(one.ratioQuantile(0.1), one.ratioQuantile(0.5), one.ratioQuantile(0.9), one.finished());
        }
    }

    /** @param weight how much it counts, 1 for one finished today */
    public record TaskRatio(
            String id, String title, LocalDate done, double estimateMinutes, int actualMinutes, double weight) {
        public double times() {
            return actualMinutes / estimateMinutes;
        }
    }

    /**
     * How long editing takes, from the episodes that are ready.
     *
     * @param ratio logged over estimated hours
     * @param perFinished minutes of editing for a finished minute; 0 where no length is known
     */
    public record Editing(Ratio ratio, double perFinished, List<TaskRatio> episodes) {}

    /** The weighted geometric mean of a trade's tasks. */
    public record TradeRatio(String trade, double times, int tasks) {}

    /** @param statedMinutes of a usual week */
    public record Turnout(String name, int statedMinutes, double mean, int weeks, boolean set) {}

    public record Failing(String id, String title, double chance, double again) {}

    /**
     * Finished tasks with a chance to fail.
     *
     * @param expected how many of them were to be done again by their chances
     * @param again how many were
     */
    public record Redone(int finished, double expected, int again) {}

    /** Reads them as of a day. */
    public static Lessons of(Read read, LocalDate day) {
        Basis basis = InputsBuilder.build(read, day);
        Facts facts = Facts.of(Source.of(read), day);
        Inputs inputs = basis.inputs();
        Learned learned = new Learned(inputs);
        EffortRatio ratio = learned.ratio();
        List<TaskRatio> tasks = new ArrayList<>();
        Map<String, double[]> trades = new LinkedHashMap<>();
        for (Learned.Finished one : learned.finished()) {
            Inputs.Task task = inputs.tasks().get(one.task());
            tasks.add(new TaskRatio(
                    task.id(),
                    basis.names().task(task.id()),
                    LocalDate.ofEpochDay(task.done()),
                    one.estimateMinutes(),
                    one.actualMinutes(),
                    one.ageWeight()));
            for (String trade : task.trades()) {
                double[] sums = trades.computeIfAbsent(trade, word -> new double[3]);
                sums[0] += one.ageWeight() * StrictMath.log(one.actualMinutes() / one.estimateMinutes());
                sums[1] += one.ageWeight();
                sums[2]++;
            }
        }
        tasks.sort((a, b) -> b.done().compareTo(a.done()));
        return new Lessons(
                Ratio.of(ratio),
                List.copyOf(tasks),
                trades.entrySet().stream()
                        .filter(entry -> entry.getValue()[2] >= ENOUGH_OF_A_TRADE)
                        .map(entry -> new TradeRatio(
                                entry.getKey(), StrictMath.exp(entry.getValue()[0] / entry.getValue()[1]), (int)
                                        entry.getValue()[2]))
                        .sorted((a, b) -> Double.compare(b.times(), a.times()))
                        .toList(),
                learned.ignored().stream().map(basis.names()::task).toList(),
                turnout(inputs, learned, basis.names()),
                learned.found(),
                Found.turnedUp(inputs),
                learned.guessing(),
                inputs.tasks().stream()
                        .filter(task ->
                                task.failPercent() > 0 && task.done() == Inputs.NONE && task.dropped() == Inputs.NONE)
                        .map(task -> new Failing(
                                task.id(),
                                basis.names().task(task.id()),
                                task.failPercent() / 100,
                                task.redoPercent() / 100))
                        .toList(),
                redone(facts, day),
                learned.surging(),
                learned.wandering(),
                editing(new EditHours(facts), basis.names()),
                PurchaseLessons.of(read, day),
                learned.late());
    }

    private static Redone redone(Facts facts, LocalDate day) {
        Set<String> again = facts.tasks().stream()
                .flatMap(task -> task.redoOf().stream())
                .map(Id::folded)
                .collect(Collectors.toSet());
        List<Task> finished = facts.tasks().stream()
                .filter(task -> task.fail()
                        .filter(chance -> chance.compareTo(Quantity.ZERO) > 0)
                        .isPresent())
                .filter(task -> task.done().filter(done -> !done.isAfter(day)).isPresent())
                .filter(task -> task.dropped().isEmpty())
                .toList();
        return new Redone(
                finished.size(),
                finished.stream()
                        .mapToDouble(task -> task.fail().orElseThrow().doubleValue() / 100)
                        .sum(),
                (int) finished.stream()
                        .filter(task -> again.contains(task.id().folded()))
                        .count());
    }

    /** How long editing takes, as of a day. */
    public static Editing editing(Read read, LocalDate day) {
        return editing(new EditHours(Facts.of(Source.of(read), day)), InputsBuilder.names(read));
    }

    private static Editing editing(EditHours hours, Names names) {
        double logged = 0;
        double finished = 0;
        List<TaskRatio> episodes = new ArrayList<>();
        for (EditHours.Edited one : hours.finished()) {
            if (one.finishedMinutes() > 0) {
                logged += one.loggedMinutes();
                finished += one.finishedMinutes();
            }
            episodes.add(new TaskRatio(
                    one.id(), names.episode(one.id()), one.ready(), one.estimateMinutes(), one.loggedMinutes(), 1));
        }
        episodes.sort((a, b) -> b.done().compareTo(a.done()));
        EffortRatio ratio = hours.ratio();
        return new Editing(Ratio.of(ratio), finished == 0 ? 0 : logged / finished, List.copyOf(episodes));
    }

    private static List<Turnout> turnout(Inputs inputs, Learned learned, Names names) {
        List<Turnout> all = new ArrayList<>();
        List<Learned.TurnoutOf> found = learned.turnout();
        for (int p = 0; p < found.size(); p++) {
            int stated = inputs.crew().get(p).weekdayMinutes().stream()
                    .mapToInt(Integer::intValue)
                    .sum();
            boolean gone = inputs.crew().get(p).to() != Inputs.NONE
                    && inputs.crew().get(p).to() < inputs.asOf();
            if (stated > 0 && !gone) {
                Learned.TurnoutOf one = found.get(p);
                all.add(new Turnout(names.person(one.crew()), stated, one.mean(), one.weeks(), one.set()));
            }
        }
        return all;
    }
}
