package weekwright.web.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.Ids;
import weekwright.build.SaveEquipment;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Remarks;

/** The form of a machine or a set of things, for adding one and for changing one. */
final class EquipmentFields {
    private static final String[] COLUMNS = {
        "name",
        "quantity",
        "kept",
        "ready_after",
        "down_from",
        "back_low",
        "back_likely",
        "back_high",
        "inspect_by",
        "value"
    };

    private EquipmentFields() {}

    /** What the fields are chosen from. */
    record Lists(List<Form.Choice> hazards, List<TaskLists.Group> tasks, String currency) {}

    static Lists lists(Request request, Read read) {
        return new Lists(
                HazardCodes.all().stream()
                        .map(code ->
                                new Form.Choice(code, HazardCodes.title(code).orElse(code)))
                        .toList(),
                TaskLists.groups(read, Optional.empty()),
                request.formats().currencyMark());
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Map<String, String> fixed = new LinkedHashMap<>(Map.of("id", "new"));
        fixed.put("hazards", String.join(" ", form.texts("hazards")));
        Optional<Equipment> read = form.record(Equipment.class, fixed, COLUMNS);
        return request.save(write -> {
            Id id = Ids.word(read.orElseThrow().name(), EquipmentStore.TABLE.ids(write));
            Equipment one = Shape.of(Equipment.class).with(read.get(), "id", id);
            SaveEquipment.Saved kept = SaveEquipment.save(write, Optional.empty(), one);
            return Saved.to("/build/equipment").saying(one.name() + " is listed." + Remarks.said(kept.remarks()));
        });
    }

    static Answer change(Request request, Stored<Equipment> old) throws Exception {
        FormReader form = request.form();
        Words hazards = new Words(form.texts("hazards"));
        Optional<Equipment> edited = form.edited(old.value(), COLUMNS)
                .map(one -> Shape.of(Equipment.class).with(one, "hazards", hazards));
        return request.save(write -> {
            SaveEquipment.Saved kept =
                    SaveEquipment.save(write, Optional.of(new Shown(old.row(), form.version())), edited.orElseThrow());
            return Saved.to("/build/equipment")
                    .saying("Saved: " + edited.get().name() + "." + Remarks.said(kept.remarks()));
        });
    }
}
