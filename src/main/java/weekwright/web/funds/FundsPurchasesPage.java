package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.forecast.Forecast;
import weekwright.funds.Supplier;
import weekwright.funds.SupplierStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/** What is to be ordered, supplier by supplier, for the telephone and for paper. */
public final class FundsPurchasesPage implements Page {
    /** @param from which forecast the days are from; empty without one */
    public record View(List<From> suppliers, String from) {}

    /**
     * What is to be had from one; the name is empty where none is written.
     *
     * @param telephone as it was written down; empty where none is
     * @param dialled as a link dials it
     */
    public record From(String name, String telephone, String dialled, Money together, List<Line> lines) {}

    /** A line to order. */
    public record Line(
            String id, String item, String amount, Optional<LocalDate> day, boolean late, Money cost, String task) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        List<OpenOrders.Line> lines = request.read(read -> OpenOrders.of(read, forecast, formats));
        Map<String, List<OpenOrders.Line>> bySupplier = new LinkedHashMap<>();
        lines.stream()
                .filter(line -> !line.ordered())
                .forEach(line -> bySupplier
                        .computeIfAbsent(line.supplier(), name -> new ArrayList<>())
                        .add(line));
        Map<String, Supplier> known = request.read(SupplierStore::byName);
        return new View(
                bySupplier.entrySet().stream()
                        .map(one -> supplier(one.getKey(), known, one.getValue()))
                        .sorted(Comparator.comparing(one -> one.name().isEmpty()))
                        .toList(),
                forecast.map(one -> FundsOrdersPage.from(one, formats)).orElse(""));
    }

    private static From supplier(String name, Map<String, Supplier> known, List<OpenOrders.Line> lines) {
        Optional<Supplier> rung = Optional.ofNullable(known.get(Supplier.folded(name)));
        return new From(
                name,
                rung.map(Supplier::telephone).orElse(""),
                rung.map(Supplier::dialled).orElse(""),
                lines.stream().map(OpenOrders.Line::toPay).reduce(Money.ZERO, Money::plus),
                lines.stream()
                        .map(line -> new Line(
                                line.id(),
                                line.item(),
                                line.amount(),
                                line.day(),
                                line.late(),
                                line.toPay(),
                                line.task()))
                        .toList());
    }
}
