package weekwright.web.build;

import java.util.List;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds what lies in the yard. */
public final class BuildStockNewPage implements Page {
    /** @param currency its mark */
    public record View(Form form, List<Form.Choice> sources, String currency) {}

    @Override
    public View show(Request request) {
        return new View(
                request.form(""),
                MaterialFields.sources(),
                new Formats(request.settings().project().currency(), request.today()).currencyMark());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return StockFields.add(request);
    }
}
