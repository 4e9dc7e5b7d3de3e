package weekwright.web.crew;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a caution, or removes it. */
public final class CrewCautionEditPage implements Page {
    public record View(Form form, Form remove, RowKinds.Lists lists) {}

    @Override
    public View show(Request request) {
        var row = RowKinds.CAUTION.row(request);
        return new View(request.form("", row), request.form("remove", row), RowKinds.lists(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return RowKinds.CAUTION.change(request);
    }
}
