package weekwright.web.build;

import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.RemoveMaterial;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes all of a material line, or removes it. */
public final class BuildMaterialEditPage implements Page {
    /** @param lists what the fields are chosen from */
    public record View(Form form, Form remove, MaterialFields.Lists lists, String id, String item) {}

    @Override
    public View show(Request request) {
        Stored<Material> line = line(request);
        Form form = request.form(Calculators.act(request), line);
        return request.read(read -> new View(
                form,
                request.form("remove", line),
                MaterialFields.lists(request, read, form),
                line.value().id().value(),
                line.value().item()));
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
