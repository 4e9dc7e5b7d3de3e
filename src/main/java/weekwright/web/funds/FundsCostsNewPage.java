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

/** Enters a cost into the books. */
public final class FundsCostsNewPage implements Page {
    /** @param currency its mark */
    public record View(
            Form form,
            List<Form.Choice> kinds,
            List<Form.Choice> stages,
            List<Form.Choice> tasks,
            String currency,
            LocalDate today) {}

    @Override
    public View show(Request request) {
        return request.read(read -> new View(
                request.form("", Map.of("date", request.today().toString(), "kind", "other-cost")),
                Choices.words(LedgerEntry.Kind.class, Map.of()).stream()
                        .filter(choice -> SpendMoney.KINDS.stream()
                                .anyMatch(kind -> Codec.word(kind).equals(choice.value())))
                        .toList(),
                Choices.stages(read),
                Choices.tasks(read, task -> task.isOpen()),
                new Formats(request.settings().project().currency(), request.today()).currencyMark(),
                request.today()));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Money> paid = form.needed("amount", Money.class);
        Map<String, String> fixed = Map.of(
                "id",
                "new",
                "amount",
                paid.map(money -> money.negated().text(request.settings().moneyDigits()))
                        .orElse("0"));
        Optional<LedgerEntry> read = form.record(
                LedgerEntry.class, fixed, "date", "kind", "account", "payee", "stage", "task", "once", "note");
        return request.save(write -> {
            LedgerEntry entry =
                    Shape.of(LedgerEntry.class).with(read.orElseThrow(), "id", LedgerEntryStore.nextId(write));
            SpendMoney.spend(write, entry, request.today());
            Formats formats = new Formats(request.settings().project().currency(), request.today());
            return Saved.to("/funds")
                    .saying(formats.moneyExact(paid.orElseThrow().minor()) + " paid on "
                            + Formats.dayMonthLong(entry.date()) + " are in the books.");
        });
    }
}
