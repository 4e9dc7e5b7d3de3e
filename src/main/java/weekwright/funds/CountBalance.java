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
        Settings settings = SettingsStore.get(write);
        List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(write);
        Problems problems = new Problems();
        if (day.isAfter(today)) {
            problems.fault("date", Said.day(day), "is after today, " + Said.day(today), "write the day it was counted");
        }
        if (day.isBefore(settings.openingDate())) {
            problems.fault(
                    "date",
                    Said.day(day),
                    "is before the books open",
                    "write a day from " + Said.day(settings.openingDate()) + " on");
        }
        boolean twice = ledger.stream()
                .anyMatch(entry -> entry.kind() == LedgerEntry.Kind.COUNTED
                        && entry.date().equals(day)
                        && entry.account().equals(account));
        if (twice) {
            problems.fault("date", Said.day(day), "has a counted balance already", "write another day");
        }
        Faults.refuse(problems);
        Money books = Balance.accounts(day, settings, ledger).getOrDefault(account, Money.ZERO);
        LedgerEntry entry = Ledger.entry(
                LedgerEntryStore.nextId(write), day, counted, LedgerEntry.Kind.COUNTED, account, Optional.empty(), "");
        return new Counted(LedgerEntryStore.TABLE.insert(write, entry), books, counted.minus(books));
    }
}
