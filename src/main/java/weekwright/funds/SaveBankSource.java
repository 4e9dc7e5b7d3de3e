package weekwright.funds;

import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps how the files of a source are read; the next file of it is read in the same way. */
public final class SaveBankSource {
    private SaveBankSource() {}

    /** @param old the source as it stands; empty adds one */
    public static Stored<BankSource> save(Write write, Optional<Stored<BankSource>> old, BankSource source)
            throws Rejected, Stale {
        Faults.refuse(check(write, old, source));
        if (old.isEmpty()) {
            return BankSourceStore.TABLE.insert(write, source);
        }
        return old.get().value().equals(source)
                ? old.get()
                : BankSourceStore.TABLE.update(write, old.get().row(), old.get().version(), source);
    }

    /** Everything that the rules say of such a source. */
    public static Problems check(Read read, Optional<Stored<BankSource>> old, BankSource source) {
        Problems problems = new Problems();
        check(source, problems);
        boolean named = BankSourceStore.TABLE.list(read).stream()
                .filter(other -> old.map(one -> one.row() != other.row()).orElse(true))
                .anyMatch(other -> other.value().name().equalsIgnoreCase(source.name()));
        if (named && !source.name().isEmpty()) {
            problems.fault("name", source.name(), "is the name of another source", "choose it on the page before");
        }
        return problems;
    }

    /** What must hold within one. */
    public static void check(BankSource source, Problems problems) {
        if (source.name().isBlank()) {
            problems.fault("name", "", "is missing", "write whose files they are, such as The bank");
        }
        boolean two = source.out().isPresent() || source.in().isPresent();
        if (source.amount().isPresent() && two) {
            problems.fault(
                    "amount",
                    "",
                    "is chosen beside a column of what goes out or comes in",
                    "choose the one column, or the two");
        } else if (source.amount().isEmpty() && !two) {
            problems.fault("amount", "", "is missing", "choose the column of the amount, or the two of out and in");
        } else if (two && (source.out().isEmpty() || source.in().isEmpty())) {
            problems.fault(
                    source.out().isEmpty() ? "out" : "in",
                    "",
                    "is missing beside the other",
                    "choose both, or one column of the amount");
        }
        if (source.way().isPresent() && source.amount().isEmpty()) {
            problems.fault("way", "", "is chosen without an amount", "choose the column of the amount, too");
        }
        for (LedgerEntry.Kind kind : new LedgerEntry.Kind[] {source.kindIn(), source.kindOut()}) {
            if (kind == LedgerEntry.Kind.COUNTED) {
                problems.fault(
                        kind == source.kindIn() ? "kind_in" : "kind_out",
                        Codec.word(kind),
                        "is no movement",
                        "choose another kind");
            }
        }
    }
}
