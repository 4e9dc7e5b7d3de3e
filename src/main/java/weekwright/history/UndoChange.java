package weekwright.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.SettingsStore;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.db.Write;

/**
 * Takes one change back: everything that one transaction did, in reverse order, as a change of its own that can be taken
 * back too. Pictures and receipts in the folder are not touched.
 */
public final class UndoChange {
    private static final String IMPORT = "import";

    private UndoChange() {}

    /**
     * @param version the project's version that the change made
     * @param today in the project's zone
     * @return the records that were taken back, in their order
     * @throws Rejected when there is no such change, a row was changed again since, or a rule would be broken
     */
    public static List<History.Change> undo(Write write, long version, LocalDate today) throws Rejected {
        List<History.Change> changes = History.ofVersion(write, version);
        if (changes.isEmpty()) {
            throw refused("There is no change " + version, "look in the history for the one that is meant");
        }
        if (changes.get(0).who().equals(IMPORT)) {
            throw refused(
                    "An import is not taken back here",
                    "the project as it stood before lies in the folder backups, to be put back by hand");
        }
        if (changes.stream().anyMatch(UndoChange::beganTheProject)) {
            throw refused(
                    "With this change the project began, so it cannot be taken back",
                    "start another project in an empty folder");
        }
        changedSince(write, version, changes);
        Map<String, PutBack.Row> rows = new LinkedHashMap<>();
        Names names = new Names(write);
        for (History.Change change : changes) {
            Thing<?> thing = Things.of(change.thing());
            rows.computeIfAbsent(
                    change.thing() + " " + change.row(),
                    key -> new PutBack.Row(thing, change.row(), change.before(), called(names, thing, change)));
        }
        List<PutBack.Row> reversed = new ArrayList<>(rows.values());
        Collections.reverse(reversed);
        new PutBack(write, today, "cannot be taken back").put(reversed);
        return changes;
    }

    /** Whether nothing that a change touched was changed since, so that taking it back is worth a try. */
    public static boolean mayBe(Read read, long version) {
        return History.counts(read, version).stream()
                        .map(History.Count::first)
                        .noneMatch(change -> change.who().equals(IMPORT) || beganTheProject(change))
                && !History.changedSince(read, version);
    }

    private static void changedSince(Write write, long version, List<History.Change> changes) throws Rejected {
        Names names = new Names(write);
        Map<String, Problem> problems = new LinkedHashMap<>();
        for (History.Change change : changes) {
            Optional<History.Change> last = History.last(write, change.thing(), change.row());
            if (last.isPresent() && last.get().projectVersion() > version) {
                String called = called(names, Things.of(change.thing()), change);
                problems.putIfAbsent(
                        change.thing() + change.row(),
                        Problem.fault(
                                "",
                                "",
                                "The " + called + " was " + last.get().action() + " again since, by "
                                        + names.who(last.get().who()) + ", so this cannot be taken back",
                                "take that back first"));
            }
        }
        if (!problems.isEmpty()) {
            throw new Rejected(List.copyOf(problems.values()).subList(0, Math.min(3, problems.size())));
        }
    }

    static String called(Names names, Thing<?> thing, History.Change change) {
        return thing.called(names, change.after().or(change::before).orElseThrow());
    }

    /** Without its settings a project cannot be opened. */
    private static boolean beganTheProject(History.Change change) {
        return change.thing().equals(SettingsStore.PROJECT.name())
                && change.before().isEmpty();
    }

    private static Rejected refused(String rule, String remedy) {
        return new Rejected(Problem.fault("", "", rule, remedy));
    }
}
