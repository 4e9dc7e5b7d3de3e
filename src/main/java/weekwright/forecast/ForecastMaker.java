package weekwright.forecast;

import static java.util.Comparator.comparing;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.simulate.Learned;
import weekwright.engine.simulate.Simulation;

/** Turns the engine's numbers into a {@link Forecast}. Pure. */
final class ForecastMaker {
    private static final double[] RANGE = {0.1, 0.5, 0.8, 0.9};
    /** "Covered from", safe days and the runway hold in four of five futures. */
    private static final double FOUR_IN_FIVE = 0.8;
    /** Rule 92: the need-by day is the fifth percentile of five. */
    private static final double NEED = 0.2;
    /** Rule 75: the next twelve slots. */
    static final int NEXT_SLOTS = 12;

    private final Inputs inputs;
    private final Outcome outcome;
    private final Names names;
    private final OrderMaker orders;

    private ForecastMaker(Basis basis, Outcome outcome) {
        this.inputs = basis.inputs();
        this.outcome = outcome;
        this.names = basis.names();
        this.orders = new OrderMaker(inputs, outcome);
    }

    static Forecast of(Basis basis, Outcome outcome, long seed) {
        return new ForecastMaker(basis, outcome).forecast(seed);
    }

    private Forecast forecast(long seed) {
        return new Forecast(
                day(inputs.asOf()),
                outcome.trials,
                seed,
                Simulation.VERSION,
                day(outcome.horizon),
                effortRatio(),
                stages(),
                tasks(),
                episodes(),
                slots(inputs, outcome),
                everySlot(outcome),
                bank(),
                WeeksInHand.of(inputs, outcome.slots),
                orders.list(),
                cash());
    }

    private Forecast.EffortRatio effortRatio() {
        double[] q = Outcome.quantiles(outcome.effortRatio, 0.1, 0.5, 0.9);
        return new Forecast.EffortRatio(
                q[0], q[1], q[2], new Learned(inputs).ratio().finished());
    }

    private List<Forecast.Stage> stages() {
        List<Forecast.Stage> stages = new ArrayList<>();
        for (int s = 0; s < inputs.stages().size(); s++) {
            Inputs.Stage stage = inputs.stages().get(s);
            stages.add(new Forecast.Stage(
                    stage.id(),
                    names.stage(stage.id()),
                    days(outcome.held.stageStart[s]),
                    days(outcome.held.stageLanding[s]),
                    days(outcome.workFirst.stageLanding[s]),
                    heldBy(s),
                    rough(s),
                    materials(s),
                    JointMaker.of(inputs, outcome, s)));
        }
        return stages;
    }

    private List<Forecast.HeldBy> heldBy(int stage) {
        long[] columns = outcome.heldBy[stage];
        double all = Arrays.stream(columns).sum();
        Map<Outcome.Reason, Long> days = new LinkedHashMap<>();
        for (int r = 0; r < columns.length; r++) {
            if (columns[r] > 0) {
                days.merge(outcome.reasons.get(r), columns[r], Long::sum);
            }
        }
        List<Forecast.HeldBy> list = new ArrayList<>();
        days.forEach((reason, sum) -> list.add(new Forecast.HeldBy(word(reason.kind()), reason.what(), sum / all)));
        list.sort(comparing(Forecast.HeldBy::share).reversed());
        return list;
    }

    private static String word(Outcome.Held kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** Rule 121: its tasks without hours at what they were drawn to, and what its rough hours hold beyond its listed tasks. */
    private Forecast.Rough rough(int s) {
        Inputs.Stage stage = inputs.stages().get(s);
        int tasks = 0;
        double minutes = 0;
        for (int t = 0; t < inputs.tasks().size(); t++) {
            Inputs.Task task = inputs.tasks().get(t);
            boolean open = task.done() == Inputs.NONE && task.dropped() == Inputs.NONE;
            if (task.stage().equals(stage.id())
                    && open
                    && task.kind() == Inputs.Kind.WORK
                    && !task.estimate().given()
                    && task.leftMinutes() < 0) {
                tasks++;
                minutes += Arrays.stream(outcome.taskDrawn[t]).average().orElse(0);
            }
        }
        if (stage.roughMinutes().given()) {
            minutes += Math.max(0, stage.roughMinutes().mean() - WeeksInHand.listedMinutes(inputs, stage.id()));
        }
        return new Forecast.Rough(tasks, new Hours((int) Math.round(minutes)));
    }

    private Forecast.Materials materials(int s) {
        long[] shortfall = Outcome.quantiles(outcome.stageShort[s], 0.5, 0.9);
        int covered = 0;
        for (long minor : outcome.stageShort[s]) {
            covered += minor == 0 ? 1 : 0;
        }
        int enough = (int) Math.ceil(FOUR_IN_FIVE * outcome.trials - 1e-9);
        Optional<LocalDate> from = Optional.empty();
        for (int w = 0; w < outcome.weeks.length && from.isEmpty(); w++) {
            if (outcome.stageCovered[s][w] >= enough) {
                from = Optional.of(day(outcome.weeks[w]));
            }
        }
        return new Forecast.Materials(
                new Money(outcome.stageNeed[s]),
                orders.needBy(inputs.stages().get(s).id()),
                orders.orderBy(inputs.stages().get(s).id()),
                (double) covered / outcome.trials,
                new Forecast.Shortfall(new Money(shortfall[0]), new Money(shortfall[1])),
                from);
    }

    private List<Forecast.Task> tasks() {
        List<Forecast.Task> tasks = new ArrayList<>();
        Correlation[] byStage = new Correlation[inputs.stages().size()];
        for (int t = 0; t < inputs.tasks().size(); t++) {
            Inputs.Task task = inputs.tasks().get(t);
            if (task.dropped() != Inputs.NONE) {
                continue;
            }
            Forecast.Days start = task.started() != Inputs.NONE
                    ? Forecast.Days.past(day(task.started()))
                    : days(outcome.taskStart[t]);
            if (task.done() != Inputs.NONE) {
                Forecast.Days done = Forecast.Days.past(day(task.done()));
                tasks.add(new Forecast.Task(task.id(), task.started() != Inputs.NONE ? start : done, done, 0, 0));
                continue;
            }
            int s = stageIndex(task.stage());
            if (byStage[s] == null) {
                byStage[s] = new Correlation(outcome.held.stageLanding[s]);
            }
            tasks.add(new Forecast.Task(
                    task.id(),
                    start,
                    days(outcome.taskLanding[t]),
                    (double) outcome.critical[t] / outcome.trials,
                    byStage[s].with(outcome.taskDrawn[t])));
        }
        return tasks;
    }

    private int stageIndex(String id) {
        for (int s = 0; s < inputs.stages().size(); s++) {
            if (inputs.stages().get(s).id().equals(id)) {
                return s;
            }
        }
        throw new IllegalArgumentException("no stage " + id);
    }

    private List<Forecast.Episode> episodes() {
        List<Forecast.Episode> episodes = new ArrayList<>();
        for (int e = 0; e < inputs.episodes().size(); e++) {
            Inputs.Episode episode = inputs.episodes().get(e);
            if (episode.published() == Inputs.NONE) {
                episodes.add(episode(e, episode));
            }
        }
        return episodes;
    }

    private Forecast.Episode episode(int e, Inputs.Episode episode) {
        int early = inputs.publishing().earlyDays();
        int[] cut = outcome.episodeCut[e];
        int safe = Outcome.quantile(cut, FOUR_IN_FIVE);
        Optional<LocalDate> safeFrom = safe == Outcome.LATER
                ? Optional.empty()
                : Arrays.stream(outcome.slots)
                        .filter(slot -> slot - early >= safe)
                        .mapToObj(ForecastMaker::day)
                        .findFirst();
        if (episode.slot() == Inputs.NONE) {
            return new Forecast.Episode(episode.id(), Optional.empty(), Optional.empty(), safeFrom, Optional.empty());
        }
        int due = episode.slot() - early;
        int inTime = 0;
        int[] late = new int[inputs.tasks().size()];
        for (int trial = 0; trial < outcome.trials; trial++) {
            if (cut[trial] <= due) {
                inTime++;
            } else if (outcome.episodeLast[e][trial] >= 0) {
                late[outcome.episodeLast[e][trial]]++;
            }
        }
        int latest = 0;
        for (int t = 1; t < late.length; t++) {
            latest = late[t] > late[latest] ? t : latest;
        }
        Optional<String> lateBy = late.length == 0 || late[latest] == 0
                ? Optional.empty()
                : Optional.of(inputs.tasks().get(latest).id());
        return new Forecast.Episode(
                episode.id(),
                Optional.of(day(episode.slot())),
                Optional.of((double) inTime / outcome.trials),
                safeFrom,
                lateBy);
    }

    /** Rule 75: the next twelve are the first twelve slots after the as-of day. */
    static Forecast.Slots slots(Inputs inputs, Outcome outcome) {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < outcome.slots.length && indices.size() < NEXT_SLOTS; i++) {
            if (outcome.slots[i] > inputs.asOf()) {
                indices.add(i);
            }
        }
        long empty = 0;
        int none = 0;
        for (int trial = 0; trial < outcome.trials; trial++) {
            int here = 0;
            for (int i : indices) {
                here += outcome.slot[i][trial] == Outcome.Slot.EMPTY.ordinal() ? 1 : 0;
            }
            empty += here;
            none += here == 0 ? 1 : 0;
        }
        return new Forecast.Slots((double) empty / outcome.trials, (double) none / outcome.trials);
    }

    /** The chance of each slot to stay empty. */
    static List<Forecast.SlotChance> everySlot(Outcome outcome) {
        List<Forecast.SlotChance> chances = new ArrayList<>();
        for (int i = 0; i < outcome.slots.length; i++) {
            int empty = 0;
            for (byte what : outcome.slot[i]) {
                empty += what == Outcome.Slot.EMPTY.ordinal() ? 1 : 0;
            }
            chances.add(new Forecast.SlotChance(day(outcome.slots[i]), (double) empty / outcome.trials));
        }
        return chances;
    }

    private List<Forecast.BankWeek> bank() {
        List<Forecast.BankWeek> weeks = new ArrayList<>();
        for (int w = 0; w < outcome.weeks.length; w++) {
            double[] q = Outcome.quantiles(outcome.bank[w], 0.1, 0.5, 0.9);
            weeks.add(new Forecast.BankWeek(day(outcome.weeks[w]), q[0], q[1], q[2]));
        }
        return weeks;
    }

    private Forecast.Cash cash() {
        List<Forecast.CashWeek> weeks = new ArrayList<>();
        List<Forecast.UnspentWeek> unspent = new ArrayList<>();
        List<Forecast.PutByWeek> putBy = new ArrayList<>();
        for (int w = 0; w < outcome.weeks.length; w++) {
            LocalDate sunday = day(outcome.weeks[w]);
            Money[] q = money(outcome.held.cash[w], 0.1, 0.5, 0.9);
            weeks.add(new Forecast.CashWeek(sunday, q[0], q[1], q[2]));
            Money[] u = money(outcome.unspent[w], 0.1, 0.25, 0.5, 0.75, 0.9);
            unspent.add(new Forecast.UnspentWeek(sunday, u[0], u[1], u[2], u[3], u[4]));
            putBy.add(new Forecast.PutByWeek(sunday, money(outcome.putBy[w], 0.5)[0]));
        }
        return new Forecast.Cash(
                new Money(inputs.money().cashMinor()),
                new Money(inputs.money().availableMinor()),
                weeks,
                unspent,
                putBy,
                supporters(),
                months(outcome.workFirst.underReserve),
                months(outcome.workFirst.underZero),
                lastDay(outcome.workFirst.firstUnderZero),
                lastDay(outcome.firstUnderWithoutPledges));
    }

    /** The as-of month has begun, and the last one may not be looked at to its end: whole months only. */
    private List<Forecast.SupportersMonth> supporters() {
        if (inputs.levels().isEmpty()) {
            return List.of();
        }
        List<Forecast.SupportersMonth> months = new ArrayList<>();
        for (int m = 1; m < outcome.months.length - 1; m++) {
            int[] people = Outcome.quantiles(outcome.supporters[m], 0.1, 0.5, 0.9);
            Money[] paid = money(outcome.paidOut[m], 0.1, 0.5, 0.9);
            months.add(new Forecast.SupportersMonth(
                    month(m), people[0], people[1], people[2], new Forecast.PaidOut(paid[0], paid[1], paid[2])));
        }
        return months;
    }

    private YearMonth month(int m) {
        return YearMonth.of(outcome.months[m] / 12, outcome.months[m] % 12 + 1);
    }

    private List<Forecast.MonthChance> months(boolean[][] under) {
        List<Forecast.MonthChance> months = new ArrayList<>();
        for (int m = 0; m < outcome.months.length; m++) {
            int count = 0;
            for (boolean one : under[m]) {
                count += one ? 1 : 0;
            }
            months.add(new Forecast.MonthChance(month(m), (double) count / outcome.trials));
        }
        return months;
    }

    /** Rule 90: the last day up to which at least four of five futures have not yet had their first day under. */
    static Optional<LocalDate> lastDay(int[] firstUnder) {
        int[] sorted = firstUnder.clone();
        Arrays.sort(sorted);
        int mayHave = (int) Math.floor((1 - FOUR_IN_FIVE) * sorted.length + 1e-9);
        int first = sorted[Math.min(mayHave, sorted.length - 1)];
        return first == Outcome.LATER ? Optional.empty() : Optional.of(day(first - 1));
    }

    private static Money[] money(long[] perTrial, double... q) {
        return Arrays.stream(Outcome.quantiles(perTrial, q))
                .mapToObj(Money::new)
                .toArray(Money[]::new);
    }

    static Forecast.Days days(int[] perTrial) {
        int[] q = Outcome.quantiles(perTrial, RANGE);
        if (q[0] == Inputs.NONE) {
            return Forecast.Days.NONE;
        }
        return new Forecast.Days(date(q[0]), date(q[1]), date(q[2]), date(q[3]), Outcome.beyond(perTrial));
    }

    static Optional<LocalDate> date(int day) {
        return day == Outcome.LATER ? Optional.empty() : Optional.of(day(day));
    }

    static LocalDate day(int day) {
        return LocalDate.ofEpochDay(day);
    }

    /** The day by which in one of five futures a line is needed. */
    static int need(int[] perTrial) {
        return Outcome.quantile(perTrial, NEED);
    }

    static final Comparator<Forecast.Order> BY_DAY =
            comparing(order -> order.orderBy().orElse(LocalDate.MAX));
}
