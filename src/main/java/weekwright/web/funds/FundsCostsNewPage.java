package weekwright.web.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.base.Shape;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.SpendMoney;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.ReceiptField;

/** Enters a cost into the books. */
public final class FundsCostsNewPage implements Page {
    /**
     * @param currency its mark
     * @param waiting the receipt that is typed in, empty for none
     */
    public record View(
            Form form,
            List<Form.Choice> kinds,
            List<Form.Choice> stages,
            List<Form.Choice> tasks,
            String currency,
            LocalDate today,
            String waiting) {}

    @Override
    public View show(Request request) {
        String waiting = request.query("receipt");
        Form form =
                request.form("", Map.of("date", request.today().toString(), "kind", "other-cost", "waiting", waiting));
        return request.read(read -> new View(
                form,
                Choices.words(LedgerEntry.Kind.class, Map.of()).stream()
                        .filter(choice -> SpendMoney.KINDS.stream()
                                .anyMatch(kind -> Codec.word(kind).equals(choice.value())))
                        .toList(),
                Choices.stages(read),
                Choices.tasks(read, task -> task.isOpen()),
                request.formats().currencyMark(),
                request.today(),
                form.value("waiting")));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Money> paid = form.needed("amount", Money.class);
        Shape<LedgerEntry> shape = Shape.of(LedgerEntry.class);
        LedgerEntry draft = shape.with(
                form.draft(
                        LedgerFields.standIn(request),
                        "date",
                        "kind",
                        "account",
                        "payee",
                        "stage",
                        "task",
                        "once",
                        "note"),
                "amount",
                paid.orElse(Money.ZERO).negated());
        form.besides(() -> request.read(read -> SpendMoney.check(read, draft, request.today())));
        ReceiptField receipt = ReceiptField.read(request, form);
        return receipt.save(write -> {
            LedgerEntry entry = shape.with(draft, "id", LedgerEntryStore.nextId(write));
            entry = shape.with(entry, "receipt", receipt.keep(""));
            SpendMoney.spend(write, entry, request.today());
            Formats formats = request.formats();
            boolean more =
                    receipt.waited() && !ReceiptField.waiting(write, request).isEmpty();
            return Saved.to(more ? "/funds/receipts" : "/funds")
                    .saying(formats.moneyExact(paid.orElseThrow().minor()) + " paid on "
                            + Formats.dayMonthLong(entry.date()) + " are in the books.");
        });
    }
}
