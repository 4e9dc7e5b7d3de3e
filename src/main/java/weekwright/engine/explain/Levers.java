package weekwright.engine.explain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import weekwright.engine.Inputs;

/**
 * Changes tried in the forecast, one or several at once: they make other inputs of given ones, so that futures of both can be
 * drawn with the same luck. Nothing of the project is touched.
 *
 * @param weekMinutes by crew id, so many minutes a week more or (negative) fewer, in the proportion of the person's weekday
 *     hours; of somebody without weekday hours from Monday to Friday alike. Hours of a season move by the same share
 * @param helper another pair of hands
 * @param supportersPercent so many percent of the supporters of each level more or (negative) fewer, at once
 * @param pricesPercent on the prices of what is not ordered yet
 * @param dropped ids of tasks that are not done at all
 * @param postponed by task id, the first day on which it may start; a booking before that day moves to it
 * @param everyWeeks weeks from one slot to the next, 0 as it is
 * @param grant a sum paid in
 * @param filmPercent length of films, and hours to edit them, of what they are now; 100 as it is
 * @param onDeposit an order goes out as soon as its deposit leaves the reserve untouched: the balance is expected to be there
 * @param leftEmpty so many slots from the next on stay empty, whatever is ready
 */
public record Levers(
        Map<String, Integer> weekMinutes,
        Helper helper,
        int supportersPercent,
        int pricesPercent,
        Set<String> dropped,
        Map<String, Integer> postponed,
        int everyWeeks,
        Grant grant,
        int filmPercent,
        boolean onDeposit,
        int leftEmpty) {
    /** Id of the pair of hands that is tried: no crew id can hold a space. */
    private static final String HELPER = "tried helper";
    /** Id of the sum that is tried. */
    private static final String GRANT = "tried grant";

    private static final int WORKDAYS = 5;
    private static final int WEEKDAYS = 7;

    /** Nothing changed. */
    public static final Levers NONE =
            new Levers(Map.of(), Helper.NOBODY, 0, 0, Set.of(), Map.of(), 0, new Grant(0, Inputs.NONE), 100, false, 0);

    /**
     * Somebody more from a day on, kept from every hazard, unpaid.
     *
     * @param weekMinutes from Monday to Friday alike, 0 for nobody
     * @param trade the one trade known, "" for none
     * @param from first day or {@link Inputs#NONE}
     */
    public record Helper(int weekMinutes, String trade, int from) {
        public static final Helper NOBODY = new Helper(0, "", Inputs.NONE);
    }

    /** A sum in minor units that comes in on a day; 0 for none. */
    public record Grant(long amountMinor, int day) {}

    public Levers {
        weekMinutes = Map.copyOf(weekMinutes);
        dropped = Set.copyOf(dropped);
        postponed = Map.copyOf(postponed);
    }

    /** Whether nothing is changed. */
    public boolean none() {
        return equals(NONE);
    }

    /** Whether tasks or crew are changed, so that another order of work may serve better (rule 52). */
    public boolean reorders() {
        return !weekMinutes.isEmpty() || helper.weekMinutes() > 0 || !dropped.isEmpty() || !postponed.isEmpty();
    }

    /** The inputs as they would be. */
    public Inputs over(Inputs now) {
        if (none()) {
            return now;
        }
        List<Inputs.Regular> regular = new ArrayList<>(now.regular());
        if (grant.amountMinor() != 0) {
            regular.add(new Inputs.Regular(GRANT, grant.amountMinor(), 0, Inputs.Every.YEAR, grant.day(), grant.day()));
        }
        return new Inputs(
                now.asOf(),
                now.horizonMonths(),
                crew(now),
                now.crewHours().stream().map(hours -> season(now, hours)).toList(),
                now.daysOff(),
                now.gatherings(),
                now.workedToday(),
                now.turnout(),
                now.stages(),
                now.tasks().stream().map(task -> task(task, now.asOf())).toList(),
                now.links(),
                now.equipment(),
                now.ownLines(),
                now.materials().stream().map(this::priced).toList(),
                now.episodes().stream().map(this::shortened).toList(),
                publishing(now),
                now.weather(),
                onDeposit
                        ? new Inputs.Orders(
                                now.orders().marginDays(), now.orders().smallMinor(), true)
                        : now.orders(),
                now.model(),
                now.money(),
                now.levels(),
                supporters(now),
                regular,
                now.kept());
    }

    private List<Inputs.Crew> crew(Inputs now) {
        List<Inputs.Crew> all = new ArrayList<>();
        for (Inputs.Crew one : now.crew()) {
            int more = weekMinutes.getOrDefault(one.id(), 0);
            all.add(
                    more == 0
                            ? one
                            : new Inputs.Crew(
                                    one.id(),
                                    one.trades(),
                                    moved(one.weekdayMinutes(), more),
                                    one.payMinor(),
                                    one.from(),
                                    one.to(),
                                    one.notFor()));
        }
        if (helper.weekMinutes() > 0) {
            Set<String> hazards = new LinkedHashSet<>();
            now.tasks().forEach(task -> hazards.addAll(task.hazards()));
            all.add(new Inputs.Crew(
                    HELPER,
                    helper.trade().isEmpty() ? List.of() : List.of(helper.trade()),
                    moved(List.of(0, 0, 0, 0, 0, 0, 0), helper.weekMinutes()),
                    0,
                    helper.from(),
                    Inputs.NONE,
                    List.copyOf(hazards)));
        }
        return all;
    }

    /** Weekday minutes whose sum is so many more: shared in proportion, what rounding leaves over to the first days. */
    static List<Integer> moved(List<Integer> weekday, int more) {
        int sum = weekday.stream().mapToInt(Integer::intValue).sum();
        int wanted = Math.max(0, sum + more);
        List<Integer> all = new ArrayList<>();
        int before = 0;
        long shares = 0;
        for (int d = 0; d < WEEKDAYS; d++) {
            shares += sum > 0 ? weekday.get(d) : d < WORKDAYS ? 1 : 0;
            int upTo = (int) ((long) wanted * shares / (sum > 0 ? sum : WORKDAYS));
            all.add(upTo - before);
            before = upTo;
        }
        return all;
    }

    private Inputs.CrewHours season(Inputs now, Inputs.CrewHours hours) {
        int more = weekMinutes.getOrDefault(hours.crew(), 0);
        int usual = now.crew().stream()
                .filter(one -> one.id().equals(hours.crew()))
                .flatMap(one -> one.weekdayMinutes().stream())
                .mapToInt(Integer::intValue)
                .sum();
        if (more == 0 || usual == 0) {
            return hours;
        }
        int sum = hours.weekdayMinutes().stream().mapToInt(Integer::intValue).sum();
        return new Inputs.CrewHours(
                hours.crew(),
                hours.from(),
                hours.to(),
                moved(hours.weekdayMinutes(), Math.toIntExact((long) sum * more / usual)));
    }

    private Inputs.Task task(Inputs.Task task, int asOf) {
        boolean open = task.done() == Inputs.NONE && task.dropped() == Inputs.NONE;
        if (open && dropped.contains(task.id())) {
            return with(task, task.notBefore(), task.booked(), asOf);
        }
        Integer day = postponed.get(task.id());
        if (!open || day == null) {
            return task;
        }
        return with(
                task,
                Math.max(task.notBefore(), day),
                task.booked() == Inputs.NONE ? Inputs.NONE : Math.max(task.booked(), day),
                Inputs.NONE);
    }

    private static Inputs.Task with(Inputs.Task task, int notBefore, int booked, int dropped) {
        return new Inputs.Task(
                task.id(),
                task.stage(),
                task.kind(),
                task.estimate(),
                task.pieces(),
                task.learningPercent(),
                task.hands(),
                task.leastHands(),
                task.trades(),
                task.company(),
                task.equipment(),
                task.withoutPercent(),
                task.outdoors(),
                task.seasonFrom(),
                task.seasonTo(),
                notBefore,
                booked,
                task.rebookDays(),
                task.oneGo(),
                task.priority(),
                task.camera(),
                task.cameraExtraPercent(),
                task.storyMinutes(),
                task.storyTold(),
                task.hazards(),
                task.leftMinutes(),
                task.leftOn(),
                task.asideUntil(),
                task.started(),
                task.done(),
                dropped,
                task.log(),
                task.shotDays(),
                task.fill(),
                task.failPercent(),
                task.redoPercent(),
                task.added());
    }

    private Inputs.Material priced(Inputs.Material line) {
        if (pricesPercent == 0 || line.ordered() != Inputs.NONE || line.received() != Inputs.NONE) {
            return line;
        }
        return line.with(times(line.priceMinor(), 100 + pricesPercent), line.ordered(), line.received());
    }

    private static Inputs.Range times(Inputs.Range range, int percent) {
        return range.given()
                ? new Inputs.Range(
                        range.low() * percent / 100, range.likely() * percent / 100, range.high() * percent / 100)
                : range;
    }

    private Inputs.Episode shortened(Inputs.Episode episode) {
        return filmPercent == 100
                ? episode
                : new Inputs.Episode(
                        episode.id(),
                        episode.kind(),
                        episode.slot(),
                        times(episode.editMinutes(), filmPercent),
                        episode.editor(),
                        episode.editedMinutes(),
                        episode.footageComplete(),
                        episode.cut(),
                        episode.published(),
                        episode.tells());
    }

    /** Another count of weeks begins at the next slot. */
    private Inputs.Publishing publishing(Inputs now) {
        Inputs.Publishing slots = now.publishing();
        int first = slots.first();
        if (everyWeeks != 0 && first != Inputs.NONE) {
            first += Math.floorMod(slots.weekday() - 1 - (first + 3), WEEKDAYS);
            int step = WEEKDAYS * Math.max(1, slots.everyWeeks());
            first = first >= now.asOf() ? first : now.asOf() + Math.floorMod(first - now.asOf(), step);
        }
        return new Inputs.Publishing(
                slots.weekday(),
                first,
                everyWeeks == 0 ? slots.everyWeeks() : everyWeeks,
                filmPercent == 100 ? slots.targetMinutes() : slots.targetMinutes() * filmPercent / 100,
                slots.earlyDays(),
                slots.editWindowDays(),
                filmPercent == 100 ? slots.editMinutes() : times(slots.editMinutes(), filmPercent),
                slots.chargesAMonth(),
                slots.emptyLeaving(),
                slots.skip(),
                slots.editDays(),
                slots.bankFloorWeeks(),
                leftEmpty);
    }

    /** The as-of month's rows with those who go or come at once; the rates of joining and leaving are learned from whole months. */
    private List<Inputs.SupporterMonth> supporters(Inputs now) {
        if (supportersPercent == 0) {
            return now.supporters();
        }
        LocalDate today = LocalDate.ofEpochDay(now.asOf());
        int month = 12 * today.getYear() + today.getMonthValue() - 1;
        UnaryOperator<Inputs.SupporterMonth> changed = row -> {
            int there = Math.max(0, row.start() + row.joined() - row.left());
            int more = (int) Math.round(there * supportersPercent / 100.0);
            return new Inputs.SupporterMonth(
                    row.month(),
                    row.level(),
                    row.start(),
                    row.joined() + Math.max(0, more),
                    row.left() + Math.max(0, -more),
                    row.surge());
        };
        List<Inputs.SupporterMonth> all = new ArrayList<>();
        Set<String> counted = new HashSet<>();
        for (Inputs.SupporterMonth row : now.supporters()) {
            boolean current = row.month() == month;
            all.add(current ? changed.apply(row) : row);
            if (current) {
                counted.add(row.level());
            }
        }
        for (Inputs.PledgeLevel level : now.levels()) {
            if (!counted.contains(level.id())) {
                now.supporters().stream()
                        .filter(row -> row.level().equals(level.id()) && row.month() < month)
                        .reduce((one, other) -> other.month() > one.month() ? other : one)
                        .map(last -> new Inputs.SupporterMonth(
                                month,
                                level.id(),
                                Math.max(0, last.start() + last.joined() - last.left()),
                                0,
                                0,
                                false))
                        .map(changed)
                        .ifPresent(all::add);
            }
        }
        return all;
    }
}
