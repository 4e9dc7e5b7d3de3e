package weekwright.web.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.SaveStockItem;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** The form of what lies in the yard, for adding and for changing it. */
final class StockFields {
    private static final String[] COLUMNS = {
        "item",
        "species",
        "quantity",
        "unit",
        "place",
        "since",
        "source",
        "from",
        "value",
        "ready_low",
        "ready_likely",
        "ready_high",
        "credit",
        "note",
        "moisture",
        "meant_for",
        "thanked"
    };

    private static final Map<StockItem.Moisture, String> MOISTURES =
            Map.of(StockItem.Moisture.WET, "wet", StockItem.Moisture.DRY, "dry");

    private StockFields() {}

    /** What the fields are chosen from. */
    record Lists(List<Form.Choice> sources, List<Form.Choice> moistures, String currency, DryingFields.Lists drying) {}

    static Lists lists(Request request, Form form) {
        return new Lists(
                MaterialFields.sources(),
                Choices.words(StockItem.Moisture.class, MOISTURES),
                request.formats().currencyMark(),
                DryingFields.lists(request, form));
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Answer> filled = DryingFields.pressed(request);
        if (filled.isPresent()) {
            return filled.get();
        }
        DryingFields.ask(form);
        Optional<StockItem> read = form.record(StockItem.class, Map.of("id", "new"), COLUMNS);
        return request.save(write -> {
            StockItem item = Shape.of(StockItem.class)
                    .with(read.orElseThrow(), "id", Id.next("yard", StockItemStore.TABLE.ids(write)));
            SaveStockItem.save(write, Optional.empty(), item);
            return Saved.to("/build/stock").saying(item.item() + " is on the yard's list.");
        });
    }

    static Answer change(Request request, Stored<StockItem> old) throws Exception {
        FormReader form = request.form();
        Optional<Answer> filled = DryingFields.pressed(request);
        if (filled.isPresent()) {
            return filled.get();
        }
        DryingFields.ask(form);
        Optional<StockItem> edited = form.edited(old.value(), COLUMNS);
        return request.save(write -> {
            StockItem item = edited.orElseThrow();
            SaveStockItem.save(write, Optional.of(new Shown(old.row(), form.version())), item);
            return Saved.to("/build/stock").saying("Saved: " + item.item() + ".");
        });
    }
}
