package weekwright.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.ReferenceStore;
import weekwright.build.References;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Write;

/** Enters the chosen rows of a bank's file into the books: all of them or none, as one change. */
public final class EnterBankFile {
    private EnterBankFile() {}

    /**
     * @param chosen entries as they shall stand, but for their ids
     * @param lines of the file, one for each entry, to say where a fault is
     * @param leftOut rows of the file that are not among them
     * @param today in the project's zone
     */
    public static BankFile enter(
            Write write,
            WaitingFile file,
            Id source,
            List<LedgerEntry> chosen,
            List<Integer> lines,
            int leftOut,
            LocalDate today)
            throws Rejected {
        Settings settings = SettingsStore.get(write);
        Problems problems = new Problems();
        for (int i = 0; i < chosen.size(); i++) {
            Problems ofRow = new Problems();
            check(chosen.get(i), settings, today, ofRow);
            References.check(write, LedgerEntryStore.TABLE.shape(), chosen.get(i), ofRow);
            int line = lines.get(i);
            ofRow.faults().forEach(fault -> problems.add(fault.at(file.name(), line)));
        }
        if (chosen.isEmpty()) {
            problems.fault("", "", "No row is chosen", "tick those that are to go into the books");
        }
        Faults.refuse(problems);
        LedgerEntryStore.TABLE.insertAll(write, numbered(write, chosen));
        LocalDate first =
                chosen.stream().map(LedgerEntry::date).min(LocalDate::compareTo).orElseThrow();
        LocalDate last =
                chosen.stream().map(LedgerEntry::date).max(LocalDate::compareTo).orElseThrow();
        BankFile read = new BankFile(
                ReferenceStore.unusedId(write, BankFileStore.TABLE.name(), "file"),
                source,
                file.name(),
                today,
                first,
                last,
                chosen.size(),
                leftOut);
        BankFileStore.TABLE.insert(write, read);
        return read;
    }

    /** Why a row cannot stand in the books as it is. */
    public static void check(LedgerEntry entry, Settings settings, LocalDate today, Problems problems) {
        LedgerRules.day(entry.date(), settings.openingDate(), today, "leave it out until it is so", problems);
        LedgerRules.check(entry, settings.moneyDigits(), problems);
        if (entry.kind() == LedgerEntry.Kind.COUNTED) {
            problems.fault(
                    "kind", Said.day(entry.date()), "is a movement, not a counted balance", "choose another kind");
        }
    }

    private static List<LedgerEntry> numbered(Write write, List<LedgerEntry> entries) {
        Set<String> taken = new HashSet<>();
        LedgerEntryStore.TABLE.ids(write).forEach(id -> taken.add(id.folded()));
        String first = LedgerEntryStore.nextId(write).value();
        int dot = first.lastIndexOf('.');
        long number = Long.parseLong(first.substring(dot + 1));
        List<LedgerEntry> numbered = new ArrayList<>(entries.size());
        for (LedgerEntry entry : entries) {
            Id id = new Id(first.substring(0, dot + 1) + number++);
            while (taken.contains(id.folded())) {
                id = new Id(first.substring(0, dot + 1) + number++);
            }
            numbered.add(LedgerEntryStore.TABLE.shape().with(entry, "id", id));
        }
        return numbered;
    }
}
