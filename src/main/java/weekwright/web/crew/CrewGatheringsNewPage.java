package weekwright.web.crew;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Enters a gathering. */
public final class CrewGatheringsNewPage implements Page {
    public record View(Form form, RowKinds.Lists lists) {}

    @Override
    public View show(Request request) {
        return new View(request.form(""), RowKinds.lists(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return RowKinds.GATHERING.add(request);
    }
}
