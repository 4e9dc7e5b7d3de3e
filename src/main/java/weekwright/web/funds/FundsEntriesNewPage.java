package weekwright.web.funds;

import java.util.Map;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Enters any row into the books. */
public final class FundsEntriesNewPage implements Page {
    public record View(Form form, LedgerFields.Lists lists) {}

    @Override
    public View show(Request request) {
        return request.read(read -> new View(
                request.form(
                        "",
                        Map.of("date", request.today().toString(), "way", "out", "waiting", request.query("receipt"))),
                LedgerFields.lists(request, read)));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return LedgerFields.add(request);
    }
}
