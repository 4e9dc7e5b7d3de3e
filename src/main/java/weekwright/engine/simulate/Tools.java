package weekwright.engine.simulate;

import static weekwright.engine.simulate.TaskTable.NO_DAY;

/**
 * Equipment of a day (rules 44, 130). Work holds it from a stretch to the end of the task or of the day, kept equipment from the
 * first hour to the end of the task, waits day and night. Equipment is there from the day after the task that makes it ready, and not
 * while it is down.
 */
final class Tools {
    private final Setup setup;
    private final Luck luck;
    State x;
    private int today;
    /** Of which equipment, by {@link EquipmentTable#bits}, not all has been free since the morning: only of that it matters how much. */
    long inUse;
    /** Free now. */
    private final int[] free;
    /** Free since the morning. */
    private final int[] untouched;
    /** Free in the morning. */
    private final int[] atDawn;
    /** Latest minute at which some came back. */
    private final int[] back;

    Tools(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
        free = new int[setup.equipment.count];
        untouched = new int[setup.equipment.count];
        atDawn = new int[setup.equipment.count];
        back = new int[setup.equipment.count];
    }

    /** Before a run. */
    void restart(State state) {
        x = state;
        for (TaskState k : x.task) {
            k.holdsOn = -1;
        }
    }

    /** Opens a day. */
    void open(int day) {
        today = day;
        inUse = EquipmentTable.NEVER_ENOUGH;
        for (int q = 0; q < free.length; q++) {
            free[q] = there(q, day) - x.heldOver[q];
            untouched[q] = free[q];
            atDawn[q] = free[q];
            back[q] = 0;
            inUse |= free[q] < setup.equipment.quantity[q] ? EquipmentTable.bit(q) : 0;
        }
    }

    /** How many exist and are in order on a day. */
    int there(int q, int day) {
        EquipmentTable equipment = setup.equipment;
        if (equipment.changing[q]) {
            int after = equipment.readyAfter[q];
            if (after >= 0 && (x.task[after].status != TaskTable.DONE || x.landDay[after] >= day)) {
                return 0;
            }
            if (equipment.downFrom[q] != NO_DAY && day >= equipment.downFrom[q] && day < luck.back[q]) {
                return 0;
            }
        }
        return equipment.quantity[q];
    }

    /** The first equipment that a task cannot have now, -1 if it has or can have all. */
    int lacking(TaskState k) {
        if (k.holdsOn == today) {
            return -1;
        }
        EquipmentTable equipment = setup.equipment;
        for (int i = k.tools; i < k.toolsEnd; i++) {
            int q = equipment.needed[i];
            if (equipment.kept[q] && k.keeps ? there(q, today) == 0 : free[q] < equipment.amount[i]) {
                return q;
            }
        }
        return -1;
    }

    /** Whether something a task needs is not to be had at all today, whatever others do. */
    boolean gone(TaskState k) {
        EquipmentTable equipment = setup.equipment;
        for (int i = k.tools; i < k.toolsEnd; i++) {
            int q = equipment.needed[i];
            if (!(equipment.kept[q] && k.keeps) && atDawn[q] < equipment.amount[i]) {
                return true;
            }
        }
        return false;
    }

    /** The minute from which the free equipment can be had: it may have come back from another task. */
    int from(TaskState k) {
        if (k.holdsOn == today) {
            return k.holdsFrom;
        }
        EquipmentTable equipment = setup.equipment;
        int from = 0;
        for (int i = k.tools; i < k.toolsEnd; i++) {
            int q = equipment.needed[i];
            if (untouched[q] < equipment.amount[i] && !(equipment.kept[q] && k.keeps)) {
                from = Math.max(from, back[q]);
            }
        }
        return from;
    }

    /** A task takes what it needs from a minute on for the rest of the day, kept equipment for good. */
    void take(TaskState k, boolean first, int minute) {
        if (k.holdsOn == today) {
            return;
        }
        k.holdsFrom = minute;
        k.holdsOn = today;
        inUse |= k.toolBits;
        EquipmentTable equipment = setup.equipment;
        boolean keeps = false;
        for (int i = k.tools; i < k.toolsEnd; i++) {
            int q = equipment.needed[i];
            if (equipment.kept[q] && k.keeps) {
                continue;
            }
            free[q] -= equipment.amount[i];
            untouched[q] = Math.max(0, Math.min(untouched[q], untouched[q] - equipment.amount[i]));
            if (equipment.kept[q]) {
                x.heldOver[q] += equipment.amount[i];
                keeps = true;
            }
        }
        k.keeps |= keeps;
    }

    /** A task has ended at a minute of the day. */
    void giveBack(TaskState k, int minute) {
        EquipmentTable equipment = setup.equipment;
        for (int i = k.tools; i < k.toolsEnd; i++) {
            int q = equipment.needed[i];
            boolean kept = equipment.kept[q] && k.keeps;
            if (kept) {
                x.heldOver[q] -= equipment.amount[i];
            }
            if (kept || k.holdsOn == today) {
                free[q] += equipment.amount[i];
                back[q] = Math.max(back[q], minute);
            }
        }
        k.keeps = false;
        k.holdsOn = -1;
    }

    /** In the evening: the first equipment that a wait cannot have because others hold it over night, -1 if none. */
    int lackingOverNight(int t) {
        EquipmentTable equipment = setup.equipment;
        for (int i = equipment.start[t]; i < equipment.start[t + 1]; i++) {
            int q = equipment.needed[i];
            if (there(q, today) - x.heldOver[q] < equipment.amount[i]) {
                return q;
            }
        }
        return -1;
    }

    /** The day for which {@link #lackingOverNight} answers. */
    void evening(int day) {
        today = day;
    }
}
