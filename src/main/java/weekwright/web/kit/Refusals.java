package weekwright.web.kit;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import weekwright.base.Problem;
import weekwright.render.Formats;

/** Brings problems to the fields of the form that caused them. */
final class Refusals {
    static final String KEY_REUSED = "This form was sent before with other contents, and that was kept. Look whether it"
            + " is already there; send this again if it is still wanted.";

    private static final Pattern DAY =
            Pattern.compile("(?<![-\\w\"])(?<!such as )[0-9]{4}-[0-9]{2}-[0-9]{2}(?![-\\w])");

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
            Problem said = said(problem);
            errors.merge(field, here ? said.sentence() : said.text(), (one, more) -> one + ". " + more);
        }
        return errors;
    }

    /** With its days as people read them; an example of how one is typed stays, and so does what is quoted of a line or file. */
    private static Problem said(Problem problem) {
        if (!problem.file().isEmpty()) {
            return problem;
        }
        return new Problem(
                problem.grade(),
                problem.file(),
                problem.line(),
                problem.column(),
                DAY.matcher(problem.read()).matches() ? days(problem.read()) : problem.read(),
                days(problem.rule()),
                days(problem.remedy()));
    }

    private static String days(String text) {
        return DAY.matcher(text).replaceAll(day -> {
            try {
                LocalDate date = LocalDate.parse(day.group());
                return Formats.dayMonthLong(date) + Formats.NBSP + date.getYear();
            } catch (DateTimeParseException none) {
                return day.group();
            }
        });
    }
}
