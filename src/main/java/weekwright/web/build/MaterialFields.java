package weekwright.web.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.SaveMaterial;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.funds.TakeOff;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Remarks;

/** The form of a material line, for adding one and for changing one. */
final class MaterialFields {
    private static final Map<Material.Source, String> SOURCES = Map.of(
            Material.Source.BOUGHT, "bought",
            Material.Source.GIVEN, "given",
            Material.Source.SALVAGED, "salvaged",
            Material.Source.OWN, "our own");
    private static final String[] COLUMNS = {
        "task",
        "item",
        "dimensions",
        "quantity",
        "unit",
        "waste",
        "price_low",
        "price_likely",
        "price_high",
        "source",
        "stock",
        "supplier",
        "at_share",
        "lead_low",
        "lead_likely",
        "lead_high",
        "deposit",
        "cancel_by",
        "lot",
        "ordered",
        "promised",
        "received",
        "value",
        "credit",
        "price_from",
        "price_on",
        "thanked"
    };

    private MaterialFields() {}

    /** What the fields are chosen from, and whether its folded groups stand open. */
    record Lists(
            List<TaskLists.Group> tasks,
            List<Form.Choice> sources,
            List<Form.Choice> stock,
            String currency,
            Calculators.Lists calculators,
            boolean openPrice,
            boolean openMore) {}

    static List<Form.Choice> sources() {
        return Choices.words(Material.Source.class, SOURCES);
    }

    static Lists lists(Request request, Read read, Form form) {
        return new Lists(
                TaskLists.groups(read, Optional.empty()),
                sources(),
                StockItemStore.TABLE.values(read).stream()
                        .map(item -> new Form.Choice(item.id().value(), item.item() + amount(item)))
                        .toList(),
                request.formats().currencyMark(),
                Calculators.lists(request, form),
                open(
                        form,
                        "price_low",
                        "price_high",
                        "lead_low",
                        "lead_high",
                        "deposit",
                        "cancel_by",
                        "waste",
                        "price_from",
                        "price_on"),
                open(form, "at_share", "lot", "value", "credit", "thanked", "ordered", "promised", "received"));
    }

    private static String amount(StockItem item) {
        return item.quantity()
                .map(q -> (", " + q.text() + " " + item.unit()).stripTrailing())
                .orElse("");
    }

    static boolean open(Form form, String... fields) {
        return List.of(fields).stream()
                .anyMatch(field ->
                        !form.value(field).isEmpty() || !form.error(field).isEmpty());
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Answer> calculated = Calculators.pressed(request);
        if (calculated.isPresent()) {
            return calculated.get();
        }
        Calculators.ask(form);
        Optional<Material> read = form.record(Material.class, Map.of("id", "new"), COLUMNS)
                .map(line -> filled(request, Optional.empty(), line));
        return request.save(write -> {
            Material line = Shape.of(Material.class)
                    .with(read.orElseThrow(), "id", Id.next("mat", MaterialStore.TABLE.ids(write)));
            SaveMaterial.Saved kept = SaveMaterial.save(write, Optional.empty(), line, request.today());
            return Saved.to("/build/tasks/" + line.task())
                    .saying(line.item() + " is listed." + made(line) + Remarks.said(kept.remarks()));
        });
    }

    private static Material filled(Request request, Optional<Material> before, Material line) {
        return TakeOff.filled(
                before, line, Calculators.imperial(request), request.form().problems());
    }

    /** "Oak is listed: 6 × 150 × 200 mm × 4.20 m = 0.756 m³." */
    private static String made(Material line) {
        return line.dimensions()
                .map(d -> " " + d.said(line.unit())
                        + (d.readAs(line.unit()).isEmpty() ? "" : ", read as " + d.readAs(line.unit())) + ".")
                .orElse("");
    }

    static Answer change(Request request, Stored<Material> old) throws Exception {
        FormReader form = request.form();
        Optional<Answer> calculated = Calculators.pressed(request);
        if (calculated.isPresent()) {
            return calculated.get();
        }
        Calculators.ask(form);
        Optional<Material> edited =
                form.edited(old.value(), COLUMNS).map(line -> filled(request, Optional.of(old.value()), line));
        return request.save(write -> {
            SaveMaterial.Saved kept = SaveMaterial.save(
                    write, Optional.of(new Shown(old.row(), form.version())), edited.orElseThrow(), request.today());
            return Saved.to("/build/materials/" + old.value().id())
                    .saying("The line is saved." + made(kept.line().value()) + Remarks.said(kept.remarks()));
        });
    }
}
