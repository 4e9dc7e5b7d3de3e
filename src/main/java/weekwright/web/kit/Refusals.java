package weekwright.web.kit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.base.Problem;

/** Brings problems to the fields of the form that caused them. */
final class Refusals {
    static final String KEY_REUSED = "This form was sent before with other contents, and that was kept. Look whether it"
            + " is already there; send this again if it is still wanted.";

    private Refusals() {}

    /**
     * The sentences by field, several of one field joined; what belongs to no field of the form stands under the empty
     * name, with its place said.
     */
    static Map<String, String> byField(List<Problem> problems, Set<String> fields) {
        Map<String, String> errors = new LinkedHashMap<>();
        for (Problem problem : problems) {
            boolean here = problem.file().isEmpty() && fields.contains(problem.column());
            String field = here ? problem.column() : "";
            errors.merge(field, here ? problem.sentence() : problem.text(), (one, more) -> one + ". " + more);
        }
        return errors;
    }
}
