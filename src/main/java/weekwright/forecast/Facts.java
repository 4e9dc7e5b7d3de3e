package weekwright.forecast;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.CrewHours;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.Gathering;
import weekwright.build.GatheringStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.Settings;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Stopped;
import weekwright.build.StoppedStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.engine.Inputs;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;

/**
 * One state of a project, every table that a forecast looks at in stored order, and the as-of day against which facts count
 * (rule 1: dated on or before it they are known, later ones are ignored).
 */
record Facts(
        LocalDate asOf,
        Settings settings,
        List<CrewMember> crew,
        List<CrewHours> crewHours,
        List<DaysOff> daysOff,
        List<Gathering> gatherings,
        List<WeekLine> weekLines,
        List<Stage> stages,
        List<Task> tasks,
        List<Link> links,
        List<Equipment> equipment,
        List<HoursEntry> hours,
        List<Stopped> stopped,
        List<Material> materials,
        List<StockItem> stock,
        List<Episode> episodes,
        List<Tell> tells,
        List<Shot> shots,
        List<LedgerEntry> ledger,
        List<RegularItem> regular,
        List<PledgeLevel> levels,
        List<SupporterMonth> supporters,
        Map<String, String> written) {

    static Facts of(Source source, LocalDate asOf) {
        Map<String, String> written = new HashMap<>();
        List<CrewMember> crew = source.list(CrewMemberStore.TABLE);
        List<Stage> stages = source.list(StageStore.TABLE);
        List<Task> tasks = source.list(TaskStore.TABLE);
        List<Equipment> equipment = source.list(EquipmentStore.TABLE);
        List<Material> materials = source.list(MaterialStore.TABLE);
        List<Episode> episodes = source.list(EpisodeStore.TABLE);
        List<PledgeLevel> levels = source.list(PledgeLevelStore.TABLE);
        crew.forEach(one -> written.put("crew " + one.id().folded(), one.id().value()));
        stages.forEach(one -> written.put("stage " + one.id().folded(), one.id().value()));
        tasks.forEach(one -> written.put("task " + one.id().folded(), one.id().value()));
        equipment.forEach(
                one -> written.put("equipment " + one.id().folded(), one.id().value()));
        materials.forEach(
                one -> written.put("material " + one.id().folded(), one.id().value()));
        episodes.forEach(
                one -> written.put("episode " + one.id().folded(), one.id().value()));
        levels.forEach(one -> written.put("level " + one.id().folded(), one.id().value()));
        return new Facts(
                asOf,
                source.settings(),
                crew,
                source.list(CrewHoursStore.TABLE),
                source.list(DaysOffStore.TABLE),
                source.list(GatheringStore.TABLE),
                source.list(WeekLineStore.TABLE),
                stages,
                tasks,
                source.list(LinkStore.TABLE),
                equipment,
                source.list(HoursEntryStore.TABLE),
                source.list(StoppedStore.TABLE),
                materials,
                source.list(StockItemStore.TABLE),
                episodes,
                source.list(TellStore.TABLE),
                source.list(ShotStore.TABLE),
                source.list(LedgerEntryStore.TABLE),
                source.list(RegularItemStore.TABLE),
                levels,
                source.list(SupporterMonthStore.TABLE),
                written);
    }

    /** The id as it is written where the thing stands: ids are the same regardless of case (rule 111). */
    String id(String kind, Id reference) {
        return written.getOrDefault(kind + " " + reference.folded(), reference.value());
    }

    /** As {@link #id(String, Id)}, "" for none. */
    String id(String kind, Optional<Id> reference) {
        return reference.map(id -> id(kind, id)).orElse("");
    }

    /** Whether a fact of that date is known. */
    boolean known(LocalDate date) {
        return !date.isAfter(asOf);
    }

    /** The epoch day of a known fact, else {@link Inputs#NONE}. */
    int fact(Optional<LocalDate> date) {
        return day(date.filter(this::known));
    }

    /** The epoch day, {@link Inputs#NONE} for none. */
    static int day(Optional<LocalDate> date) {
        return date.map(Facts::day).orElse(Inputs.NONE);
    }

    static int day(LocalDate date) {
        return (int) date.toEpochDay();
    }

    /** Month * 100 + day, 0 for none. */
    static int monthDay(Optional<MonthDay> day) {
        return day.map(d -> d.getMonthValue() * 100 + d.getDayOfMonth()).orElse(0);
    }

    static double number(Optional<Quantity> quantity, double otherwise) {
        return quantity.map(Quantity::doubleValue).orElse(otherwise);
    }

    static int minutes(Optional<Hours> hours) {
        return hours.map(Hours::minutes).orElse(0);
    }

    /** A major-unit price as minor units, which may have a fraction. */
    double minor(Quantity major) {
        return major.value().movePointRight(settings.moneyDigits()).doubleValue();
    }

    /**
     * Low, likely and high with their defaults (rule 21); {@link Inputs.Range#EMPTY} without a likely value. Values out of
     * order are widened to the likely one.
     *
     * @param low default of low as a share of likely, so too high
     */
    static Inputs.Range range(
            Optional<Quantity> low,
            Optional<Quantity> likely,
            Optional<Quantity> high,
            Defaults defaults,
            double unit) {
        if (likely.isEmpty()) {
            return Inputs.Range.EMPTY;
        }
        BigDecimal middle = likely.get().value();
        BigDecimal least = low.map(Quantity::value).orElse(middle.multiply(defaults.low));
        BigDecimal most = high.map(Quantity::value).orElse(middle.multiply(defaults.high));
        return new Inputs.Range(
                least.min(middle).doubleValue() * unit,
                middle.doubleValue() * unit,
                most.max(middle).doubleValue() * unit);
    }

    /** What stands for an empty low and high, as shares of likely (rule 21). */
    enum Defaults {
        /** Hours. */
        HOURS("0.75", "1.75"),
        /** Waits, prices, leads: no spread. */
        SAME("1", "1");

        private final BigDecimal low;
        private final BigDecimal high;

        Defaults(String low, String high) {
            this.low = new BigDecimal(low);
            this.high = new BigDecimal(high);
        }
    }

    /** As {@link #range} for hours that the store keeps as minutes. */
    static Inputs.Range hoursRange(Optional<Hours> low, Optional<Hours> likely, Optional<Hours> high) {
        return range(low.map(Facts::minutes), likely.map(Facts::minutes), high.map(Facts::minutes), Defaults.HOURS, 1);
    }

    private static Quantity minutes(Hours hours) {
        return Quantity.of(hours.minutes());
    }
}
