package weekwright.web.funds;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.base.Shape;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SaveLedgerEntry;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.ReceiptField;
import weekwright.web.parts.Remarks;

/** The form of a row of the books, for adding one and for changing one. */
final class LedgerFields {
    private static final String[] COLUMNS = {
        "date",
        "kind",
        "account",
        "gross",
        "fee",
        "once",
        "stage",
        "task",
        "material",
        "payee",
        "foreign_amount",
        "foreign_currency",
        "rate",
        "note"
    };
    private static final Shape<LedgerEntry> SHAPE = Shape.of(LedgerEntry.class);

    private LedgerFields() {}

    /** What the fields are chosen from. */
    record Lists(
            List<Form.Choice> ways,
            List<Form.Choice> kinds,
            List<Form.Choice> stages,
            List<Form.Choice> tasks,
            List<Form.Choice> materials,
            List<Form.Choice> levels,
            String currency,
            String today) {}

    static Lists lists(Request request, Read read) {
        return new Lists(
                Flow.choices(),
                kinds(),
                Choices.stages(read),
                Choices.tasks(read, task -> true),
                MaterialStore.TABLE.values(read).stream()
                        .map(line -> new Form.Choice(line.id().value(), line.item()))
                        .toList(),
                PledgeLevelStore.TABLE.values(read).stream()
                        .map(level -> new Form.Choice(level.id().value(), level.name()))
                        .toList(),
                new Formats(request.settings().project().currency(), request.today()).currencyMark(),
                request.today().toString());
    }

    static List<Form.Choice> kinds() {
        return Choices.words(
                LedgerEntry.Kind.class,
                Map.of(
                        LedgerEntry.Kind.PAYOUT, "pay-out of pledges",
                        LedgerEntry.Kind.REGULAR, "comes again",
                        LedgerEntry.Kind.COUNTED, "counted balance"));
    }

    static String word(LedgerEntry.Kind kind) {
        return kinds().stream()
                .filter(choice -> choice.value().equals(Codec.word(kind)))
                .map(Form.Choice::label)
                .findFirst()
                .orElseThrow();
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Money> amount = Flow.read(form);
        Optional<LedgerEntry> read = form.record(LedgerEntry.class, Map.of("id", "new", "amount", "0"), COLUMNS);
        ReceiptField receipt = ReceiptField.read(request, form);
        return receipt.save(write -> {
            LedgerEntry entry = SHAPE.with(read.orElseThrow(), "id", LedgerEntryStore.nextId(write));
            entry = SHAPE.with(entry, "receipt", receipt.keep(""));
            SaveLedgerEntry.Saved kept = SaveLedgerEntry.save(
                    write, Optional.empty(), SHAPE.with(entry, "amount", amount.orElseThrow()), request.today());
            return Saved.to("/funds/ledger").saying("It is in the books." + Remarks.said(kept.remarks()));
        });
    }

    static Answer change(Request request, Stored<LedgerEntry> old) throws Exception {
        FormReader form = request.form();
        Optional<Money> amount = Flow.read(form);
        Optional<LedgerEntry> edited = form.edited(old.value(), COLUMNS);
        ReceiptField receipt = ReceiptField.read(request, form);
        return receipt.save(write -> {
            LedgerEntry entry = SHAPE.with(
                    edited.orElseThrow(), "receipt", receipt.keep(old.value().receipt()));
            SaveLedgerEntry.Saved kept = SaveLedgerEntry.save(
                    write,
                    Optional.of(new Shown(old.row(), form.version())),
                    SHAPE.with(entry, "amount", amount.orElseThrow()),
                    request.today());
            return Saved.to("/funds/ledger").saying("The entry is changed." + Remarks.said(kept.remarks()));
        });
    }
}
