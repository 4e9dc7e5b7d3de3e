package weekwright.episodes;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rows;

/** The rules over what hangs on an episode: the places of its parts, who did which step, consents. */
public final class PartRules {
    private PartRules() {}

    public static void check(EpisodeRows rows, LocalDate today, Problems problems) {
        segments(rows.segments(), problems);
        steps(rows.steps(), rows.episodes().by(Episode::id), problems);
        releases(rows.releases(), today, problems);
    }

    private static void segments(Rows<Segment> parts, Problems problems) {
        parts.twice(
                part -> Optional.of(List.of(part.episode().folded(), part.place())),
                (later, first) -> parts.fault(
                        problems,
                        later,
                        "place",
                        Integer.toString(parts.get(later).place()),
                        "is the place of " + parts.place(first, "another part") + " already",
                        "number the parts of an episode 1, 2, 3 and so on"));
    }

    private static void steps(Rows<StepBy> steps, Map<Id, Episode> episodes, Problems problems) {
        steps.twice(
                by -> Optional.of(List.of(by.episode().folded(), by.step())),
                (later, first) -> steps.fault(
                        problems,
                        later,
                        "step",
                        Codec.word(steps.get(later).step()),
                        "has its person in " + steps.place(first, "another row") + " already",
                        "keep one of the two"));
        for (int i = 0; i < steps.size(); i++) {
            StepBy by = steps.get(i);
            Episode episode = episodes.get(by.episode());
            if (episode != null && by.step().day(episode).isEmpty()) {
                steps.remark(
                        problems,
                        i,
                        "step",
                        Codec.word(by.step()),
                        "is not marked in " + episode.id() + ", so nobody has done it yet",
                        "write its day in episodes.csv, or take the row out");
            }
        }
    }

    private static void releases(Rows<Release> releases, LocalDate today, Problems problems) {
        for (int i = 0; i < releases.size(); i++) {
            Optional<LocalDate> late = releases.get(i).got().filter(day -> day.isAfter(today));
            if (late.isPresent()) {
                releases.remark(
                        problems,
                        i,
                        "got",
                        late.get().toString(),
                        "is after today, " + today,
                        "leave it empty until you have it");
            }
        }
    }
}
