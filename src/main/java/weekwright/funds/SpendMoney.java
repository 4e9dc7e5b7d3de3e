package weekwright.funds;

import java.time.LocalDate;
import java.util.Set;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Enters a cost into the books. */
public final class SpendMoney {
    /** What money is paid out for; the other kinds come in, or are made by other verbs. */
    public static final Set<LedgerEntry.Kind> KINDS = Set.of(
            LedgerEntry.Kind.MATERIAL,
            LedgerEntry.Kind.EQUIPMENT,
            LedgerEntry.Kind.WAGES,
            LedgerEntry.Kind.REGULAR,
            LedgerEntry.Kind.OTHER_COST,
            LedgerEntry.Kind.DRAWINGS,
            LedgerEntry.Kind.TAX);

    private SpendMoney() {}

    /**
     * @param entry with a negative amount: money goes out
     * @param today in the project's zone
     */
    public static Stored<LedgerEntry> spend(Write write, LedgerEntry entry, LocalDate today) throws Rejected {
        Settings settings = SettingsStore.get(write);
        Problems problems = new Problems();
        if (!entry.amount().isNegative()) {
            problems.fault(
                    "amount",
                    entry.amount().negated().text(settings.moneyDigits()),
                    "is no cost",
                    "write what was paid, more than nothing");
        }
        if (!KINDS.contains(entry.kind())) {
            problems.fault(
                    "kind", weekwright.base.Codec.word(entry.kind()), "is no kind of cost", "choose one of the list");
        }
        if (entry.date().isAfter(today)) {
            problems.fault(
                    "date", Said.day(entry.date()), "is after today, " + Said.day(today), "enter it once it is paid");
        }
        if (entry.date().isBefore(settings.openingDate())) {
            problems.fault(
                    "date",
                    Said.day(entry.date()),
                    "is before the books open",
                    "write a day from " + Said.day(settings.openingDate()) + " on");
        }
        LedgerRules.check(entry, settings.moneyDigits(), problems);
        References.check(write, LedgerEntryStore.TABLE.shape(), entry, problems);
        Faults.refuse(problems);
        return LedgerEntryStore.TABLE.insert(write, entry);
    }
}
