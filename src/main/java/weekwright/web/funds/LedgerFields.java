package weekwright.web.funds;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Shape;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SaveLedgerEntry;
import weekwright.render.Form;
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
    static final Shape<LedgerEntry> SHAPE = Shape.of(LedgerEntry.class);

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
                levels(read),
                request.formats().currencyMark(),
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

    /** Of what moves money: all but a counted balance. */
    static List<Form.Choice> movements() {
        return kinds().stream()
                .filter(kind -> !kind.value().equals(Codec.word(LedgerEntry.Kind.COUNTED)))
                .toList();
    }

    static List<Form.Choice> levels(Read read) {
        return PledgeLevelStore.TABLE.values(read).stream()
                .map(level -> new Form.Choice(level.id().value(), level.name()))
                .toList();
    }

    static String word(LedgerEntry.Kind kind) {
        return kinds().stream()
                .filter(choice -> choice.value().equals(Codec.word(kind)))
                .map(Form.Choice::label)
                .findFirst()
                .orElseThrow();
    }

    /** From or to whom, else what for; of a pay-out its pledge level. */
    static String what(LedgerEntry entry, List<PledgeLevel> levels) {
        return levels.stream()
                .filter(level -> entry.kind() == LedgerEntry.Kind.PAYOUT
                        && level.id().value().equalsIgnoreCase(entry.payee()))
                .map(PledgeLevel::name)
                .findFirst()
                .orElse(entry.payee().isEmpty() ? entry.note() : entry.payee());
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Money> amount = Flow.read(form);
        LedgerEntry draft = SHAPE.with(form.draft(standIn(request), COLUMNS), "amount", amount.orElse(Money.ZERO));
        form.besides(() -> request.read(read -> SaveLedgerEntry.check(read, Optional.empty(), draft, request.today())));
        ReceiptField receipt = ReceiptField.read(request, form);
        return receipt.save(write -> {
            LedgerEntry entry = SHAPE.with(draft, "id", LedgerEntryStore.nextId(write));
            entry = SHAPE.with(entry, "receipt", receipt.keep(""));
            SaveLedgerEntry.Saved kept = SaveLedgerEntry.save(write, Optional.empty(), entry, request.today());
            return Saved.to("/funds/ledger").saying("It is in the books." + Remarks.said(kept.remarks()));
        });
    }

    /** What stands in for columns that cannot be read. */
    static LedgerEntry standIn(Request request) {
        Map<String, String> texts =
                Map.of("id", "new", "date", request.today().toString(), "amount", "0", "kind", "other-cost");
        return SHAPE.parse(texts, request.form().reading(), new Problems()).orElseThrow();
    }

    static Answer change(Request request, Stored<LedgerEntry> old) throws Exception {
        FormReader form = request.form();
        Optional<Money> amount = Flow.read(form);
        LedgerEntry draft = SHAPE.with(form.draft(old.value(), COLUMNS), "amount", amount.orElse(Money.ZERO));
        Optional<Shown> shown = Optional.of(new Shown(old.row(), form.version()));
        form.besides(() -> request.read(read -> SaveLedgerEntry.check(read, shown, draft, request.today())));
        ReceiptField receipt = ReceiptField.read(request, form);
        return receipt.save(write -> {
            LedgerEntry entry =
                    SHAPE.with(draft, "receipt", receipt.keep(old.value().receipt()));
            SaveLedgerEntry.Saved kept = SaveLedgerEntry.save(write, shown, entry, request.today());
            return Saved.to("/funds/ledger").saying("The entry is saved." + Remarks.said(kept.remarks()));
        });
    }
}
