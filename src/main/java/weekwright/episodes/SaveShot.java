package weekwright.episodes;

import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a wanted picture or changes one. */
public final class SaveShot {
    private SaveShot() {}

    /** The shot as it was kept, and what was odd but possible. */
    public record Saved(Stored<Shot> shot, List<Problem> remarks) {}

    /** @param shown the row that is changed; empty adds */
    public static Saved save(Write write, Optional<Shown> shown, Shot shot) throws Rejected, Stale {
        Problems problems = check(write, shot);
        Faults.refuse(problems);
        return new Saved(
                shown.isPresent()
                        ? ShotStore.TABLE.update(
                                write, shown.get().row(), shown.get().version(), shot)
                        : ShotStore.TABLE.insert(write, shot),
                problems.remarks());
    }

    /** Everything that the rules say of such a shot. */
    public static Problems check(Read read, Shot shot) {
        Problems problems = new Problems();
        EpisodeRules.check(shot, problems);
        References.check(read, ShotStore.TABLE.shape(), shot, problems);
        if (shot.episode().isEmpty() && shot.task().isEmpty()) {
            problems.fault("task", "", "is missing, and so is an episode", "say what the picture belongs to");
        }
        return problems;
    }
}
