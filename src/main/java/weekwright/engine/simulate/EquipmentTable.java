package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.List;
import weekwright.engine.Inputs;

/** Equipment as columns, and what each task needs of it. */
final class EquipmentTable {
    /** The bit of equipment of which a task needs more than there is. */
    static final long NEVER_ENOUGH = 1L << 63;

    final int count;
    final int[] quantity;
    final boolean[] kept;
    /** The task after which it exists, -1 for always; what a dropped task was to make ready never is. */
    final int[] readyAfter;
    /** First day of being down or {@link TaskTable#NO_DAY}. */
    final int[] downFrom;
    /** Days from then until it is back; null for never. */
    final Spread[] back;

    final long[] backKey;
    /** Whether some equipment is not always there. */
    final boolean[] changing;
    /** Needs of task t: positions start[t] to start[t + 1] - 1. */
    final int[] start;

    final int[] needed;
    final int[] amount;

    /** By task, what it needs as bits; more than 63 kinds share them. */
    final long[] bits;

    EquipmentTable(Inputs inputs, TaskTable tasks, Ids taskIds) {
        List<Inputs.Equipment> all = inputs.equipment();
        Ids ids = Ids.of("equipment", all, Inputs.Equipment::id);
        count = all.size();
        quantity = new int[count];
        kept = new boolean[count];
        readyAfter = new int[count];
        downFrom = new int[count];
        back = new Spread[count];
        backKey = new long[count];
        changing = new boolean[count];
        for (int q = 0; q < count; q++) {
            Inputs.Equipment one = all.get(q);
            quantity[q] = one.quantity();
            kept[q] = one.kept();
            readyAfter[q] = one.readyAfter().isEmpty() ? -1 : taskIds.at(one.readyAfter());
            downFrom[q] = one.downFrom() == Inputs.NONE ? TaskTable.NO_DAY : one.downFrom() - inputs.asOf();
            back[q] = one.backDays().given() ? Spread.of(one.backDays()) : null;
            backKey[q] = Streams.key(Streams.Purpose.BACK_DAYS, one.id());
            changing[q] = readyAfter[q] >= 0 || downFrom[q] != TaskTable.NO_DAY;
        }
        start = new int[tasks.count + 1];
        int n = 0;
        for (int t = 0; t < tasks.listed; t++) {
            n += inputs.tasks().get(t).equipment().size();
            start[t + 1] = n;
        }
        Arrays.fill(start, tasks.listed + 1, tasks.count + 1, n);
        needed = new int[n];
        amount = new int[n];
        bits = new long[tasks.count];
        int i = 0;
        for (int t = 0; t < tasks.listed; t++) {
            for (Inputs.Need need : inputs.tasks().get(t).equipment()) {
                needed[i] = ids.at(need.equipment());
                bits[t] |= bit(needed[i]) | (need.quantity() > quantity[needed[i]] ? NEVER_ENOUGH : 0);
                amount[i++] = need.quantity();
            }
        }
    }

    /** The bit of one equipment, not {@link #NEVER_ENOUGH}. */
    static long bit(int q) {
        return 1L << q % 63;
    }
}
