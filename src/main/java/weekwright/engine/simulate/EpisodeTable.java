package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Episode;
import weekwright.engine.Inputs.EpisodeKind;

/** Episodes as columns, and which slot is whose. */
final class EpisodeTable {
    /** Stands after every slot. */
    static final int NO_SLOT = Integer.MAX_VALUE;

    final int count;
    final boolean[] standby;
    /** Day of its slot, {@link #NO_SLOT} without one. */
    final int[] slot;

    final Spread[] edit;
    final long[] editKey;
    /** Person, -1 for anyone with the trade. */
    final int[] editor;

    final int[] edited;
    final int[] footage;
    final int[] cut;
    final int[] published;
    /** How many tasks it tells; how many of these are not far enough yet is counted in each trial. */
    final int[] tells;
    /** (episode, task, share) of each tell that counts. */
    final List<double[]> tellRows = new ArrayList<>();
    /** By slot of the calendar: its own planned episode or -1. */
    final int[] ofSlot;
    /** Episodes by slot, then file; the order in which they are edited and published. */
    final int[] bySlot;
    /** Where an episode stands in {@link #bySlot}. */
    final int[] placeBySlot;
    /** By task: largest share any planned episode tells of it (rule 72). */
    final double[] told;

    final Spread standardEdit;
    /** Key of the edit hours of an episode made from the story bank, with the slot's date as index. */
    final long bankKey = Streams.key(Streams.Purpose.EDIT_HOURS, "story bank");

    EpisodeTable(Inputs inputs, TaskTable tasks, Ids taskIds, Calendar calendar, Crowd crowd) {
        List<Episode> all = inputs.episodes();
        count = all.size();
        standby = new boolean[count];
        slot = new int[count];
        edit = new Spread[count];
        editKey = new long[count];
        editor = new int[count];
        edited = new int[count];
        footage = new int[count];
        cut = new int[count];
        published = new int[count];
        tells = new int[count];
        told = new double[tasks.count];
        ofSlot = IntStream.generate(() -> -1).limit(calendar.slots.length).toArray();
        standardEdit = Spread.of(inputs.publishing().editMinutes());
        for (int e = 0; e < count; e++) {
            Episode episode = all.get(e);
            standby[e] = episode.kind() == EpisodeKind.STANDBY;
            slot[e] = standby[e] || episode.slot() == Inputs.NONE ? NO_SLOT : episode.slot() - inputs.asOf();
            edit[e] = episode.editMinutes().given() ? Spread.of(episode.editMinutes()) : standardEdit;
            editKey[e] = Streams.key(Streams.Purpose.EDIT_HOURS, episode.id());
            editor[e] = episode.editor().isEmpty() ? -1 : crowd.at(episode.editor());
            edited[e] = episode.editedMinutes();
            published[e] = past(episode.published(), inputs.asOf());
            cut[e] = earlier(past(episode.cut(), inputs.asOf()), published[e]);
            footage[e] = earlier(past(episode.footageComplete(), inputs.asOf()), cut[e]);
            for (Inputs.Tell tell : episode.tells()) {
                int t = taskIds.at(tell.task());
                if (tasks.status[t] != TaskTable.DROPPED) {
                    tells[e]++;
                    tellRows.add(new double[] {e, t, tell.share()});
                    told[t] = standby[e] ? told[t] : Math.max(told[t], tell.share());
                }
            }
            if (slot[e] >= 0 && slot[e] < calendar.days && published[e] == TaskTable.NO_DAY) {
                int s = calendar.slotIndex[slot[e]];
                if (s >= 0 && ofSlot[s] < 0) {
                    ofSlot[s] = e;
                }
            }
        }
        bySlot = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingInt(e -> slot[e]))
                .mapToInt(Integer::intValue)
                .toArray();
        placeBySlot = new int[count];
        for (int i = 0; i < count; i++) {
            placeBySlot[bySlot[i]] = i;
        }
    }

    private static int past(int date, int asOf) {
        return date == Inputs.NONE || date > asOf ? TaskTable.NO_DAY : date - asOf;
    }

    private static int earlier(int day, int laterDay) {
        return day == TaskTable.NO_DAY ? laterDay : day;
    }
}
