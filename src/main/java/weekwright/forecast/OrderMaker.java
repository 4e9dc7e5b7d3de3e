package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.simulate.LateTogether;
import weekwright.engine.simulate.MoneyDraws;
import weekwright.engine.simulate.Purchases;

/** The material lines still to be ordered: when, for how much, and what is short for them (rule 92). Pure. */
final class OrderMaker {
    private final Inputs inputs;
    private final Outcome outcome;
    private final Purchases purchases;
    private final double late;
    private final List<Forecast.Order> list = new ArrayList<>();
    private final Map<String, LocalDate> needByStage = new HashMap<>();
    private final Map<String, LocalDate> orderByStage = new HashMap<>();

    OrderMaker(Inputs inputs, Outcome outcome) {
        this.inputs = inputs;
        this.purchases = new Purchases(inputs);
        this.late = new LateTogether(inputs, purchases).times();
        this.outcome = outcome;
        Map<String, Inputs.Task> tasks = new HashMap<>();
        inputs.tasks().forEach(task -> tasks.put(task.id(), task));
        List<Forecast.Order> unpriced = new ArrayList<>();
        for (int m = 0; m < inputs.materials().size(); m++) {
            Inputs.Material material = inputs.materials().get(m);
            Inputs.Task task = tasks.get(material.task());
            if (isToOrder(material, task)) {
                Forecast.Order order = dated(m, material);
                unpriced.add(order);
                order.needBy().ifPresent(day -> needByStage.merge(task.stage(), day, OrderMaker::earlier));
                if (order.amount().minor() > 0) {
                    order.orderBy().ifPresent(day -> orderByStage.merge(task.stage(), day, OrderMaker::earlier));
                }
            }
        }
        unpriced.sort(ForecastMaker.BY_DAY);
        long soFar = 0;
        for (Forecast.Order order : unpriced) {
            soFar += order.amount().minor();
            list.add(new Forecast.Order(
                    order.material(), order.orderBy(), order.needBy(), order.amount(), shortBy(order, soFar)));
        }
    }

    /** By order-by day, lines of one day in the order of the file. */
    List<Forecast.Order> list() {
        return list;
    }

    /** The earliest need-by day of a stage's lines. */
    Optional<LocalDate> needBy(String stage) {
        return Optional.ofNullable(needByStage.get(stage));
    }

    /** The earliest order-by day of a stage's lines that cost money. */
    Optional<LocalDate> orderBy(String stage) {
        return Optional.ofNullable(orderByStage.get(stage));
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    /** Not ordered, not there, and asked for by a task that is still to be done. */
    private static boolean isToOrder(Inputs.Material material, Inputs.Task task) {
        boolean ownInTheYard =
                material.source() == Inputs.Source.OWN && material.leadDays().high() == 0;
        return material.ordered() == Inputs.NONE
                && material.received() == Inputs.NONE
                && task.done() == Inputs.NONE
                && task.dropped() == Inputs.NONE
                && !ownInTheYard;
    }

    private Forecast.Order dated(int m, Inputs.Material material) {
        int need = ForecastMaker.need(outcome.needDay[m]);
        Optional<LocalDate> needBy = ForecastMaker.date(need);
        Optional<LocalDate> orderBy =
                needBy.map(day -> day.minusDays(Math.round(material.leadDays().high() * leadTimes(material))
                        + inputs.orders().marginDays()));
        return new Forecast.Order(material.id(), orderBy, needBy, new Money(meanCost(material)), null);
    }

    /** How many times as long as written a line takes; nobody delivers what is the crew's own. */
    private double leadTimes(Inputs.Material material) {
        return material.source() == Inputs.Source.OWN ? 1 : purchases.leadTimes(material.supplier()) * late;
    }

    /** Quantity with waste at the mean price, rounded half up once (rule 61). */
    private long meanCost(Inputs.Material material) {
        double times = material.source() == Inputs.Source.BOUGHT ? purchases.priceTimes() : 1;
        return MoneyDraws.lineCost(
                material.quantity(),
                material.wastePercent(),
                material.priceMinor().mean() * times);
    }

    /**
     * Reserve and all purchases up to this one less the cash of the last Sunday evening not after the order-by day (before
     * the first Sunday: the cash of now).
     */
    private Forecast.Shortfall shortBy(Forecast.Order order, long soFar) {
        if (order.orderBy().isEmpty()) {
            return new Forecast.Shortfall(Money.ZERO, Money.ZERO);
        }
        int day = (int) order.orderBy().get().toEpochDay();
        int week = -1;
        while (week + 1 < outcome.weeks.length && outcome.weeks[week + 1] <= day) {
            week++;
        }
        long[] missing = new long[outcome.trials];
        for (int trial = 0; trial < outcome.trials; trial++) {
            long cash = week < 0 ? inputs.money().availableMinor() : outcome.unspent[week][trial];
            missing[trial] = Math.max(0, inputs.money().reserveMinor() + soFar - cash);
        }
        long[] q = Outcome.quantiles(missing, 0.5, 0.9);
        return new Forecast.Shortfall(new Money(q[0]), new Money(q[1]));
    }
}
