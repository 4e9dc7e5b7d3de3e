package weekwright.episodes;

import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps the roll of supporters of an episode, or takes it away where nothing is left of it. */
public final class KeepRoll {
    private static final int LONGEST = 20_000;

    private KeepRoll() {}

    /** @param version of the roll as it was shown; 0 where there was none */
    public static void keep(Write write, Id episode, String names, long version) throws Rejected, Stale {
        if (names.length() > LONGEST) {
            throw new Rejected(Problem.fault(
                    "names", "", "is longer than " + LONGEST + " characters", "paste the names alone, a line each"));
        }
        Optional<Stored<Roll>> stands =
                RollStore.ofEpisode(write, episode).stream().findFirst();
        if (stands.isEmpty()) {
            if (!names.isBlank()) {
                RollStore.TABLE.insert(write, new Roll(episode, names.strip()));
            }
        } else if (names.isBlank()) {
            RollStore.TABLE.delete(write, stands.get().row(), version);
        } else {
            RollStore.TABLE.update(write, stands.get().row(), version, new Roll(episode, names.strip()));
        }
    }
}
