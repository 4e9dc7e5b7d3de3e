package weekwright.web.funds;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.funds.SaveRegularItem;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Remarks;

/** The form of what comes again, for adding and for changing it. */
final class RegularFields {
    private static final String[] COLUMNS = {"name", "every", "spread", "from", "to"};
    private static final Shape<RegularItem> SHAPE = Shape.of(RegularItem.class);

    /** What stands in for columns that cannot be read. */
    private static final RegularItem STAND_IN = new RegularItem(
            new Id("new"),
            "",
            Money.ZERO,
            Optional.empty(),
            RegularItem.Every.MONTH,
            Optional.empty(),
            Optional.empty());

    private RegularFields() {}

    /** What the fields are chosen from. */
    record Lists(List<Form.Choice> ways, List<Form.Choice> every, String currency) {}

    static Lists lists(Request request) {
        return new Lists(
                Flow.choices(),
                Choices.words(RegularItem.Every.class, Map.of(RegularItem.Every.EPISODE, "published episode")),
                request.formats().currencyMark());
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Money> amount = Flow.read(form);
        RegularItem draft = SHAPE.with(form.draft(STAND_IN, COLUMNS), "amount", amount.orElse(Money.ZERO));
        form.besides(() -> request.read(read -> SaveRegularItem.check(read, draft)));
        return request.save(write -> {
            RegularItem item =
                    SHAPE.with(draft, "id", ReferenceStore.unusedId(write, RegularItemStore.TABLE.name(), "r"));
            List<Problem> remarks = SaveRegularItem.check(write, item).remarks();
            SaveRegularItem.save(write, Optional.empty(), item);
            return Saved.to("/funds/regular").saying(item.name() + " is on the list." + Remarks.said(remarks));
        });
    }

    static Answer change(Request request, Stored<RegularItem> old) throws Exception {
        FormReader form = request.form();
        Optional<Money> amount = Flow.read(form);
        RegularItem draft = SHAPE.with(form.draft(old.value(), COLUMNS), "amount", amount.orElse(Money.ZERO));
        form.besides(() -> request.read(read -> SaveRegularItem.check(read, draft)));
        return request.save(write -> {
            List<Problem> remarks = SaveRegularItem.check(write, draft).remarks();
            SaveRegularItem.save(write, Optional.of(new Shown(old.row(), form.version())), draft);
            return Saved.to("/funds/regular").saying("Saved: " + draft.name() + "." + Remarks.said(remarks));
        });
    }
}
