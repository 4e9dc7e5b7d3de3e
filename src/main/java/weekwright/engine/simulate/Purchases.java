package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Material;
import weekwright.engine.Inputs.Source;

/**
 * What received lines teach of prices and leads (rule 124): paid over likely, of all bought lines together, and days taken over the
 * likely lead, by supplier; each learned as the effort ratio is ({@link EffortRatio}, its prior centred on 1, older ones counting
 * less). While nothing was received, all is as it was written down.
 *
 * <p>Left out is a line of which the books hold under two thirds of its low cost or over twice its high cost: its payment is
 * then probably not all there, or pays for others too (trade judgement, no source). A delivery on the day of its order counts
 * as half a day.
 */
public final class Purchases {
    private static final double LEAST_OF_LOW = 2 / 3.0;
    private static final double MOST_OF_HIGH = 2;
    private static final double SAME_DAY = 0.5;

    private final List<Paid> paid = new ArrayList<>();
    private final List<String> ignored = new ArrayList<>();
    private final List<Supplier> suppliers;
    private final Map<String, Integer> places = new HashMap<>();
    private final Optional<EffortRatio> prices;

    /**
     * A bought line that came and is paid.
     *
     * @param line its position in the inputs
     * @param likelyMinor mean of what it was to cost
     * @param ageWeight how much it counts, 1 for one that came today
     */
    public record Paid(int line, double likelyMinor, long paidMinor, double ageWeight) {}

    /**
     * An order that came.
     *
     * @param line its position in the inputs
     * @param likelyDays mean of its lead
     * @param days from order to delivery
     * @param ageWeight how much it counts, 1 for one that came today
     */
    public record Came(int line, double likelyDays, int days, double ageWeight) {}

    /** One whose orders came, by name in lower case. */
    public record Supplier(String name, EffortRatio ratio, List<Came> orders) {
        public Supplier {
            orders = List.copyOf(orders);
        }
    }

    public Purchases(Inputs inputs) {
        this(inputs.materials(), inputs.asOf(), inputs.model().effortHalfLife());
    }

    /**
     * @param asOf lines received later are left out
     * @param halfLife of the effort ratio, in months
     */
    public Purchases(List<Material> lines, int asOf, double halfLife) {
        List<double[]> priceRows = new ArrayList<>();
        Map<String, List<Came>> came = new TreeMap<>();
        Map<String, List<double[]>> leadRows = new HashMap<>();
        for (int m = 0; m < lines.size(); m++) {
            Material line = lines.get(m);
            if (line.received() == Inputs.NONE || line.received() > asOf) {
                continue;
            }
            double weight = EffortRatio.ageWeight(asOf - line.received(), halfLife);
            if (line.source() == Source.BOUGHT
                    && line.paidMinor() > 0
                    && line.priceMinor().mean() > 0) {
                double amount = line.quantity() * (1 + line.wastePercent() / 100);
                if (line.paidMinor() < LEAST_OF_LOW * amount * line.priceMinor().low()
                        || line.paidMinor()
                                > MOST_OF_HIGH * amount * line.priceMinor().high()) {
                    ignored.add(line.id());
                } else {
                    double likely = amount * line.priceMinor().mean();
                    double deviation = amount * line.priceMinor().deviation();
                    paid.add(new Paid(m, likely, line.paidMinor(), weight));
                    priceRows.add(row(line.paidMinor(), likely, deviation, weight));
                }
            }
            if (!line.supplier().isEmpty()
                    && line.source() != Source.OWN
                    && line.ordered() != Inputs.NONE
                    && line.leadDays().mean() > 0) {
                int days = line.received() - line.ordered();
                came.computeIfAbsent(line.supplier(), name -> new ArrayList<>())
                        .add(new Came(m, line.leadDays().mean(), days, weight));
                leadRows.computeIfAbsent(line.supplier(), name -> new ArrayList<>())
                        .add(row(
                                Math.max(SAME_DAY, days),
                                line.leadDays().mean(),
                                line.leadDays().deviation(),
                                weight));
            }
        }
        prices = priceRows.isEmpty() ? Optional.empty() : Optional.of(learn(priceRows));
        List<Supplier> known = new ArrayList<>();
        came.forEach((name, orders) -> {
            places.put(name, known.size());
            known.add(new Supplier(name, learn(leadRows.get(name)), orders));
        });
        suppliers = List.copyOf(known);
    }

    private static double[] row(double actual, double mean, double deviation, double weight) {
        // the line's own spread, as it is drawn with: what was had for a fixed price at that price teaches a ratio of 1
        double own = ThreePoint.logVariance(mean, deviation);
        return new double[] {EffortRatio.logRatio(actual, mean, own), EffortRatio.variance(mean, deviation), weight};
    }

    private static EffortRatio learn(List<double[]> rows) {
        return EffortRatio.learn(1, column(rows, 0), column(rows, 1), column(rows, 2));
    }

    private static double[] column(List<double[]> rows, int i) {
        return rows.stream().mapToDouble(row -> row[i]).toArray();
    }

    /** Of all bought lines together; nothing while none of them is received and paid. */
    public Optional<EffortRatio> prices() {
        return prices;
    }

    /** The lines behind it, in the order of the file. */
    public List<Paid> paid() {
        return List.copyOf(paid);
    }

    /** Ids of received lines whose payment is probably not all theirs, or not all there. */
    public List<String> ignored() {
        return List.copyOf(ignored);
    }

    /** Those whose orders came, by name. */
    public List<Supplier> suppliers() {
        return suppliers;
    }

    /** A supplier's place in {@link #suppliers}, -1 for one that nothing is known of. */
    int supplier(String name) {
        return places.getOrDefault(name, -1);
    }

    /** How many times the likely price things cost; 1 while nothing is learned. */
    public double priceTimes() {
        return prices.map(one -> StrictMath.exp(one.betaN())).orElse(1.0);
    }

    /** How many times its lead a supplier takes; 1 for one that nothing is known of. */
    public double leadTimes(String supplier) {
        int place = supplier(supplier);
        return place < 0 ? 1 : StrictMath.exp(suppliers.get(place).ratio().betaN());
    }
}
