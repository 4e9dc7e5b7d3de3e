package weekwright.base;

import java.util.List;
import java.util.stream.Collectors;

/** An input that was refused as a whole: every fault that was found. Nothing of it has been kept. */
public final class Rejected extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /** @param problems at least one, all found */
    public Rejected(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")), null, false, false);
        this.problems = List.copyOf(problems);
    }

    public Rejected(Problem problem) {
        this(List.of(problem));
    }

    /** Throws when there is any fault; remarks alone pass. */
    public static void ifFaults(Problems problems) throws Rejected {
        if (problems.hasFaults()) {
            throw new Rejected(problems.list());
        }
    }

    public List<Problem> problems() {
        return problems;
    }
}
