package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.db.Db;
import weekwright.db.Read;
import weekwright.engine.plan.Plan;

/**
 * Draws futures of the slots as they are planned and as they might be, in pairs: the same seed and order of work, so that
 * what differs is the change and not the luck. What was drawn is kept while nothing changes. One
 * question at a time is worked on. Safe for use from several threads.
 */
public final class SlotFutures {
    /** Futures of each plan: an even chance then has a standard error of 3.5 in a hundred, a difference of two a smaller one. */
    public static final int FUTURES = 200;

    private static final int MOST_KEPT = 40;

    private final int futures;
    private Optional<Key> key = Optional.empty();
    private Optional<ForecastRun.Planned> planned = Optional.empty();
    private Optional<SlotOutlook> standing = Optional.empty();
    private final Map<SlotPlan, SlotOutlook> drawn = new HashMap<>();

    private record Key(Db db, long version, LocalDate day) {}

    /** What was read on one view. */
    private record Asked(long version, Basis basis, Map<SlotPlan, Basis> changed, List<SlotPlan> plans) {}

    /**
     * Plans side by side.
     *
     * @param now as planned
     * @param then as changed, in the order of the question
     * @param futures drawn of each
     */
    public record Compared(SlotOutlook now, List<SlotOutlook> then, int futures) {}

    public SlotFutures() {
        this(FUTURES);
    }

    /** With another number of futures. */
    public SlotFutures(int futures) {
        this.futures = futures;
    }

    /**
     * Compares the plan as it stands with others.
     *
     * @param shown the newest forecast, whose order of work is taken over where it knows the project as it stands
     * @param changes makes the others, on the view on which all is read
     */
    public synchronized Compared compare(
            Db db, LocalDate day, Optional<Forecasts.Shown> shown, Function<Read, List<SlotPlan>> changes) {
        Asked asked = db.read(read -> {
            Source source = Source.of(read);
            List<SlotPlan> plans = changes.apply(read);
            Map<SlotPlan, Basis> changed = new HashMap<>();
            plans.forEach(plan -> changed.put(plan, InputsBuilder.build(plan.over(source), day)));
            Basis basis = InputsBuilder.build(read, day);
            return new Asked(basis.version(), basis, changed, plans);
        });
        Key wanted = new Key(db, asked.version(), day);
        if (!key.equals(Optional.of(wanted))) {
            planned = Optional.of(shown.filter(one -> one.version() == asked.version()
                            && one.forecast().asOf().equals(day))
                    .flatMap(Forecasts.Shown::plan)
                    .map(plan -> new ForecastRun.Planned(asked.basis(), Forecasts.SEED, plan))
                    .orElseGet(() -> new ForecastRun.Planned(asked.basis(), Forecasts.SEED)));
            standing = Optional.of(drawn(asked.basis(), planned.get()));
            drawn.clear();
            key = Optional.of(wanted);
        }
        if (drawn.size() > MOST_KEPT) {
            drawn.clear();
        }
        Plan order = planned.orElseThrow().plan();
        List<SlotOutlook> then = new ArrayList<>();
        for (SlotPlan plan : asked.plans()) {
            Basis basis = asked.changed().get(plan);
            then.add(drawn.computeIfAbsent(
                    plan, one -> drawn(basis, new ForecastRun.Planned(basis, Forecasts.SEED, order))));
        }
        return new Compared(standing.orElseThrow(), then, futures);
    }

    private SlotOutlook drawn(Basis basis, ForecastRun.Planned run) {
        int threads = Runtime.getRuntime().availableProcessors();
        return SlotOutlook.of(basis, run.outcome(futures, threads, done -> true));
    }
}
