package weekwright.web.funds;

import java.util.Collection;
import java.util.Map;
import weekwright.funds.SupplierStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a supplier. */
public final class FundsSuppliersNewPage implements Page {
    /** @param names that are offered: those without a telephone number */
    public record View(Form form, Collection<String> names) {}

    @Override
    public View show(Request request) {
        return new View(
                request.form("", Map.of("name", request.query("name"))), request.read(SupplierStore::withoutTelephone));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return SupplierFields.add(request);
    }
}
