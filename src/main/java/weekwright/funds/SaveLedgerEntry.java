package weekwright.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Enters any row into the books, or changes one. */
public final class SaveLedgerEntry {
    private SaveLedgerEntry() {}

    /** The row as it was kept, and what was odd but possible. */
    public record Saved(Stored<LedgerEntry> entry, List<Problem> remarks) {}

    /**
     * @param shown the row that is changed; empty adds
     * @param today in the project's zone
     */
    public static Saved save(Write write, Optional<Shown> shown, LedgerEntry entry, LocalDate today)
            throws Rejected, Stale {
        Problems problems = check(write, shown, entry, today);
        Faults.refuse(problems);
        return new Saved(
                shown.isPresent()
                        ? LedgerEntryStore.TABLE.update(
                                write, shown.get().row(), shown.get().version(), entry)
                        : LedgerEntryStore.TABLE.insert(write, entry),
                problems.remarks());
    }

    /** A closed month's statement stays as it was. */
    static void closed(Read read, LocalDate day, Problems problems) {
        ClosedMonthStore.find(read, YearMonth.from(day))
                .ifPresent(month -> problems.remark(
                        "date",
                        Said.day(day),
                        "is in a month that was closed on "
                                + Said.day(month.value().closed()),
                        "its statement stays as it was; open the month again and close it to have it in"));
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, Optional<Shown> shown, LedgerEntry entry, LocalDate today) {
        Settings settings = SettingsStore.get(read);
        Problems problems = new Problems();
        boolean counted = entry.kind() == LedgerEntry.Kind.COUNTED;
        if (entry.amount().equals(Money.ZERO) && !counted) {
            problems.fault("amount", "0", "is nothing", "write what was paid or came in");
        }
        LedgerRules.day(entry.date(), settings.openingDate(), today, "enter it once it is so", problems);
        boolean twice = counted
                && LedgerEntryStore.TABLE.where(read, "date", entry.date().toString()).stream()
                        .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                        .map(Stored::value)
                        .anyMatch(other -> other.kind() == LedgerEntry.Kind.COUNTED
                                && other.account().equals(entry.account()));
        if (twice) {
            problems.fault("date", Said.day(entry.date()), "has a counted balance already", "write another day");
        }
        LedgerRules.check(entry, settings.moneyDigits(), problems);
        LedgerRules.own(entry, settings.project().currency(), problems);
        References.check(read, LedgerEntryStore.TABLE.shape(), entry, problems);
        closed(read, entry.date(), problems);
        return problems;
    }
}
