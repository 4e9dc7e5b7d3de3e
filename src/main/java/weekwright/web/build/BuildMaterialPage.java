package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.forecast.PurchaseLessons;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.OrderMaterial;
import weekwright.funds.PromiseMaterial;
import weekwright.funds.ReceiveMaterial;
import weekwright.funds.StockItemStore;
import weekwright.funds.TakeOff;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Outlook;
import weekwright.web.parts.PurchaseWords;

/** One material line: what it is, how it stands, and that it was ordered, promised, received. */
public final class BuildMaterialPage implements Page {
    /** A payment for it. */
    public record Payment(LocalDate date, Money amount) {}

    /** @param forms by act: order, promise, receive */
    public record View(
            String id,
            String item,
            String amount,
            String standing,
            boolean late,
            String taskId,
            String task,
            String advice,
            List<String> learned,
            List<Frame.Cell> facts,
            List<Payment> payments,
            boolean mayOrder,
            boolean mayPromise,
            boolean mayReceive,
            boolean bought,
            String unit,
            LocalDate today,
            String currency,
            Map<String, Form> forms) {}

    @Override
    public View show(Request request) {
        Stored<Material> stored = line(request);
        Material line = stored.value();
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        return request.read(read -> {
            Optional<Task> task = TaskStore.TABLE.find(read, line.task()).map(Stored::value);
            StageMaterials.Line said = StageMaterials.line(line, "", forecast, formats);
            return new View(
                    line.id().value(),
                    line.item(),
                    said.amount(),
                    Formats.sentence(said.standing()),
                    said.late(),
                    line.task().value(),
                    task.map(Task::title).orElse(line.task().value()),
                    advice(forecast.flatMap(f -> f.order(line.id().value())), line, formats),
                    said.open() ? PurchaseWords.of(PurchaseLessons.of(read, request.today()), line) : List.of(),
                    facts(read, line, formats),
                    payments(read, line),
                    line.ordered().isEmpty() && said.open(),
                    line.ordered().isPresent() && line.received().isEmpty(),
                    said.open(),
                    line.sourceOrDefault() == Material.Source.BOUGHT,
                    line.unit(),
                    request.today(),
                    formats.currencyMark(),
                    forms(request, stored));
        });
    }

    private static Map<String, Form> forms(Request request, Stored<Material> line) {
        Map<String, Form> forms = new LinkedHashMap<>();
        String today = request.today().toString();
        Map<String, Map<String, String>> first = Map.of(
                "order", Map.of("ordered", today),
                "promise",
                        Map.of(
                                "promised",
                                line.value().promised().map(LocalDate::toString).orElse("")),
                "receive", Map.of("received", today));
        for (String act : List.of("order", "promise", "receive")) {
            Form form = request.form(act, first.get(act));
            forms.put(
                    act,
                    new Form(form.csrf(), form.answerKey(), Optional.of(line.version()), form.values(), form.errors()));
        }
        return forms;
    }

    /** When it has to go out and whether the money is there; the forecast's figures. */
    private static String advice(Optional<Forecast.Order> order, Material line, Formats formats) {
        if (order.isEmpty() || order.get().orderBy().isEmpty() || line.ordered().isPresent()) {
            return "";
        }
        Forecast.Order one = order.get();
        String money = one.shortBy().p50().minor() > 0
                ? " On that day you would be about "
                        + formats.moneyForecast(one.shortBy().p50().minor()) + " short."
                : one.shortBy().p90().minor() > 0
                        ? " The money is probably there by then; with bad luck "
                                + formats.moneyForecast(one.shortBy().p90().minor()) + " is missing."
                        : " The money is there.";
        return (one.orderBy().get().isBefore(formats.today()) ? "It should have been " : "It has to be ")
                + (line.sourceOrDefault() == Material.Source.BOUGHT ? "ordered" : "asked for") + " by "
                + formats.date(one.orderBy().get())
                + formats.comingOrGone(one.orderBy().get())
                + one.needBy()
                        .map(day -> ", to be there by " + formats.date(day))
                        .orElse("") + "." + money;
    }

    private static List<Frame.Cell> facts(Read read, Material line, Formats formats) {
        List<Frame.Cell> facts = new ArrayList<>();
        line.stock()
                .flatMap(id -> StockItemStore.TABLE.find(read, id))
                .map(Stored::value)
                .ifPresent(item -> facts.add(
                        new Frame.Cell("From the yard", item.item() + ": " + StockReady.words(item, formats))));
        line.dimensions().ifPresent(d -> facts.add(new Frame.Cell("Dimensions", d.said(line.unit()))));
        line.dimensions()
                .map(d -> d.readAs(line.unit()))
                .filter(text -> !text.isEmpty())
                .ifPresent(text -> facts.add(new Frame.Cell("Read as", text)));
        facts.add(new Frame.Cell("Source", Codec.word(line.sourceOrDefault())));
        if (!line.supplier().isEmpty()) {
            facts.add(new Frame.Cell("From", line.supplier()));
        }
        line.priceLikely()
                .ifPresent(price -> facts.add(new Frame.Cell(
                        "Price",
                        formats.price(price.value())
                                + (line.unit().isEmpty() ? "" : " a " + line.unit())
                                + prices(line, formats))));
        if (!line.priceFrom().isEmpty() || line.priceOn().isPresent()) {
            facts.add(new Frame.Cell("Price got", priceGot(line, formats)));
        }
        line.waste()
                .ifPresent(waste -> facts.add(new Frame.Cell(
                        "Waste",
                        waste.text() + " % on top"
                                + TakeOff.withWaste(line)
                                        .map(all -> (": " + all.text() + " " + line.unit()).stripTrailing())
                                        .orElse(""))));
        line.leadLikely()
                .ifPresent(days -> facts.add(new Frame.Cell(
                        "Lead",
                        days.text()
                                + (days.equals(Quantity.ONE) ? " day" : " days")
                                + side(line.leadLow(), line.leadHigh()))));
        line.deposit().ifPresent(percent -> facts.add(new Frame.Cell("Deposit", percent.text() + " %")));
        line.cancelBy()
                .ifPresent(day -> facts.add(new Frame.Cell(
                        "Can be called off until",
                        formats.date(day) + (line.received().isEmpty() ? formats.comingOrGone(day) : ""))));
        if (!line.lot().isEmpty()) {
            facts.add(new Frame.Cell("Lot", line.lot()));
        }
        if (!line.credit().isEmpty()) {
            facts.add(new Frame.Cell("Credit", line.credit()));
        }
        line.thanked().ifPresent(day -> facts.add(new Frame.Cell("Thanked", formats.dateLong(day))));
        return facts;
    }

    /** "the sawmill's list, 3 October 2026". */
    static String priceGot(Material line, Formats formats) {
        String day = line.priceOn().map(formats::dateLong).orElse("");
        return line.priceFrom() + (line.priceFrom().isEmpty() || day.isEmpty() ? "" : ", ") + day;
    }

    /** " (€1,390 to €1,780)"; empty where one end is missing. */
    static String prices(Material line, Formats formats) {
        return line.priceLow().isPresent() && line.priceHigh().isPresent()
                ? " (" + formats.price(line.priceLow().get().value()) + " to "
                        + formats.price(line.priceHigh().get().value()) + ")"
                : "";
    }

    private static String side(Optional<Quantity> low, Optional<Quantity> high) {
        return low.isPresent() && high.isPresent()
                ? " (" + low.get().text() + " to " + high.get().text() + ")"
                : "";
    }

    private static List<Payment> payments(Read read, Material line) {
        return LedgerEntryStore.TABLE.where(read, "material", line.id().value()).stream()
                .map(entry ->
                        new Payment(entry.value().date(), entry.value().amount().negated()))
                .toList();
    }

    static Stored<Material> line(Request request) {
        return request.read(read -> MaterialStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no material line " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Material> line = line(request);
        Shown shown = new Shown(line.row(), form.version());
        String here = "/build/materials/" + line.value().id();
        Formats formats = request.formats();
        switch (form.act()) {
            case "order" -> {
                Optional<LocalDate> day = form.needed("ordered", LocalDate.class);
                Optional<LocalDate> promised = form.read("promised", LocalDate.class);
                Optional<Money> paid = form.read("paid", Money.class);
                return request.save(write -> {
                    OrderMaterial.order(write, shown, day.orElseThrow(), promised, paid, request.today());
                    return Saved.to(here)
                            .saying("Ordered on " + Formats.dayMonthLong(day.get()) + "."
                                    + paid.map(money ->
                                                    " " + formats.moneyExact(money.minor()) + " paid is in the books.")
                                            .orElse(""));
                });
            }
            case "promise" -> {
                Optional<LocalDate> promised = form.needed("promised", LocalDate.class);
                return request.save(write -> {
                    PromiseMaterial.promise(write, shown, promised.orElseThrow());
                    return Saved.to(here).saying("Promised for " + formats.date(promised.get()) + ".");
                });
            }
            default -> {
                Optional<LocalDate> day = form.needed("received", LocalDate.class);
                Optional<Quantity> part = form.read("part", Quantity.class);
                Optional<Money> paid = form.read("paid", Money.class);
                return request.save(write -> {
                    ReceiveMaterial.Received received =
                            ReceiveMaterial.receive(write, shown, day.orElseThrow(), part, paid, request.today());
                    String rest = received.rest()
                            .map(later -> (" Still to come: "
                                                    + later.value()
                                                            .quantity()
                                                            .map(Quantity::text)
                                                            .orElse("")
                                                    + " " + later.value().unit())
                                            .stripTrailing()
                                    + ".")
                            .orElse("");
                    return Saved.to(here)
                            .saying("Received on " + Formats.dayMonthLong(day.get()) + "." + rest
                                    + paid.map(money ->
                                                    " " + formats.moneyExact(money.minor()) + " paid is in the books.")
                                            .orElse(""));
                });
            }
        }
    }
}
