package weekwright.web.build;

import java.util.List;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.forecast.PurchaseLessons;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.RemoveMaterial;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.PurchaseWords;

/** Changes all of a material line, or removes it. */
public final class BuildMaterialEditPage implements Page {
    /**
     * @param lists what the fields are chosen from
     * @param learned what its supplier's earlier orders teach
     */
    public record View(
            Form form, Form remove, MaterialFields.Lists lists, String id, String item, List<String> learned) {}

    @Override
    public View show(Request request) {
        Stored<Material> line = line(request);
        Form form = request.form(Calculators.act(request), line);
        return request.read(read -> new View(
                form,
                request.form("remove", line),
                MaterialFields.lists(request, read, form),
                line.value().id().value(),
                line.value().item(),
                PurchaseWords.of(PurchaseLessons.of(read, request.today()), line.value())));
    }

    private static Stored<Material> line(Request request) {
        return request.read(read -> MaterialStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no material line " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Stored<Material> line = line(request);
        if (request.form().act().equals("remove")) {
            return request.save(write -> {
                RemoveMaterial.remove(
                        write, new Shown(line.row(), request.form().version()));
                return Saved.to("/build/tasks/" + line.value().task())
                        .saying(line.value().item() + " is off the list.");
            });
        }
        return MaterialFields.change(request, line);
    }
}
