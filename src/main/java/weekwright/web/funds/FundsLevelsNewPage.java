package weekwright.web.funds;

import java.util.Map;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a pledge level. */
public final class FundsLevelsNewPage implements Page {
    public record View(Form form, LevelFields.Lists lists) {}

    @Override
    public View show(Request request) {
        return new View(request.form("", Map.of("charged", "month")), LevelFields.lists(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return LevelFields.add(request);
    }
}
