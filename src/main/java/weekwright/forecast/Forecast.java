package weekwright.forecast;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Money;

/**
 * A forecast in dates, money and chances: what the command line writes as JSON (the components are its fields) and what the
 * pages show. Things are named by their ids; {@link Names} has their titles.
 *
 * <p>An empty date means "not before the horizon". Chances and shares are 0 to 1. All fields belong to the answer "held for
 * funds" but {@code workFirst} and, in cash, {@code underReserve}, {@code underZero} and {@code runway}, which are work
 * first (rule 89: held for funds hardly ever goes under, so these would always look well).
 *
 * @param asOf the day whose facts it knows and from which it looks ahead
 * @param trials how many futures were drawn
 * @param engine version of the engine
 * @param horizon the first day that is not looked at
 * @param stages in the order of the file
 * @param tasks all tasks not dropped, in the order of the file (rule 106)
 * @param episodes those not yet published, in the order of the file
 * @param everySlot the slots that were looked at, first to last; empty in a forecast read back
 * @param storyBank by week
 * @param weeksInHand coming slots in a row that can be filled if nothing more is filmed
 * @param orders material lines that are still to be ordered, by order-by day
 */
public record Forecast(
        LocalDate asOf,
        int trials,
        long seed,
        String engine,
        LocalDate horizon,
        EffortRatio effortRatio,
        List<Stage> stages,
        List<Task> tasks,
        List<Episode> episodes,
        Slots slots,
        @JsonIgnore List<SlotChance> everySlot,
        List<BankWeek> storyBank,
        int weeksInHand,
        List<Order> orders,
        Cash cash) {

    public Forecast {
        stages = List.copyOf(stages);
        tasks = List.copyOf(tasks);
        episodes = List.copyOf(episodes);
        everySlot = everySlot == null ? List.of() : List.copyOf(everySlot);
        storyBank = List.copyOf(storyBank);
        orders = List.copyOf(orders);
    }

    /** The stage of an id. */
    public Optional<Stage> stage(String id) {
        return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
    }

    /** The task of an id. */
    public Optional<Task> task(String id) {
        return tasks.stream().filter(task -> task.id().equals(id)).findFirst();
    }

    /** The episode of an id. */
    public Optional<Episode> episode(String id) {
        return episodes.stream().filter(episode -> episode.id().equals(id)).findFirst();
    }

    /** The chance that nothing comes out on a slot; empty where it was not looked at. */
    public Optional<Double> emptyChance(LocalDate slot) {
        return everySlot.stream()
                .filter(one -> one.date().equals(slot))
                .map(SlotChance::empty)
                .findFirst();
    }

    /** The order of a material line. */
    public Optional<Order> order(String material) {
        return orders.stream()
                .filter(order -> order.material().equals(material))
                .findFirst();
    }

    /** Actual hours over estimated hours, as drawn, and from how many finished tasks it was learned. */
    public record EffortRatio(double p10, double p50, double p90, int finishedTasks) {}

    /**
     * The day of something: by this day in at least so many of a hundred futures (rule 7: a future in which it has not
     * happened counts as later than every date).
     *
     * @param beyond share of futures in which it has not happened before the horizon
     */
    public record Days(
            Optional<LocalDate> p10,
            Optional<LocalDate> p50,
            Optional<LocalDate> p80,
            Optional<LocalDate> p90,
            double beyond) {
        /** Nothing to land: no date and not beyond the horizon either. */
        public static final Days NONE =
                new Days(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0);

        /** A day that is past and known. */
        public static Days past(LocalDate day) {
            Optional<LocalDate> known = Optional.of(day);
            return new Days(known, known, known, known, 0);
        }

        /** Whether there is anything to land at all: a stage whose tasks are all dropped has no landing (rule 34). */
        public boolean some() {
            return p10.isPresent() || beyond > 0;
        }
    }

    /**
     * A part of what a landing is really waiting for.
     *
     * @param kind person, camera, company, equipment, material, funds, weather, season, booking or wait
     * @param what the id, of weather the month
     * @param share of all days; the shares of a stage sum to 1
     */
    public record HeldBy(String kind, String what, double share) {}

    /** How much of a stage is guessed: tasks without hours, and hours guessed (rule 121). */
    public record Rough(int tasks, Hours hours) {}

    /** An amount short: its middle, and what is not exceeded in nine of ten futures. */
    public record Shortfall(Money p50, Money p90) {}

    /**
     * What a stage's materials still cost (rule 91).
     *
     * @param need what is left to pay for its lines, mean
     * @param needBy the earliest need-by day of its lines not yet ordered; empty where there is none
     * @param orderBy the earliest order-by day of its lines that cost money; empty where there is none
     * @param covered share of work-first futures in which cash never ended under the reserve on a day on which a line of
     *     it was paid
     * @param shortfall deepest reserve less cash on those days, 0 if none
     * @param coveredFrom first Sunday on which, in four of five futures, cash without this stage's payments less need
     *     stays at or above the reserve
     */
    public record Materials(
            Money need,
            Optional<LocalDate> needBy,
            Optional<LocalDate> orderBy,
            double covered,
            Shortfall shortfall,
            Optional<LocalDate> coveredFrom) {}

    /**
     * What was counted by a day, each in the same futures: the last is never the product of the two before it.
     *
     * @param landed share of futures in which the stage has landed
     * @param kept share in which no day up to then ended under the reserve
     * @param both share in which both hold
     */
    public record Chances(double landed, double kept, double both) {}

    /**
     * Landing and reserve at a month's end.
     *
     * @param held orders wait for funds
     * @param workFirst orders go out on their day whatever the balance
     */
    public record Joint(LocalDate by, Chances held, Chances workFirst) {}

    /**
     * A stage.
     *
     * @param start first day worked
     * @param landing day its last task is done, held for funds
     * @param workFirst the same if orders go out whatever the balance
     * @param heldBy largest share first; empty for a stage that has landed
     * @param joint by month's end, from the first at which it may have landed to the first at which it almost certainly has
     */
    public record Stage(
            String id,
            String name,
            Days start,
            Days landing,
            Days workFirst,
            List<HeldBy> heldBy,
            Rough rough,
            Materials materials,
            List<Joint> joint) {
        public Stage {
            heldBy = List.copyOf(heldBy);
            joint = joint == null ? List.of() : List.copyOf(joint);
        }
    }

    /**
     * A task.
     *
     * @param critical share of futures in which it lies on the chain back from its stage's landing
     * @param correlation Spearman's, of its drawn hours with its stage's landing, unfinished as the largest rank; 0 where
     *     one of them does not vary
     */
    public record Task(String id, Days start, Days landing, double critical, double correlation) {}

    /**
     * An episode not yet published.
     *
     * @param slot empty for a standby
     * @param onTime chance that it is cut by its slot less the early days; empty without a slot
     * @param safeFrom first slot for which it is cut in time in four of five futures; empty: none before the horizon
     * @param lateBy the told task whose share was reached last in most of the futures that miss the day
     */
    public record Episode(
            String id,
            Optional<LocalDate> slot,
            Optional<Double> onTime,
            Optional<LocalDate> safeFrom,
            Optional<String> lateBy) {}

    /** The first twelve slots after the as-of day: how many stay empty in the mean, and the chance that none does. */
    public record Slots(double expectedEmpty12, double noneEmpty12) {}

    /** A slot and the chance that nothing comes out on it. */
    public record SlotChance(LocalDate date, double empty) {}

    /** Finished minutes that filmed, untold work can give, on the evening of that Sunday. */
    public record BankWeek(LocalDate week, double p10, double p50, double p90) {}

    /**
     * A material line that is still to be ordered.
     *
     * @param material its id
     * @param orderBy last day on which it should go out: need-by less the high lead and the margin (rule 92)
     * @param needBy the day by which in one of five futures the task would have begun but for its lines
     * @param amount mean cost
     * @param shortBy reserve plus this and all earlier purchases less the cash if nothing more were bought, at least 0, on
     *     the order-by day
     */
    public record Order(
            String material,
            Optional<LocalDate> orderBy,
            Optional<LocalDate> needBy,
            Money amount,
            @JsonProperty("short") Shortfall shortBy) {}

    /** Balance on the evening of a Sunday. */
    public record CashWeek(LocalDate date, Money p10, Money p50, Money p90) {}

    /** The same with the purchases left out that are not yet made. */
    public record UnspentWeek(LocalDate date, Money p10, Money p25, Money p50, Money p75, Money p90) {}

    /** What is put by for tax on the evening of a Sunday, over and above the balance, at even chances (rule 135). */
    public record PutByWeek(LocalDate date, Money p50) {}

    /**
     * Supporters of all levels on the 1st of a whole month to come.
     *
     * @param paidOut what reaches the account in it, net of fees
     */
    public record SupportersMonth(YearMonth month, int p10, int p50, int p90, PaidOut paidOut) {}

    /** Pay-outs of a month. */
    public record PaidOut(Money p10, Money p50, Money p90) {}

    /** Chance that a day of that month ends under a floor. */
    public record MonthChance(YearMonth month, double chance) {}

    /**
     * Money.
     *
     * @param now cash of all accounts (rule 85)
     * @param available what orders may use of it: without what is put by for tax, as in all that follows (rule 135)
     * @param supporters whole months to come; none in a forecast made before they were kept
     * @param runway last day up to which at least 80 % of futures never ended a day under zero; empty if to the horizon
     * @param runwayWithoutPledges last day with cash at or above the reserve, in as many, if pledges stopped today and
     *     nothing more were ordered
     */
    public record Cash(
            Money now,
            Money available,
            List<CashWeek> weeks,
            List<UnspentWeek> weeksUnspent,
            List<PutByWeek> putBy,
            List<SupportersMonth> supporters,
            List<MonthChance> underReserve,
            List<MonthChance> underZero,
            Optional<LocalDate> runway,
            Optional<LocalDate> runwayWithoutPledges) {
        public Cash {
            weeks = List.copyOf(weeks);
            weeksUnspent = List.copyOf(weeksUnspent);
            putBy = putBy == null ? List.of() : List.copyOf(putBy);
            supporters = supporters == null ? List.of() : List.copyOf(supporters);
            underReserve = List.copyOf(underReserve);
            underZero = List.copyOf(underZero);
        }
    }
}
