package weekwright.web.build;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Lists a machine or a set of things. */
public final class BuildEquipmentNewPage implements Page {
    /** @param lists what the fields are chosen from */
    public record View(Form form, EquipmentFields.Lists lists) {}

    @Override
    public View show(Request request) {
        return request.read(read -> new View(request.form(""), EquipmentFields.lists(request, read)));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return EquipmentFields.add(request);
    }
}
