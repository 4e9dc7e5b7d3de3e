package weekwright.episodes;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;

/** Keeps a whole list that hangs on an episode: its running order, its music, its releases. What stands the same is not touched. */
public final class KeepParts {
    private KeepParts() {}

    /** Tells a list as it stands from the same list changed by somebody else. */
    public static String mark(List<? extends Stored<?>> stands) {
        return Integer.toHexString(Objects.hash(
                stands.stream().map(row -> row.row() + ":" + row.version()).toList()));
    }

    /**
     * @param seen the mark of the list as it was shown
     * @param stands as it is now, in stored order
     * @param wanted as it is to be
     * @throws Rejected when somebody changed the list meanwhile
     */
    public static <R extends Record> void keep(
            Write write, Table<R> table, String seen, List<Stored<R>> stands, List<R> wanted) throws Rejected, Stale {
        List<R> now = stands.stream().map(Stored::value).toList();
        if (now.equals(wanted)) {
            return;
        }
        if (!mark(stands).equals(seen)) {
            throw new Rejected(Problem.fault(
                    "",
                    "",
                    "Somebody else has changed this list since you opened it",
                    "what you typed stands here; look at theirs in another window, then save this once more"));
        }
        for (int i = 0; i < Math.max(stands.size(), wanted.size()); i++) {
            Optional<Stored<R>> old = i < stands.size() ? Optional.of(stands.get(i)) : Optional.empty();
            if (i >= wanted.size()) {
                table.delete(write, old.orElseThrow().row(), old.get().version());
            } else if (old.isEmpty()) {
                table.insert(write, wanted.get(i));
            } else if (!old.get().value().equals(wanted.get(i))) {
                table.update(write, old.get().row(), old.get().version(), wanted.get(i));
            }
        }
    }
}
