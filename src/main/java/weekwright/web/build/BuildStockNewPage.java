package weekwright.web.build;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds what lies in the yard. */
public final class BuildStockNewPage implements Page {
    public record View(Form form, StockFields.Lists lists) {}

    @Override
    public View show(Request request) {
        Form form = request.form(DryingFields.act(request));
        return new View(form, StockFields.lists(request, form));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return StockFields.add(request);
    }
}
