package weekwright.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.CrewMemberStore;
import weekwright.db.Taken;
import weekwright.db.Write;
import weekwright.files.csv.ProjectRules;

/**
 * Sets rows to how they stood once, all of them or none, and refuses what the rules do not allow: a row that names what is
 * not there, one that is still named, and any fault that the project did not have before.
 */
final class PutBack {
    private static final int MOST_TOLD = 5;

    private final Write write;
    private final LocalDate today;
    private final String done;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * A row and how it shall stand.
     *
     * @param image as JSON; empty where it shall not stand
     * @param called what it is called in a refusal
     */
    record Row(Thing<?> thing, long row, Optional<String> image, String called) {}

    /** @param done what cannot be done, when it cannot: {@code cannot be taken back} */
    PutBack(Write write, LocalDate today, String done) {
        this.write = write;
        this.today = today;
        this.done = done;
    }

    /**
     * @param rows in the order in which they are set
     * @return whether anything was different
     */
    boolean put(List<Row> rows) throws Rejected {
        Names names = new Names(write);
        Map<Row, Mentions.Mention> removed = new LinkedHashMap<>();
        for (Row row : rows) {
            if (row.image().isEmpty()) {
                row.thing()
                        .table()
                        .find(write, row.row())
                        .flatMap(stored -> id(row.thing(), stored.value()))
                        .ifPresent(named -> removed.put(row, named));
            }
        }
        removed.values().forEach(named -> names.of(named.table(), named.id()));
        write.mark();
        boolean any = set(rows);
        if (any && problems.isEmpty()) {
            removed.forEach((row, named) -> stillNamed(names, row, named));
            rows.forEach(this::namesMissing);
        }
        refuse();
        if (any) {
            refuseNewFaults(rows);
            CrewMemberStore.forgetAccessOfMissing(write);
        }
        return any;
    }

    private boolean set(List<Row> rows) {
        boolean any = false;
        for (Row row : rows) {
            any |= set(row);
        }
        return any;
    }

    private boolean set(Row row) {
        try {
            return row.thing().table().setBack(write, row.row(), row.image());
        } catch (Taken taken) {
            problem(row.called(), "another one has its name in the files now", "change that one first");
            return false;
        }
    }

    /** Names are those that were looked up while the thing still stood. */
    private void stillNamed(Names names, Row row, Mentions.Mention named) {
        Mentions.of(names, named)
                .ifPresent(by -> problem(row.called(), "the " + by + " came to need it", "take that away first"));
    }

    private static Optional<Mentions.Mention> id(Thing<?> thing, Record value) {
        return thing.shape()
                .field("id")
                .flatMap(field -> field.value(value))
                .map(id -> new Mentions.Mention(thing.table().name(), (Id) id));
    }

    private void namesMissing(Row row) {
        row.thing().table().find(write, row.row()).ifPresent(stored -> {
            for (Mentions.Mention mention : Mentions.in(stored.value())) {
                if (!Mentions.stands(write, mention)) {
                    problem(
                            row.called(),
                            "it needs the " + Things.of(mention.table()).one() + " “" + mention.id()
                                    + "”, which is not there any more",
                            "bring that back first");
                }
            }
        });
    }

    /** Most projects have no faults; only where there are some is it asked which of them stood there before. */
    private void refuseNewFaults(List<Row> rows) throws Rejected {
        List<Problem> after = ProjectRules.faults(write, today);
        if (after.isEmpty()) {
            return;
        }
        Names names = new Names(write);
        Map<Problem, String> told = new LinkedHashMap<>();
        after.forEach(problem -> told.put(problem, called(names, problem)));
        write.backToMark();
        told.keySet().removeAll(new HashSet<>(ProjectRules.faults(write, today)));
        told.forEach((problem, called) ->
                problem(called, (problem.read().isEmpty() ? "" : "“" + problem.read() + "” ") + problem.rule(), ""));
        refuse();
        set(rows);
    }

    private static String called(Names names, Problem problem) {
        ProjectRules.Place place = ProjectRules.place(problem);
        return Things.of(place.table()).called(names, place.row()).orElse("");
    }

    private void problem(String called, String rule, String remedy) {
        problems.add(Problem.fault("", "", "The " + called + " " + done + ": " + rule, remedy));
    }

    private void refuse() throws Rejected {
        if (!problems.isEmpty()) {
            throw new Rejected(problems.subList(0, Math.min(MOST_TOLD, problems.size())));
        }
    }
}
