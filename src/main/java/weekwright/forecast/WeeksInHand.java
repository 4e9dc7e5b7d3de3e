package weekwright.forecast;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.PiecesLog;

/** How many coming slots in a row can be filled if nothing more is filmed. Pure. */
final class WeeksInHand {
    private WeeksInHand() {}

    /**
     * Slot by slot: its own episode with the footage complete, else a share of the story bank, else a standby whose footage
     * is complete; the first slot that none of them fills ends the row.
     *
     * @param slots coming slots in order
     */
    static int of(Inputs inputs, int[] slots) {
        int fromBank = (int) Math.floor(bank(inputs) / inputs.publishing().targetMinutes() + 1e-9);
        int standbys = 0;
        Map<Integer, Boolean> own = new HashMap<>();
        for (Inputs.Episode episode : inputs.episodes()) {
            boolean open = episode.published() == Inputs.NONE;
            boolean shot = episode.footageComplete() != Inputs.NONE;
            if (open && shot && episode.kind() == Inputs.EpisodeKind.STANDBY) {
                standbys++;
            } else if (open && episode.slot() != Inputs.NONE) {
                own.put(episode.slot(), shot);
            }
        }
        int weeks = 0;
        for (int slot : slots) {
            if (own.getOrDefault(slot, false)) {
                weeks++;
            } else if (fromBank > 0) {
                fromBank--;
                weeks++;
            } else if (standbys > 0) {
                standbys--;
                weeks++;
            } else {
                return weeks;
            }
        }
        return weeks;
    }

    /**
     * Finished minutes that filmed and untold work can give today (rule 72): story minutes times the share of the task that
     * is done and was filmed, less the largest share that an episode tells of it.
     */
    static double bank(Inputs inputs) {
        Map<String, Double> told = told(inputs);
        double minutes = 0;
        for (Inputs.Task task : inputs.tasks()) {
            if (task.camera() != Inputs.Camera.NONE && !task.storyTold() && task.dropped() == Inputs.NONE) {
                minutes += task.storyMinutes() * Math.max(0, filmed(task) - told.getOrDefault(task.id(), 0.0));
            }
        }
        return minutes;
    }

    /** By task, the largest share that an episode tells of it. */
    static Map<String, Double> told(Inputs inputs) {
        Map<String, Double> told = new HashMap<>();
        for (Inputs.Episode episode : inputs.episodes()) {
            episode.tells().forEach(tell -> told.merge(tell.task(), tell.share(), Math::max));
        }
        return told;
    }

    /** Share of a task that is done and was filmed. */
    static double filmed(Inputs.Task task) {
        return doneShare(task) * filmedShare(task);
    }

    /** Share of its logged hours on days with the camera, with footage, or with a captured shot. */
    private static double filmedShare(Inputs.Task task) {
        Set<Integer> days = task.log().stream()
                .filter(work -> work.filmed() || work.as() == Inputs.As.CAMERA)
                .map(Inputs.Worked::date)
                .collect(Collectors.toSet());
        days.addAll(task.shotDays());
        long all = minutes(task);
        long filmed = task.log().stream()
                .filter(work -> work.as() == Inputs.As.HANDS && days.contains(work.date()))
                .mapToLong(Inputs.Worked::minutes)
                .sum();
        return all == 0 ? 0 : (double) filmed / all;
    }

    /** 1 of a done task; else pieces done, or hours logged of those expected, never all. */
    static double doneShare(Inputs.Task task) {
        if (task.done() != Inputs.NONE) {
            return 1;
        }
        if (task.pieces() > 1) {
            int pieces = task.log().stream().mapToInt(Inputs.Worked::pieces).sum();
            return Math.min(1, (double) pieces / task.pieces());
        }
        double logged = minutes(task);
        double left = task.leftMinutes() >= 0
                ? task.leftMinutes()
                : Math.max(task.estimate().given() ? task.estimate().mean() - logged : logged, logged / 10);
        return logged == 0 ? 0 : logged / (logged + left);
    }

    private static long minutes(Inputs.Task task) {
        return task.log().stream()
                .filter(work -> work.as() == Inputs.As.HANDS)
                .mapToLong(Inputs.Worked::minutes)
                .sum();
    }

    /** Person-minutes that the listed, estimated tasks of a stage come to, mean; those dropped since too (rule 121). */
    static double listedMinutes(Inputs inputs, String stage) {
        return inputs.tasks().stream()
                .filter(task -> task.stage().equals(stage)
                        && task.kind() == Inputs.Kind.WORK
                        && task.estimate().given())
                .mapToDouble(
                        task -> task.estimate().mean() * PiecesLog.unitSum(1, task.pieces(), task.learningPercent()))
                .sum();
    }
}
