package weekwright.forecast;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.db.Read;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.Purchases;
import weekwright.funds.Material;
import weekwright.funds.Supplier;

/**
 * What received lines teach of prices and leads (rule 124), with the orders behind it.
 *
 * @param prices paid over likely; nothing while nothing is received and paid
 * @param paid the lines behind it, the last received first
 * @param ignored items of received lines whose payment teaches nothing
 * @param leads by supplier, the slowest first
 */
public record PurchaseLessons(Optional<Lessons.Ratio> prices, List<Paid> paid, List<String> ignored, List<Lead> leads) {
    /** A bought line that came, what it was to cost and what was paid. */
    public record Paid(String id, String item, LocalDate received, Money likely, Money paid) {
        public double times() {
            return (double) paid.minor() / likely.minor();
        }
    }

    /**
     * How long one supplier takes.
     *
     * @param name as it is written
     */
    public record Lead(String name, Lessons.Ratio ratio, List<Came> orders) {}

    /** An order that came. */
    public record Came(String id, String item, LocalDate received, double likelyDays, int days) {
        public double times() {
            return days / likelyDays;
        }
    }

    /** As of a day. */
    public static PurchaseLessons of(Read read, LocalDate day) {
        Facts facts = Facts.of(Source.of(read), day);
        List<Inputs.Material> lines = new FundsInputs(facts).materials();
        return of(
                new Purchases(
                        lines, Facts.day(day), facts.settings().effortHalfLife().doubleValue()),
                lines,
                facts.materials());
    }

    private static PurchaseLessons of(Purchases purchases, List<Inputs.Material> lines, List<Material> written) {
        Map<String, String> names = new HashMap<>();
        written.forEach(line -> names.putIfAbsent(Supplier.folded(line.supplier()), line.supplier()));
        Map<String, String> items = new HashMap<>();
        written.forEach(line -> items.put(line.id().value(), line.item()));
        return new PurchaseLessons(
                purchases.prices().map(Lessons.Ratio::of),
                purchases.paid().stream()
                        .map(one -> new Paid(
                                lines.get(one.line()).id(),
                                items.get(lines.get(one.line()).id()),
                                received(lines, one.line()),
                                new Money(Math.round(one.likelyMinor())),
                                new Money(one.paidMinor())))
                        .sorted(Comparator.comparing(Paid::received).reversed())
                        .toList(),
                purchases.ignored().stream().map(items::get).toList(),
                purchases.suppliers().stream()
                        .map(one -> new Lead(
                                names.get(one.name()),
                                Lessons.Ratio.of(one.ratio()),
                                one.orders().stream()
                                        .map(came -> new Came(
                                                lines.get(came.line()).id(),
                                                items.get(lines.get(came.line()).id()),
                                                received(lines, came.line()),
                                                came.likelyDays(),
                                                came.days()))
                                        .sorted(Comparator.comparing(Came::received)
                                                .reversed())
                                        .toList()))
                        .sorted(Comparator.comparing((Lead one) -> -one.ratio().p50())
                                .thenComparing(Lead::name))
                        .toList());
    }

    private static LocalDate received(List<Inputs.Material> lines, int line) {
        return LocalDate.ofEpochDay(lines.get(line).received());
    }

    /** What is learned of one supplier. */
    public Optional<Lead> lead(String supplier) {
        return leads.stream()
                .filter(one -> Supplier.folded(one.name()).equals(Supplier.folded(supplier)))
                .findFirst();
    }
}
