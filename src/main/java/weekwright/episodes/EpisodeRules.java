package weekwright.episodes;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.notBefore;
import static weekwright.base.RowRules.oneDecimal;
import static weekwright.base.RowRules.rising;

import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.RunTime;

/** What must hold within one episode, and within one wanted picture. */
public final class EpisodeRules {
    private EpisodeRules() {}

    /** An empty earlier date is taken as passed: published implies cut, cut implies footage complete (rule 67). */
    public static void check(Episode episode, Problems problems) {
        needed("title", episode.title(), "write what it is called", problems);
        rising("edit_", episode.editLow(), episode.editLikely(), episode.editHigh(), problems);
        oneDecimal("minutes", episode.minutes(), problems);
        episode.minutes()
                .filter(Quantity.ZERO::equals)
                .ifPresent(none -> noLength("minutes", "write its length in minutes, or leave it empty", problems));
        notBefore("cut", episode.cut(), "footage_complete", episode.footageComplete(), problems);
        notBefore("picture_lock", episode.pictureLock(), "rough_cut", episode.roughCut(), problems);
        notBefore("cut", episode.cut(), "picture_lock", episode.pictureLock(), problems);
        notBefore("cut", episode.cut(), "sound", episode.sound(), problems);
        notBefore("published", episode.published(), "cut", episode.cut(), problems);
        if (episode.cut().isEmpty()) {
            notBefore("published", episode.published(), "footage_complete", episode.footageComplete(), problems);
        }
        if (episode.kindOrDefault() == Episode.Kind.STANDBY) {
            standby(episode, problems);
        }
    }

    private static void noLength(String column, String remedy, Problems problems) {
        problems.fault(column, "0", "is no length", remedy);
    }

    /** A standby has neither slot nor number until it is published, and never a slot (rule 103). */
    private static void standby(Episode episode, Problems problems) {
        episode.slot()
                .ifPresent(slot -> problems.fault(
                        "slot",
                        slot.toString(),
                        "is given to a standby, which has no slot",
                        "leave it empty, or make it build or side"));
        episode.number()
                .filter(number -> episode.published().isEmpty())
                .ifPresent(number -> problems.fault(
                        "number",
                        number.toString(),
                        "is given to a standby that is not published",
                        "leave it empty until then"));
    }

    /** A clip of no length is none. */
    public static void check(Clip clip, Problems problems) {
        needed("clip", clip.clip(), "write its name on the card", problems);
        clip.minutes()
                .filter(minutes -> minutes.doubleValue() == 0)
                .ifPresent(minutes -> problems.fault(
                        "minutes", "0", "is no footage", "write its length in minutes, or leave it empty"));
    }

    public static void check(Segment part, Problems problems) {
        needed("title", part.title(), "write what it shows", problems);
        part.minutes()
                .filter(RunTime.ZERO::equals)
                .ifPresent(none -> noLength(
                        "minutes", "write minutes, or minutes and seconds as 4:30, or leave it empty", problems));
    }

    public static void check(Music music, Problems problems) {
        needed("title", music.title(), "write what is played", problems);
        needed("licence", music.licence(), "write under which licence it may be used", problems);
    }

    public static void check(Release release, Problems problems) {
        needed("who", release.who(), "write the person or the place", problems);
    }

    public static void check(Shot shot, Problems problems) {
        needed("what", shot.what(), "write what the picture shows", problems);
        if (shot.calledOff() && shot.captured().isPresent()) {
            problems.remark(
                    "called_off",
                    "yes",
                    "is given for a shot captured on " + shot.captured().get(),
                    "leave one of the two empty");
        }
    }
}
