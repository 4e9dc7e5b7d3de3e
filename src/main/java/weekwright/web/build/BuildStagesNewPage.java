package weekwright.web.build;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a stage. */
public final class BuildStagesNewPage implements Page {
    /** @param currency its mark */
    public record View(Form form, String currency) {}

    @Override
    public View show(Request request) {
        return new View(request.form(""), request.formats().currencyMark());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return StageFields.add(request);
    }
}
