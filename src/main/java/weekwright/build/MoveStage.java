package weekwright.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Moves a stage a place earlier or later in the build; all stages are numbered on from 1 then. */
public final class MoveStage {
    private MoveStage() {}

    /**
     * A stage at the end it is moved to stays.
     *
     * @return the place it has now, from 0, or empty where there is no such stage
     */
    public static Optional<Integer> move(Write write, Id stage, boolean earlier) throws Stale {
        List<Stored<Stage>> all = new ArrayList<>(StageStore.inOrder(write));
        int place = 0;
        while (place < all.size() && !all.get(place).value().id().same(stage)) {
            place++;
        }
        if (place == all.size()) {
            return Optional.empty();
        }
        int to = Math.max(0, Math.min(all.size() - 1, place + (earlier ? -1 : 1)));
        Collections.swap(all, place, to);
        number(write, all);
        return Optional.of(to);
    }

    /** Numbers the stages on from 1 in this order. */
    public static void number(Write write, List<Stored<Stage>> inOrder) throws Stale {
        for (int i = 0; i < inOrder.size(); i++) {
            Stored<Stage> stage = inOrder.get(i);
            Optional<Integer> order = Optional.of(i + 1);
            if (!stage.value().order().equals(order)) {
                StageStore.TABLE.update(
                        write,
                        stage.row(),
                        stage.version(),
                        StageStore.TABLE.shape().with(stage.value(), "order", order));
            }
        }
    }
}
