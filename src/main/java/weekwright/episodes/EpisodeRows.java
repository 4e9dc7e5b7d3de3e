package weekwright.episodes;

import weekwright.base.Rows;
import weekwright.db.Read;

/** Episodes, what they tell, why slots are skipped, and what hangs on an episode, out of plain files with their places or out of the store without. */
public record EpisodeRows(
        Rows<Episode> episodes,
        Rows<Tell> tells,
        Rows<SkippedSlot> skipped,
        Rows<Segment> segments,
        Rows<StepBy> steps,
        Rows<Release> releases) {

    /** The rows as the store has them. */
    public static EpisodeRows of(Read read) {
        return new EpisodeRows(
                Rows.of(EpisodeStore.TABLE.values(read)),
                Rows.of(TellStore.TABLE.values(read)),
                Rows.of(SkippedSlotStore.TABLE.values(read)),
                Rows.of(SegmentStore.TABLE.values(read)),
                Rows.of(StepByStore.TABLE.values(read)),
                Rows.of(ReleaseStore.TABLE.values(read)));
    }
}
