package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.Optional;

/**
 * A project that consists of nothing but waits of fixed days, links of whole tasks and equipment in quantity: a resource-constrained
 * project scheduling problem as the literature knows it. Arrays are by task, days whole.
 *
 * @param days by task
 * @param need by equipment and task
 * @param quantity by equipment
 * @param from by link
 * @param to by link
 * @param waitDays by link
 */
public record FixedWork(int[] days, int[][] need, int[] quantity, int[] from, int[] to, int[] waitDays) {

    /** The expected days of a project, if it is such a one and nothing in it has begun; empty if anything else holds a task. */
    static Optional<FixedWork> of(Setup setup, Luck expected) {
        TaskTable tasks = setup.tasks;
        EquipmentTable equipment = setup.equipment;
        int n = tasks.count;
        int[][] need = new int[equipment.count][n];
        for (int t = 0; t < n; t++) {
            boolean plain = tasks.wait[t]
                    && tasks.status[t] == TaskTable.OPEN
                    && tasks.season[t] < 0
                    && tasks.aside[t] <= 0
                    && tasks.notBefore[t] <= 0
                    && tasks.booked[t] == TaskTable.NO_DAY
                    && setup.lines.start[t] == setup.lines.start[t + 1];
            if (!plain) {
                return Optional.empty();
            }
            for (int i = equipment.start[t]; i < equipment.start[t + 1]; i++) {
                int q = equipment.needed[i];
                need[q][t] += equipment.amount[i];
                if (equipment.changing[q] || expected.total[t] == 0 || need[q][t] > equipment.quantity[q]) {
                    return Optional.empty();
                }
            }
        }
        for (double share : setup.links.share) {
            if (share != 1) {
                return Optional.empty();
            }
        }
        return Optional.of(new FixedWork(
                Arrays.copyOf(expected.total, n),
                need,
                equipment.quantity.clone(),
                setup.links.from.clone(),
                setup.links.to.clone(),
                expected.linkWait.clone()));
    }
}
