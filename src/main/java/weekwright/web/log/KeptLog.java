package weekwright.web.log;

import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.build.HoursEntry;
import weekwright.build.Task;
import weekwright.render.Formats;
import weekwright.web.kit.Request;

/**
 * What came of the form of Log: an entry for each person, and what was said of the task, the cost and the found work.
 *
 * @param what the hours were for
 * @param remarks odd but possible, said and kept
 */
record KeptLog(
        LogForm typed,
        List<HoursEntry> entries,
        String what,
        Optional<Task> done,
        Optional<Task> found,
        Optional<Task> again,
        List<Problem> remarks) {
    /** All of it in words. */
    String said(Request request) {
        List<String> names = entries.stream()
                .map(entry -> LogPage.name(request, entry.crew()))
                .toList();
        StringBuilder text = new StringBuilder(
                        Formats.hoursLong(typed.entry().hours().minutes()))
                .append(names.size() + typed.others() > 1 ? " each" : "")
                .append(" logged for ")
                .append(Formats.list(names))
                .append(typed.others() == 0 ? "" : " and " + Formats.counted(typed.others(), "other", "others"))
                .append(" on ")
                .append(what);
        if (!typed.entry().date().equals(request.today())) {
            text.append(", ").append(Formats.dayMonthLong(typed.entry().date()));
        }
        text.append('.');
        done.ifPresent(task -> text.append(" It is done."));
        typed.left()
                .ifPresent(left -> text.append(" About ")
                        .append(Formats.hoursLong(left.minutes()))
                        .append(" left."));
        typed.cost().ifPresent(cost -> text.append(" The cost is in the books."));
        found.ifPresent(task -> text.append(" Found: ").append(task.title()).append('.'));
        again.ifPresent(
                task -> text.append(" Listed once more: ").append(task.title()).append('.'));
        if (typed.after().equals("aside")) {
            text.append(" It is laid aside.");
        }
        for (Problem remark : remarks) {
            text.append(' ').append(Formats.sentence(remark.sentence()));
            text.append(remark.sentence().endsWith(".") ? "" : ".");
        }
        return text.toString();
    }
}
