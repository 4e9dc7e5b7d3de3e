package weekwright.episodes;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rows;
import weekwright.build.BuildRows;
import weekwright.build.Settings;
import weekwright.build.Task;

/** The rules over many episodes: slots, numbers, what they tell, who edits them. */
public final class SlotRules {
    private SlotRules() {}

    public static void check(EpisodeRows rows, BuildRows build, Settings settings, LocalDate today, Problems problems) {
        Rows<Episode> episodes = rows.episodes();
        episodes.twice(
                Episode::slot,
                (later, first) -> episodes.fault(
                        problems,
                        later,
                        "slot",
                        episodes.get(later).slot().orElseThrow().toString(),
                        "is the slot of " + episodes.get(first).id() + " already",
                        "choose another date"));
        episodes.twice(
                Episode::number,
                (later, first) -> episodes.fault(
                        problems,
                        later,
                        "number",
                        episodes.get(later).number().orElseThrow().toString(),
                        "is the number of " + episodes.get(first).id() + " already",
                        "choose another number"));
        boolean editors =
                build.crew().list().stream().anyMatch(member -> member.trades().has("edit"));
        for (int i = 0; i < episodes.size(); i++) {
            Episode episode = episodes.get(i);
            if (episode.published().isEmpty()) {
                slot(episodes, i, settings, today, problems);
                if (episode.cut().isEmpty() && episode.editor().isEmpty() && !editors) {
                    episodes.remark(
                            problems,
                            i,
                            "editor",
                            "",
                            "is missing and nobody has the trade edit, so it is never cut",
                            "name an editor, or give somebody the trade");
                }
            }
        }
        tells(rows.tells(), build.tasks().by(Task::id), problems);
        skipped(rows.skipped(), settings, problems);
    }

    private static void skipped(Rows<SkippedSlot> skipped, Settings settings, Problems problems) {
        skipped.twice(
                slot -> Optional.of(slot.date()),
                (later, first) -> skipped.fault(
                        problems,
                        later,
                        "date",
                        skipped.get(later).date().toString(),
                        "stands in " + skipped.place(first, "another row") + " already",
                        "keep one of the two"));
        for (int i = 0; i < skipped.size(); i++) {
            LocalDate date = skipped.get(i).date();
            if (!settings.skip().contains(date)) {
                skipped.remark(
                        problems,
                        i,
                        "date",
                        date.toString(),
                        "is not among the slots that publishing skips",
                        "add it to skip, or take the row out");
            }
        }
    }

    /** Whether episodes come out on a date at all: the weekday, every so many weeks from the first, less those skipped. */
    public static boolean isSlot(LocalDate date, Settings settings) {
        return isRegular(date, settings) && !settings.skip().contains(date);
    }

    /** As {@link #isSlot}, those skipped among them. */
    public static boolean isRegular(LocalDate date, Settings settings) {
        long days = ChronoUnit.DAYS.between(settings.firstSlot(), date);
        return days >= 0 && days % (7L * settings.everyWeeks()) == 0;
    }

    /** The first regular slot on or after a day, skipped or not. */
    public static LocalDate next(LocalDate day, Settings settings) {
        long apart = 7L * settings.everyWeeks();
        long days = Math.max(0, ChronoUnit.DAYS.between(settings.firstSlot(), day));
        return settings.firstSlot().plusDays((days + apart - 1) / apart * apart);
    }

    private static void slot(Rows<Episode> episodes, int index, Settings settings, LocalDate today, Problems problems) {
        Optional<LocalDate> slot = episodes.get(index).slot();
        if (slot.filter(date -> !isSlot(date, settings)).isPresent()) {
            episodes.remark(
                    problems,
                    index,
                    "slot",
                    slot.get().toString(),
                    "is no day on which episodes come out",
                    "look at weekday, first, every_weeks and skip");
        } else if (slot.filter(date -> date.isBefore(today)).isPresent()) {
            episodes.remark(
                    problems,
                    index,
                    "slot",
                    slot.get().toString(),
                    "is past and the episode is not published",
                    "write when it came out, or choose another date");
        }
    }

    private static void tells(Rows<Tell> tells, Map<Id, Task> tasks, Problems problems) {
        tells.twice(
                tell -> Optional.of(List.of(tell.episode().folded(), tell.task().folded())),
                (later, first) -> tells.fault(
                        problems,
                        later,
                        "task",
                        tells.get(later).task().value(),
                        "is told by " + tells.get(later).episode() + " already in " + tells.place(first, "another row"),
                        "keep one of the two"));
        for (int i = 0; i < tells.size(); i++) {
            Task task = tasks.get(tells.get(i).task());
            if (task != null && task.dropped().isPresent()) {
                tells.remark(
                        problems,
                        i,
                        "task",
                        task.id().value(),
                        "is dropped, so there is nothing to tell of it",
                        "take it out, or tell another task");
            }
        }
    }
}
