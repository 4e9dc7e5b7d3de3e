package weekwright.web.funds;

import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.RemoveLedgerEntry;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a row of the books, or takes it out. */
public final class FundsEntryEditPage implements Page {
    public record View(Form form, Form remove, LedgerFields.Lists lists) {}

    @Override
    public View show(Request request) {
        Stored<LedgerEntry> entry = entry(request);
        Form form = request.form("", entry);
        Form shown = request.wasRefused("")
                ? form
                : Flow.parted(form, entry.value().amount(), request.settings().moneyDigits());
        return request.read(read -> new View(shown, request.form("remove", entry), LedgerFields.lists(request, read)));
    }

    private static Stored<LedgerEntry> entry(Request request) {
        return request.read(read -> LedgerEntryStore.TABLE.find(read, request.row("row")))
                .orElseThrow(() -> new NotFound("This entry is not in the books any more."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<LedgerEntry> entry = entry(request);
        if (!form.act().equals("remove")) {
            return LedgerFields.change(request, entry);
        }
        return request.save(write -> {
            RemoveLedgerEntry.remove(write, new Shown(entry.row(), form.version()));
            return Saved.to("/funds/ledger").saying("The entry is out of the books.");
        });
    }
}
