package weekwright.web.build;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.funds.SaveStockItem;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Enters a gift in one step: what, from whom, its worth, when, where it lies. */
public final class BuildGiftsNewPage implements Page {
    private static final String[] COLUMNS = {
        "item", "quantity", "unit", "from", "value", "since", "place", "meant_for", "credit", "thanked"
    };

    /** @param currency its mark */
    public record View(Form form, String currency) {}

    @Override
    public View show(Request request) {
        return new View(
                request.form("", Map.of("since", request.today().toString())),
                request.formats().currencyMark());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<StockItem> read = form.record(StockItem.class, Map.of("id", "new", "source", "given"), COLUMNS);
        if (form.text("from").isEmpty()) {
            form.fault("from", "", "is missing", "write who gave it");
        }
        return request.save(write -> {
            StockItem item = Shape.of(StockItem.class)
                    .with(read.orElseThrow(), "id", Id.next("yard", StockItemStore.TABLE.ids(write)));
            SaveStockItem.save(write, Optional.empty(), item);
            return Saved.to("/build/gifts")
                    .saying(item.item() + " from " + item.from() + " is in the register and on the yard's list.");
        });
    }
}
