package weekwright.web.funds;

import java.util.Collection;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.RemoveSupplier;
import weekwright.funds.Supplier;
import weekwright.funds.SupplierStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a supplier, or removes it. */
public final class FundsSupplierEditPage implements Page {
    public record View(Form form, Form remove, Collection<String> names, String name) {}

    @Override
    public View show(Request request) {
        Stored<Supplier> one = supplier(request);
        return new View(
                request.form("", one),
                request.form("remove", one),
                request.read(SupplierStore::withoutTelephone),
                one.value().name());
    }

    private static Stored<Supplier> supplier(Request request) {
        return request.read(read -> SupplierStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no supplier " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Supplier> one = supplier(request);
        if (!form.act().equals("remove")) {
            return SupplierFields.change(request, one);
        }
        return request.save(write -> {
            RemoveSupplier.remove(write, new Shown(one.row(), form.version()));
            return Saved.to("/funds/suppliers")
                    .saying(one.value().name() + " is removed. The materials keep the name.");
        });
    }
}
