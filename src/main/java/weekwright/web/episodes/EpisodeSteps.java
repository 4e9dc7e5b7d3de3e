package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.Step;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.render.Formats;
import weekwright.render.chart.Reel;

/**
 * How far an episode is. Its first frame fills by the must-have shots captured; without such shots, by the work done of
 * the tasks that it tells.
 *
 * @param shots must-have shots, those called off left out
 * @param captured of them
 * @param told share of the told tasks' work that is done, 0 to 1
 * @param tells titles of the told tasks
 */
record EpisodeSteps(Episode episode, int shots, int captured, double told, List<String> tells) {

    static EpisodeSteps of(Read read, Episode episode) {
        List<Shot> musts = ShotStore.ofEpisode(read, episode.id()).stream()
                .map(Stored::value)
                .filter(shot -> shot.must() && !shot.calledOff())
                .toList();
        int captured =
                (int) musts.stream().filter(shot -> shot.captured().isPresent()).count();
        double done = 0;
        double wanted = 0;
        List<String> titles = new ArrayList<>();
        for (Stored<Tell> tell : TellStore.ofEpisode(read, episode.id())) {
            Optional<Task> task =
                    TaskStore.TABLE.find(read, tell.value().task()).map(Stored::value);
            if (task.isPresent() && task.get().dropped().isEmpty()) {
                titles.add(task.get().title());
                double share = tell.value().share().map(s -> s.doubleValue()).orElse(1.0);
                wanted += share;
                done += Math.min(share, doneShare(read, task.get()));
            }
        }
        return new EpisodeSteps(episode, musts.size(), captured, wanted == 0 ? 0 : done / wanted, titles);
    }

    private static double doneShare(Read read, Task task) {
        if (task.done().isPresent()) {
            return 1;
        }
        TaskFigures hours = TaskFigures.of(read, task);
        int all = hours.logged() + hours.left();
        return all == 0 ? 0 : (double) hours.logged() / all;
    }

    /** "done", "40 % done", "not begun". */
    static String far(Read read, Task task) {
        if (task.done().isPresent()) {
            return "done";
        }
        long percent = Math.round(100 * Math.min(1, doneShare(read, task)));
        return percent == 0 ? "not begun" : percent + Formats.NBSP + "% done";
    }

    /** The strip of film, a frame a step. */
    String reel() {
        double[] filled = new double[Step.values().length];
        boolean later = false;
        for (int i = filled.length - 1; i >= 0; i--) {
            later |= Step.values()[i].day(episode).isPresent();
            filled[i] = later ? 1 : 0;
        }
        if (filled[0] == 0) {
            filled[0] = shots > 0 ? (double) captured / shots : told;
        }
        return Reel.of(filled);
    }

    /** The step reached, or how much is shot. */
    String words(Formats formats) {
        for (int i = Step.values().length - 1; i >= 0; i--) {
            Step step = Step.values()[i];
            Optional<LocalDate> day = step.day(episode);
            if (day.isPresent()) {
                return step.words() + " " + formats.dateShort(day.get());
            }
        }
        if (shots > 0) {
            return captured + " of " + Formats.count(shots, "shot");
        }
        return tells.isEmpty() || told == 0 ? "not begun" : Math.round(told * 100) + " % of its work done";
    }
}
