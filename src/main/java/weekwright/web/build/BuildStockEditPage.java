package weekwright.web.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.CoverFromStock;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.RemoveStockItem;
import weekwright.funds.SaveMaterial;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Remarks;

/** Changes what lies in the yard, says which lines it covers, or takes it off the list. */
public final class BuildStockEditPage implements Page {
    /** A line taken from it. */
    public record Covered(String id, String item, String amount, String task) {}

    /**
     * @param cover the form that takes a line from it; {@code uncover} gives one back
     * @param open lines that could be taken from it
     */
    public record View(
            Form form,
            Form cover,
            Form uncover,
            Form remove,
            StockFields.Lists lists,
            String item,
            List<Covered> covered,
            List<Form.Choice> open) {}

    @Override
    public View show(Request request) {
        Stored<StockItem> item = item(request);
        Form form = request.form(DryingFields.act(request), item);
        return request.read(read -> new View(
                form,
                request.form("cover"),
                request.form("uncover"),
                request.form("remove", item),
                StockFields.lists(request, form),
                item.value().item(),
                covered(read, item.value()),
                open(read)));
    }

    private static List<Covered> covered(Read read, StockItem item) {
        List<Covered> lines = new ArrayList<>();
        for (Stored<Material> line :
                MaterialStore.TABLE.where(read, "stock", item.id().value())) {
            lines.add(new Covered(
                    line.value().id().value(), line.value().item(), amount(line.value()), title(read, line.value())));
        }
        return lines;
    }

    private static List<Form.Choice> open(Read read) {
        return MaterialStore.TABLE.values(read).stream()
                .filter(line -> line.stock().isEmpty()
                        && line.ordered().isEmpty()
                        && line.received().isEmpty())
                .map(line -> new Form.Choice(
                        line.id().value(), title(read, line) + ": " + line.item() + ", " + amount(line)))
                .toList();
    }

    private static String amount(Material line) {
        return (line.quantity().map(q -> q.text() + " ").orElse("") + line.unit()).strip();
    }

    private static String title(Read read, Material line) {
        return TaskStore.TABLE
                .find(read, line.task())
                .map(Stored::value)
                .map(Task::title)
                .orElse("");
    }

    private static Stored<StockItem> item(Request request) {
        return request.read(read -> StockItemStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is nothing " + request.part("id") + " in the yard."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<StockItem> item = item(request);
        String here = "/build/stock/" + item.value().id() + "/edit";
        switch (form.act()) {
            case "remove" -> {
                return request.save(write -> {
                    RemoveStockItem.remove(write, new Shown(item.row(), form.version()), item.value());
                    return Saved.to("/build/stock")
                            .saying("Off the yard's list: " + item.value().item() + ".");
                });
            }
            case "cover", "uncover" -> {
                boolean cover = form.act().equals("cover");
                Optional<Id> chosen = form.needed("material", Id.class);
                return request.save(write -> {
                    Stored<Material> line = MaterialStore.TABLE
                            .find(write, chosen.orElseThrow())
                            .orElseThrow(() -> new NotFound("There is no material line " + chosen.get() + "."));
                    SaveMaterial.Saved kept = CoverFromStock.cover(
                            write,
                            Shown.of(line),
                            cover ? Optional.of(item.value().id()) : Optional.empty(),
                            request.today());
                    return Saved.to(here)
                            .saying((cover ? "Taken from the yard: " : "To come from elsewhere again: ")
                                    + line.value().item() + "."
                                    + Remarks.said(kept.remarks()));
                });
            }
            default -> {
                return StockFields.change(request, item);
            }
        }
    }
}
