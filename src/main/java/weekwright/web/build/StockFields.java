package weekwright.web.build;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.SaveStockItem;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

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
        "note"
    };

    private StockFields() {}

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
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
        Optional<StockItem> edited = form.edited(old.value(), COLUMNS);
        return request.save(write -> {
            StockItem item = edited.orElseThrow();
            SaveStockItem.save(write, Optional.of(new Shown(old.row(), form.version())), item);
            return Saved.to("/build/stock").saying(item.item() + " is changed.");
        });
    }
}
