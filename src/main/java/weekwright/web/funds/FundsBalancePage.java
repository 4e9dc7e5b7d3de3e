package weekwright.web.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import weekwright.base.Money;
import weekwright.funds.Balance;
import weekwright.funds.CountBalance;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Counts an account's balance and says by how much the books were off. */
public final class FundsBalancePage implements Page {
    /** @param accounts what the books say today */
    public record View(Form form, List<Account> accounts, String currency, LocalDate today) {}

    /** An account; the project's one has no name. */
    public record Account(String name, Money amount) {}

    @Override
    public View show(Request request) {
        List<Account> accounts = request
                .read(read ->
                        Balance.accounts(request.today(), request.settings(), LedgerEntryStore.TABLE.values(read)))
                .entrySet()
                .stream()
                .map(entry -> new Account(entry.getKey(), entry.getValue()))
                .toList();
        String first = accounts.isEmpty() ? "" : accounts.get(0).name();
        return new View(
                request.form("", Map.of("date", request.today().toString(), "account", first)),
                accounts,
                new Formats(request.settings().project().currency(), request.today()).currencyMark(),
                request.today());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        LedgerEntry draft = form.draft(LedgerFields.standIn(request), "amount", "date", "account");
        form.besides(
                () -> request.read(read -> CountBalance.check(read, draft.account(), draft.date(), request.today())));
        return request.save(write -> {
            CountBalance.Counted counted =
                    CountBalance.count(write, draft.account(), draft.date(), draft.amount(), request.today());
            Formats formats = new Formats(request.settings().project().currency(), request.today());
            long off = counted.difference().minor();
            String said = off == 0
                    ? "Counted: the books agree to the last digit."
                    : "Counted: there is " + formats.moneyExact(Math.abs(off)) + (off > 0 ? " more" : " less")
                            + " than the books said. If you know what it was, enter it with a date before the count.";
            return Saved.to("/funds").saying(said);
        });
    }
}
