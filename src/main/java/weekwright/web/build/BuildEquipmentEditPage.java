package weekwright.web.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.RemoveEquipment;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a machine or a set of things, or removes it after showing which tasks hold it. */
public final class BuildEquipmentEditPage implements Page {
    /** A task that holds it. */
    public record Holder(String id, String title) {}

    /** @param lists what the fields are chosen from */
    public record View(Form form, Form remove, EquipmentFields.Lists lists, String name, List<Holder> holders) {}

    @Override
    public View show(Request request) {
        Stored<Equipment> one = equipment(request);
        Form form = request.form("", one);
        if (!request.wasRefused("")) {
            Map<String, List<String>> values = new LinkedHashMap<>(form.values());
            values.put("hazards", one.value().hazards().list());
            form = new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
        }
        Form filled = form;
        return request.read(read -> new View(
                filled,
                request.form("remove", one),
                EquipmentFields.lists(request, read),
                one.value().name(),
                RemoveEquipment.tasks(read, one.value().id()).stream()
                        .map(task -> new Holder(
                                task.value().id().value(), task.value().title()))
                        .toList()));
    }

    private static Stored<Equipment> equipment(Request request) {
        return request.read(read -> EquipmentStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no equipment " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Equipment> one = equipment(request);
        if (!form.act().equals("remove")) {
            return EquipmentFields.change(request, one);
        }
        return request.save(write -> {
            int held = RemoveEquipment.tasks(write, one.value().id()).size();
            RemoveEquipment.remove(
                    write, new Shown(one.row(), form.version()), one.value().id());
            return Saved.to("/build/equipment")
                    .saying(one.value().name() + " is removed"
                            + (held == 0
                                    ? "."
                                    : ", and " + Formats.count(held, "task") + (held == 1 ? " does" : " do")
                                            + " without it."));
        });
    }
}
