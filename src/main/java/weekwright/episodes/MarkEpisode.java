package weekwright.episodes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Marks a step of an episode on its day. Published needs ready, ready needs the footage complete; rough cut, picture lock
 * and sound may be passed over, but the days of all steps stand in their order.
 */
public final class MarkEpisode {
    private MarkEpisode() {}

    /** The episode as it was kept, and what was odd but possible. */
    public record Marked(Stored<Episode> episode, List<Problem> remarks) {}

    /**
     * @param day empty takes the mark away
     * @param today in the project's zone
     */
    public static Marked mark(Write write, Shown shown, Step step, Optional<LocalDate> day, LocalDate today)
            throws Rejected, Stale {
        Episode episode = shown(write, shown);
        Problems problems = new Problems();
        if (day.isPresent()) {
            checkMark(write, episode, step, day.get(), today, problems);
            if (step == Step.CUT || step == Step.PUBLISHED) {
                Rights.of(write, episode, today).remark(problems);
            }
        } else {
            checkUnmark(episode, step, problems);
        }
        Faults.refuse(problems);
        Episode changed = EpisodeStore.TABLE.shape().with(episode, step.column(), day);
        return new Marked(EpisodeStore.TABLE.update(write, shown.row(), shown.version(), changed), problems.remarks());
    }

    /** Keeps who brought the episode to a step; nobody takes that away. */
    public static void by(Write write, Id episode, Step step, Optional<Id> crew) throws Stale {
        Optional<Stored<StepBy>> stands = StepByStore.ofEpisode(write, episode).stream()
                .filter(row -> row.value().step() == step)
                .findFirst();
        if (crew.isEmpty()) {
            if (stands.isPresent()) {
                StepByStore.TABLE.delete(write, stands.get().row(), stands.get().version());
            }
            return;
        }
        StepBy by = new StepBy(episode, step, crew.get());
        if (stands.isEmpty()) {
            StepByStore.TABLE.insert(write, by);
        } else if (!stands.get().value().equals(by)) {
            StepByStore.TABLE.update(write, stands.get().row(), stands.get().version(), by);
        }
    }

    private static Episode shown(Read read, Shown shown) throws Stale {
        Optional<Stored<Episode>> now = EpisodeStore.TABLE.find(read, shown.row());
        if (now.isEmpty() || now.get().version() != shown.version()) {
            throw new Stale(EpisodeStore.TABLE.name(), shown.row(), now.map(stored -> stored));
        }
        return now.get().value();
    }

    private static void checkMark(
            Read read, Episode episode, Step step, LocalDate day, LocalDate today, Problems problems) {
        if (day.isAfter(today)) {
            problems.fault("day", Said.day(day), "is after today, " + Said.day(today), "mark it once it is so");
        }
        if (step == Step.CUT && episode.footageComplete().isEmpty()) {
            problems.fault("", episode.title(), "cannot be ready before its footage is complete", "mark that first");
        }
        if (step == Step.PUBLISHED && episode.cut().isEmpty()) {
            problems.fault("", episode.title(), "cannot be published before it is ready", "mark that first");
        }
        for (Step other : Step.values()) {
            Optional<LocalDate> its = other.day(episode);
            if (its.isPresent() && other.compareTo(step) < 0 && day.isBefore(its.get())) {
                problems.fault(
                        "day",
                        Said.day(day),
                        "is before " + other.words() + " on " + Said.day(its.get()),
                        "the steps follow each other");
            }
            if (its.isPresent() && other.compareTo(step) > 0 && day.isAfter(its.get())) {
                problems.fault(
                        "day",
                        Said.day(day),
                        "is after " + other.words() + " on " + Said.day(its.get()),
                        "the steps follow each other");
            }
        }
        if (step == Step.FOOTAGE_COMPLETE) {
            ShotStore.ofEpisode(read, episode.id()).stream()
                    .map(Stored::value)
                    .filter(Shot::isMissed)
                    .forEach(shot -> problems.remark("", shot.what(), "is a must-have shot that is not captured", ""));
        }
    }

    private static void checkUnmark(Episode episode, Step step, Problems problems) {
        boolean needed = step == Step.FOOTAGE_COMPLETE && episode.cut().isPresent()
                || step == Step.CUT && episode.published().isPresent();
        if (needed) {
            problems.fault(
                    "",
                    episode.title(),
                    "is " + (step == Step.CUT ? "published" : "ready") + ", which needs " + step.words(),
                    "take that mark away first");
        }
    }
}
