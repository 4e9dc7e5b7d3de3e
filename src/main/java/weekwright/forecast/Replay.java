package weekwright.forecast;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import weekwright.build.SettingsStore;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.PiecesLog;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.engine.simulate.Stopped;

/** Makes the forecasts of past Fridays from what was known on them, and sets what happened beside them. */
public final class Replay {
    /** Futures of each Friday. */
    public static final int TRIALS = 400;

    private static final int VELOCITY_DAYS = 56;
    private static final int PASSES = 10;

    private Replay() {}

    /** What was known on a Friday. */
    public record Past(Basis basis, boolean saved) {}

    /**
     * All that a record is made from.
     *
     * @param now what is known today
     */
    public record Asked(Basis now, List<Past> fridays, Optional<LocalDate> estimatesFrom) {}

    /**
     * From a store: a Friday's inputs are those of the newest forecast kept in its week up to it, else rows as the change log had them
     * on its evening.
     */
    public static Asked ask(Read read, LocalDate today) {
        Basis now = InputsBuilder.build(read, today);
        ZoneId zone = SettingsStore.get(read).zone();
        Function<LocalDate, Source> past = PastSource.of(read, zone);
        List<Past> fridays = new ArrayList<>();
        for (LocalDate friday : fridays(now.inputs(), today)) {
            Optional<SavedForecast> saved = SavedForecastStore.newest(read, friday)
                    .filter(one -> one.day().isAfter(friday.minusDays(7)));
            fridays.add(saved.map(one -> new Past(
                            new Basis(one.unpackedInputs(), now.names(), now.currency(), one.projectVersion()), true))
                    .orElseGet(() -> new Past(InputsBuilder.build(past.apply(friday), friday), false)));
        }
        return new Asked(now, fridays, History.first(read).map(at -> LocalDate.ofInstant(at, zone)));
    }

    /** From plain files, which have no history: what carries no date stands as it does now. */
    public static Asked ask(Source files, LocalDate today) {
        Basis now = InputsBuilder.build(files, today);
        List<Past> fridays = fridays(now.inputs(), today).stream()
                .map(friday -> new Past(InputsBuilder.build(PastSource.of(files, friday), friday), false))
                .toList();
        return new Asked(now, fridays, Optional.empty());
    }

    /** From the first after work has begun to the last before today. */
    private static List<LocalDate> fridays(Inputs now, LocalDate today) {
        Optional<LocalDate> begun = now.tasks().stream()
                .filter(task -> task.started() != Inputs.NONE)
                .map(task -> LocalDate.ofEpochDay(task.started()))
                .min(LocalDate::compareTo);
        return begun.map(day -> day.plusDays(1)
                        .with(TemporalAdjusters.nextOrSame(DayOfWeek.FRIDAY))
                        .datesUntil(today, Period.ofWeeks(1))
                        .toList())
                .filter(days -> !days.isEmpty())
                .orElse(List.of());
    }

    /**
     * Makes the record.
     *
     * @param progress told of each Friday made
     */
    public static TrackRecord run(Asked asked, int threads, Progress progress) {
        Map<String, LocalDate> landed = landed(asked.now().inputs());
        List<TrackRecord.Friday> fridays = new ArrayList<>();
        for (Past past : asked.fridays()) {
            fridays.add(friday(past, asked.now().names(), landed, threads));
            if (!progress.done(fridays.size())) {
                throw new Stopped(fridays.size(), asked.fridays().size());
            }
        }
        return new TrackRecord(asked.now().asOf(), fridays, asked.estimatesFrom());
    }

    /** Stages all of whose tasks are done, and when the last was. */
    private static Map<String, LocalDate> landed(Inputs now) {
        Map<String, LocalDate> landed = new HashMap<>();
        Set<String> open = new HashSet<>();
        for (Inputs.Task task : now.tasks()) {
            if (task.dropped() != Inputs.NONE) {
                continue;
            }
            if (task.done() == Inputs.NONE) {
                open.add(task.stage());
            } else {
                landed.merge(task.stage(), LocalDate.ofEpochDay(task.done()), (a, b) -> a.isAfter(b) ? a : b);
            }
        }
        landed.keySet().removeAll(open);
        return landed;
    }

    private static TrackRecord.Friday friday(Past past, Names names, Map<String, LocalDate> landed, int threads) {
        Inputs inputs = past.basis().inputs();
        Setup setup = new Setup(inputs);
        Plan plan = Planner.plan(setup, Forecasts.SEED, PASSES);
        Outcome outcome = Simulation.run(setup, plan, TRIALS, Forecasts.SEED, threads, Progress.NONE);
        List<TrackRecord.Stage> stages = new ArrayList<>();
        for (int s = 0; s < inputs.stages().size(); s++) {
            Inputs.Stage stage = inputs.stages().get(s);
            if (inputs.tasks().stream()
                    .anyMatch(task -> open(task) && task.stage().equals(stage.id()))) {
                stages.add(stage(inputs, plan, outcome, s, names, Optional.ofNullable(landed.get(stage.id()))));
            }
        }
        return new TrackRecord.Friday(past.basis().asOf(), past.saved(), stages);
    }

    private static TrackRecord.Stage stage(
            Inputs inputs, Plan plan, Outcome outcome, int s, Names names, Optional<LocalDate> landed) {
        Inputs.Stage stage = inputs.stages().get(s);
        int[] drawn = outcome.held.stageLanding[s].clone();
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = Math.min(drawn[i], outcome.horizon);
        }
        Arrays.sort(drawn);
        int[] said = Outcome.quantiles(drawn, 0.1, 0.5, 0.9);
        int planned = inputs.asOf();
        for (int t = 0; t < inputs.tasks().size(); t++) {
            if (open(inputs.tasks().get(t)) && inputs.tasks().get(t).stage().equals(stage.id())) {
                planned = Math.max(
                        planned, Math.min(outcome.horizon, plan.landing().get(t)));
            }
        }
        double likely = rivalWeeks(inputs, stage, statedMinutes(inputs));
        double rate = recentMinutes(inputs);
        double velocity = rate > 0 ? rivalWeeks(inputs, stage, rate) : likely;
        return new TrackRecord.Stage(
                stage.id(),
                names.stage(stage.id()),
                Arrays.stream(drawn).asDoubleStream().toArray(),
                LocalDate.ofEpochDay(said[0]),
                LocalDate.ofEpochDay(said[1]),
                LocalDate.ofEpochDay(said[2]),
                LocalDate.ofEpochDay(planned),
                after(inputs, velocity, outcome.horizon),
                after(inputs, likely, outcome.horizon),
                landed);
    }

    private static LocalDate after(Inputs inputs, double weeks, int horizon) {
        return LocalDate.ofEpochDay((long) Math.min(horizon, inputs.asOf() + Math.ceil(7 * weeks)));
    }

    private static boolean open(Inputs.Task task) {
        return task.done() == Inputs.NONE && task.dropped() == Inputs.NONE;
    }

    /** Remaining likely minutes of the open tasks of stages of this or lower order, at a rate of minutes a week (rule 97). */
    private static double rivalWeeks(Inputs inputs, Inputs.Stage stage, double rate) {
        Set<String> upTo = new HashSet<>();
        inputs.stages().stream().filter(other -> other.order() <= stage.order()).forEach(other -> upTo.add(other.id()));
        double left = inputs.tasks().stream()
                .filter(task -> open(task) && upTo.contains(task.stage()))
                .mapToDouble(task -> Math.max(0, likely(task) - logged(task)))
                .sum();
        return rate > 0 ? left / rate : Double.MAX_VALUE;
    }

    private static double likely(Inputs.Task task) {
        return task.kind() == Inputs.Kind.WORK && task.estimate().given()
                ? task.estimate().likely() * PiecesLog.unitSum(1, Math.max(1, task.pieces()), task.learningPercent())
                : 0;
    }

    private static int logged(Inputs.Task task) {
        return task.log().stream()
                .filter(entry -> entry.as() == Inputs.As.HANDS)
                .mapToInt(Inputs.Worked::minutes)
                .sum();
    }

    private static double statedMinutes(Inputs inputs) {
        return inputs.crew().stream()
                .filter(one -> (one.from() == Inputs.NONE || one.from() <= inputs.asOf())
                        && (one.to() == Inputs.NONE || one.to() >= inputs.asOf()))
                .mapToInt(one -> one.weekdayMinutes().stream().mapToInt(m -> m).sum())
                .sum();
    }

    /** Likely minutes a week of what was finished in the last eight weeks, of the whole record if nothing was. */
    private static double recentMinutes(Inputs inputs) {
        double recent = finished(inputs, inputs.asOf() - VELOCITY_DAYS);
        if (recent > 0) {
            return recent * 7 / VELOCITY_DAYS;
        }
        int begun = inputs.tasks().stream()
                .filter(task -> task.started() != Inputs.NONE)
                .mapToInt(Inputs.Task::started)
                .min()
                .orElse(inputs.asOf());
        return finished(inputs, Integer.MIN_VALUE) * 7 / Math.max(7, inputs.asOf() - begun);
    }

    private static double finished(Inputs inputs, int after) {
        return inputs.tasks().stream()
                .filter(task -> task.done() != Inputs.NONE && task.done() > after)
                .mapToDouble(Replay::likely)
                .sum();
    }
}
