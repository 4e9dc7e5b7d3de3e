package weekwright.funds;

import java.time.LocalDate;
import java.util.Set;
import weekwright.base.Codec;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
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
        Faults.refuse(check(write, entry, today));
        return LedgerEntryStore.TABLE.insert(write, entry);
    }

    /** Everything that the rules say of such a cost. */
    public static Problems check(Read read, LedgerEntry entry, LocalDate today) {
        Settings settings = SettingsStore.get(read);
        Problems problems = new Problems();
        if (!entry.amount().isNegative()) {
            problems.fault(
                    "amount",
                    entry.amount().negated().text(settings.moneyDigits()),
                    "is no cost",
                    "write what was paid, more than nothing");
        }
        if (!KINDS.contains(entry.kind())) {
            problems.fault("kind", Codec.word(entry.kind()), "is no kind of cost", "choose one of the list");
        }
        LedgerRules.day(entry.date(), settings.openingDate(), today, "enter it once it is paid", problems);
        LedgerRules.check(entry, settings.moneyDigits(), problems);
        LedgerRules.own(entry, settings.project().currency(), problems);
        References.check(read, LedgerEntryStore.TABLE.shape(), entry, problems);
        return problems;
    }
}
