package weekwright.web.week;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.SaveWeekLine;
import weekwright.build.Task;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A new line of the week, or a proposal taken over as the crew's own. */
public final class WeekLinesNewPage implements Page {

    /** @param tried what the change would do; empty before that was asked */
    public record View(Form form, WeekLineFields fields, List<String> tried) {}

    @Override
    public View show(Request request) {
        Map<String, String> first = new HashMap<>();
        for (String column : WeekLineFields.COLUMNS) {
            first.put(column, request.query(column));
        }
        if (first.get("date").isEmpty()) {
            first.put("date", request.today().toString());
        }
        return new View(request.form(Tried.refused(request), first), WeekLineFields.of(request), Tried.shown(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        if (form.act().endsWith("aside")) {
            return aside(request, form);
        }
        WeekLine line = form.draft(empty(request.today()), WeekLineFields.COLUMNS);
        form.besides(() -> request.read(read -> SaveWeekLine.check(read, Optional.empty(), line, request.today())));
        if (form.act().equals("try")) {
            return Tried.of(request, write -> add(write, request, line));
        }
        return request.save(write -> {
            Stored<WeekLine> saved = add(write, request, line);
            return back(saved.value().date())
                    .saying("A line is on the sheet for "
                            + day(request, saved.value().date()) + ".");
        });
    }

    private static WeekLine empty(LocalDate day) {
        return Shape.of(WeekLine.class)
                .parse(Map.of("id", "week.0", "date", day.toString()), Reading.file(0), new Problems())
                .orElseThrow();
    }

    private static Stored<WeekLine> add(Write write, Request request, WeekLine line) throws Exception {
        WeekLine numbered = Shape.of(WeekLine.class).with(line, "id", WeekLineStore.nextId(write));
        return SaveWeekLine.save(write, Optional.empty(), numbered, request.today());
    }

    /** "Not this week": the task of a proposal is laid aside until the Monday after it, or that is tried first. */
    private static Answer aside(Request request, FormReader form) throws Exception {
        Optional<LocalDate> day = form.needed("date", LocalDate.class);
        Optional<Id> task = Tried.task(request, form);
        form.ignoringFields();
        if (form.act().equals("try-aside")) {
            return Tried.of(request, write -> Tried.notThisWeek(write, request, day.orElseThrow(), task.orElseThrow()));
        }
        return request.save(write -> {
            Stored<Task> laid = Tried.notThisWeek(write, request, day.orElseThrow(), task.orElseThrow());
            return back(day.get())
                    .saying("\"" + laid.value().title() + "\" is laid aside until "
                            + day(request, Tried.until(day.get())) + ".");
        });
    }

    static Saved back(LocalDate day) {
        return Saved.to("/week?of=" + day);
    }

    static String day(Request request, LocalDate day) {
        return request.formats().date(day);
    }
}
