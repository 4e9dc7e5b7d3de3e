package weekwright.episodes;

import weekwright.base.Rows;
import weekwright.db.AllRows;

/** Episodes, what they tell, why slots are skipped, and what hangs on an episode, for rules over many rows. */
public record EpisodeRows(
        Rows<Episode> episodes,
        Rows<Tell> tells,
        Rows<SkippedSlot> skipped,
        Rows<Segment> segments,
        Rows<StepBy> steps,
        Rows<Release> releases) {

    public static EpisodeRows of(AllRows all) {
        return new EpisodeRows(
                all.of(EpisodeStore.TABLE),
                all.of(TellStore.TABLE),
                all.of(SkippedSlotStore.TABLE),
                all.of(SegmentStore.TABLE),
                all.of(StepByStore.TABLE),
                all.of(ReleaseStore.TABLE));
    }
}
