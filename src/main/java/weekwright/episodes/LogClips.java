package weekwright.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.ReferenceStore;
import weekwright.build.References;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Puts clips into the footage log, corrects one, takes one out. */
public final class LogClips {
    private LogClips() {}

    /**
     * Puts a whole card in, or none of it.
     *
     * @param clips with any id: each gets a new one
     * @param today in the project's zone
     * @throws Rejected with the faults of all clips; the place of each is {@code number.column}, number from 0
     */
    public static List<Stored<Clip>> log(Write write, List<Clip> clips, LocalDate today) throws Rejected {
        Problems problems = new Problems();
        for (int i = 0; i < clips.size(); i++) {
            Problems found = new Problems();
            check(write, clips.get(i), today, found);
            for (Problem one : found.faults()) {
                problems.fault(i + "." + one.column(), one.read(), one.rule(), one.remedy());
            }
        }
        Faults.refuse(problems);
        List<Stored<Clip>> kept = new ArrayList<>();
        for (Clip clip : clips) {
            kept.add(ClipStore.TABLE.insert(
                    write,
                    ClipStore.TABLE
                            .shape()
                            .with(clip, "id", ReferenceStore.unusedId(write, ClipStore.TABLE.name(), "clip"))));
        }
        return kept;
    }

    /** Corrects one. */
    public static Stored<Clip> change(Write write, Shown shown, Clip clip, LocalDate today) throws Rejected, Stale {
        Problems problems = new Problems();
        check(write, clip, today, problems);
        Faults.refuse(problems);
        return ClipStore.TABLE.update(write, shown.row(), shown.version(), clip);
    }

    public static void remove(Write write, Shown shown) throws Stale {
        ClipStore.TABLE.delete(write, shown.row(), shown.version());
    }

    private static void check(Read read, Clip clip, LocalDate today, Problems problems) {
        EpisodeRules.check(clip, problems);
        References.check(read, ClipStore.TABLE.shape(), clip, problems);
        if (clip.date().isAfter(today)) {
            problems.fault(
                    "date",
                    Said.day(clip.date()),
                    "is after today, " + Said.day(today),
                    "set the camera's clock, and write the day it was taken");
        }
    }

    /** What names a clip: the same name on the same card of the same day is the same clip. */
    public static String key(LocalDate date, String card, String clip) {
        return date + "/" + card.toLowerCase(Locale.ROOT) + "/" + clip.toLowerCase(Locale.ROOT);
    }

    /** The names of all clips that are in the log. */
    public static Set<String> known(Read read) {
        Set<String> known = new HashSet<>();
        ClipStore.TABLE.values(read).forEach(clip -> known.add(key(clip.date(), clip.card(), clip.clip())));
        return known;
    }
}
