package weekwright.web.funds;

import java.util.Map;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a cost or an income that comes again. */
public final class FundsRegularNewPage implements Page {
    public record View(Form form, RegularFields.Lists lists) {}

    @Override
    public View show(Request request) {
        return new View(
                request.form(
                        "",
                        Map.of(
                                "way",
                                "out",
                                "every",
                                "month",
                                "from",
                                request.today().toString())),
                RegularFields.lists(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return RegularFields.add(request);
    }
}
