package weekwright.web.crew;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a stopped day, or removes it. */
public final class CrewStoppedEditPage implements Page {
    public record View(Form form, Form remove, RowKinds.Lists lists) {}

    @Override
    public View show(Request request) {
        var row = RowKinds.STOPPED.row(request);
        return new View(request.form("", row), request.form("remove", row), RowKinds.lists(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return RowKinds.STOPPED.change(request);
    }
}
