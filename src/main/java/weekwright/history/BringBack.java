package weekwright.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.HoursEntry;
import weekwright.build.LoggedHours;
import weekwright.db.History;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Brings back an earlier state of a thing, or what was removed, as a new change. */
public final class BringBack {
    private BringBack() {}

    /**
     * Sets one row to how it stood before a change.
     *
     * @return whether anything was different
     * @throws Rejected when it did not stand before that change, or a rule would be broken
     */
    public static boolean before(Write write, long changeId, LocalDate today) throws Rejected {
        Optional<History.Change> change =
                History.one(write, changeId).filter(one -> one.before().isPresent());
        if (change.isEmpty()) {
            throw new Rejected(Problem.fault(
                    "", "", "There is no such earlier state", "look in the history for the one that is meant"));
        }
        return put(write, List.of(change.get()), today);
    }

    /**
     * Brings back everything that one change removed and that does not stand again.
     *
     * @param version the project's version that the change made
     * @throws Rejected when nothing is left to bring back, or a rule would be broken
     */
    public static void removed(Write write, long version, LocalDate today) throws Rejected {
        List<History.Change> gone = new ArrayList<>(History.goneOf(write, version));
        if (gone.isEmpty()) {
            throw new Rejected(
                    Problem.fault("", "", "Nothing of it is missing any more", "it was brought back before"));
        }
        Collections.reverse(gone);
        put(write, gone, today);
    }

    private static boolean put(Write write, List<History.Change> changes, LocalDate today) throws Rejected {
        Names names = new Names(write);
        List<PutBack.Row> rows = new ArrayList<>();
        for (History.Change change : changes) {
            Thing<?> thing = Things.of(change.thing());
            String called = thing.called(names, change.before().orElseThrow());
            rows.add(new PutBack.Row(thing, change.row(), change.before(), called));
        }
        boolean any = new PutBack(write, today, "cannot be brought back").put(rows);
        for (PutBack.Row row : rows) {
            Optional<? extends Record> back =
                    row.thing().table().find(write, row.row()).map(Stored::value);
            if (back.isPresent() && back.get() instanceof HoursEntry entry) {
                LoggedHours.followStart(write, entry.task(), entry.date());
            }
        }
        return any;
    }
}
