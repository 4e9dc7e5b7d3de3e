package weekwright.web.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** What lies in the yard, whether it is ready, and which lines are taken from it. */
public final class BuildStockPage implements Page {
    public record View(List<Line> lines) {}

    /**
     * @param state wet or dry, and what it is kept for
     * @param undated whether it is wet and nobody has said when it is dry
     * @param covers the items of the lines that it covers
     */
    public record Line(
            String id,
            String item,
            String amount,
            String place,
            String state,
            String ready,
            boolean undated,
            Optional<Money> value,
            String covers) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        return request.read(read -> new View(lines(read, formats)));
    }

    private static List<Line> lines(Read read, Formats formats) {
        List<Line> lines = new ArrayList<>();
        for (Stored<StockItem> stored : StockItemStore.TABLE.list(read)) {
            StockItem item = stored.value();
            List<String> covered = MaterialStore.TABLE
                    .where(read, "stock", item.id().value())
                    .stream()
                    .map(Stored::value)
                    .map(Material::item)
                    .toList();
            lines.add(new Line(
                    item.id().value(),
                    item.item(),
                    (item.quantity().map(q -> q.text() + " ").orElse("") + item.unit()).strip(),
                    item.place(),
                    state(item),
                    StockReady.words(item, formats),
                    item.undated(),
                    item.value(),
                    Formats.list(covered)));
        }
        return lines;
    }

    /** "wet, for the upright shaft". */
    private static String state(StockItem item) {
        String wet = item.moisture().map(Codec::word).orElse("");
        return item.meantFor().isEmpty() ? wet : (wet.isEmpty() ? "" : wet + ", ") + "for " + item.meantFor();
    }
}
