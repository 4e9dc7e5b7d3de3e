package weekwright.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a balance as counted at a day's end, and says by how much the books were off. */
public final class CountBalance {
    private CountBalance() {}

    /** @param difference counted less books; plus when there is more money than the books say */
    public record Counted(Stored<LedgerEntry> entry, Money books, Money difference) {}

    /**
     * @param account empty for the project's one account
     * @param today in the project's zone
     */
    public static Counted count(Write write, String account, LocalDate day, Money counted, LocalDate today)
            throws Rejected {
        Faults.refuse(check(write, account, day, today));
        Settings settings = SettingsStore.get(write);
        List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(write);
        Money books = Balance.accounts(day, settings, ledger).getOrDefault(account, Money.ZERO);
        LedgerEntry entry = Ledger.entry(
                LedgerEntryStore.nextId(write), day, counted, LedgerEntry.Kind.COUNTED, account, Optional.empty(), "");
        return new Counted(LedgerEntryStore.TABLE.insert(write, entry), books, counted.minus(books));
    }

    /** Everything that the rules say of a count on such a day. */
    public static Problems check(Read read, String account, LocalDate day, LocalDate today) {
        Problems problems = new Problems();
        LedgerRules.day(day, SettingsStore.get(read).openingDate(), today, "write the day it was counted", problems);
        boolean twice = LedgerEntryStore.TABLE.where(read, "date", day.toString()).stream()
                .map(Stored::value)
                .anyMatch(entry -> entry.kind() == LedgerEntry.Kind.COUNTED
                        && entry.account().equals(account));
        if (twice) {
            problems.fault("date", Said.day(day), "has a counted balance already", "write another day");
        }
        return problems;
    }
}
