package weekwright.web.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Money;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.Balance;
import weekwright.funds.CountBalance;
import weekwright.funds.Counts;
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
    private static final int COUNTS_MOST = 12;

    /**
     * @param accounts what the books say today
     * @param counts the last ones, the newest first
     */
    public record View(Form form, List<Account> accounts, List<Line> counts, String currency, LocalDate today) {}

    /** A count; {@code off}: the difference in words, empty for none. */
    public record Line(long row, String day, String account, Money counted, Money books, String off) {}

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
        List<Line> counts = request.read(read -> counts(request, read));
        String first = accounts.isEmpty() ? "" : accounts.get(0).name();
        return new View(
                request.form("", Map.of("date", request.today().toString(), "account", first)),
                accounts,
                counts,
                request.formats().currencyMark(),
                request.today());
    }

    private static List<Line> counts(Request request, Read read) {
        Formats formats = request.formats();
        List<Stored<LedgerEntry>> ledger = LedgerEntryStore.TABLE.list(read);
        Map<LedgerEntry, Long> rows = new IdentityHashMap<>();
        ledger.forEach(stored -> rows.put(stored.value(), stored.row()));
        List<Counts.Count> counts = new ArrayList<>(
                Counts.of(request.settings(), ledger.stream().map(Stored::value).toList()));
        Collections.reverse(counts);
        return counts.stream()
                .limit(COUNTS_MOST)
                .map(count -> new Line(
                        rows.get(count.entry()),
                        formats.dateShort(count.entry().date()),
                        count.entry().account(),
                        count.entry().amount(),
                        count.books(),
                        off(count.difference().minor(), formats)))
                .toList();
    }

    private static String off(long off, Formats formats) {
        return off == 0 ? "" : formats.moneyExact(Math.abs(off)) + (off > 0 ? " more" : " less");
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
            Formats formats = request.formats();
            long off = counted.difference().minor();
            String said = off == 0
                    ? "Counted: the books agree to the last digit."
                    : "Counted: there is " + off(off, formats)
                            + " than the books said. If you know what it was, enter it with a date before the count.";
            return Saved.to("/funds").saying(said);
        });
    }
}
