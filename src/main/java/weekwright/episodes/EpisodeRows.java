package weekwright.episodes;

import weekwright.base.Rows;
import weekwright.db.Read;

/** Episodes, what they tell, and why slots are skipped, out of plain files with their places or out of the store without. */
public record EpisodeRows(Rows<Episode> episodes, Rows<Tell> tells, Rows<SkippedSlot> skipped) {

    /** The rows as the store has them. */
    public static EpisodeRows of(Read read) {
        return new EpisodeRows(
                Rows.of(EpisodeStore.TABLE.values(read)),
                Rows.of(TellStore.TABLE.values(read)),
                Rows.of(SkippedSlotStore.TABLE.values(read)));
    }
}
