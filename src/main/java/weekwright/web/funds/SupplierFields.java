package weekwright.web.funds;

import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.SaveSupplier;
import weekwright.funds.Supplier;
import weekwright.funds.SupplierStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The form of a supplier, for adding and for changing it. */
final class SupplierFields {
    private static final String[] COLUMNS = {"name", "telephone", "email", "remarks"};
    private static final Shape<Supplier> SHAPE = Shape.of(Supplier.class);

    /** What stands in for columns that cannot be read. */
    private static final Supplier STAND_IN = new Supplier(new Id("new"), "", "", "", "");

    private SupplierFields() {}

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Supplier draft = form.draft(STAND_IN, COLUMNS);
        form.besides(() -> request.read(read -> SaveSupplier.check(read, draft)));
        return request.save(write -> {
            Supplier one = SHAPE.with(draft, "id", ReferenceStore.unusedId(write, SupplierStore.TABLE.name(), "s"));
            SaveSupplier.save(write, Optional.empty(), one);
            return Saved.to("/funds/suppliers").saying(one.name() + " is on the list.");
        });
    }

    static Answer change(Request request, Stored<Supplier> old) throws Exception {
        FormReader form = request.form();
        Supplier draft = form.draft(old.value(), COLUMNS);
        form.besides(() -> request.read(read -> SaveSupplier.check(read, draft)));
        return request.save(write -> {
            SaveSupplier.save(write, Optional.of(new Shown(old.row(), form.version())), draft);
            return Saved.to("/funds/suppliers").saying("Saved: " + draft.name() + ".");
        });
    }
}
