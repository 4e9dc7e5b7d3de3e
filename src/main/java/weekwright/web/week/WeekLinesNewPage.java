package weekwright.web.week;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Shape;
import weekwright.build.SaveWeekLine;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A new line of the week, or a proposal taken over as the crew's own. */
public final class WeekLinesNewPage implements Page {

    public record View(Form form, WeekLineFields fields) {}

    @Override
    public View show(Request request) {
        Map<String, String> first = new HashMap<>();
        for (String column : WeekLineFields.COLUMNS) {
            first.put(column, request.query(column));
        }
        if (first.get("date").isEmpty()) {
            first.put("date", request.today().toString());
        }
        return new View(request.form("", first), WeekLineFields.of(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<WeekLine> line = form.record(WeekLine.class, Map.of("id", "week.0"), WeekLineFields.COLUMNS);
        return request.save(write -> {
            WeekLine numbered = Shape.of(WeekLine.class).with(line.orElseThrow(), "id", WeekLineStore.nextId(write));
            Stored<WeekLine> saved = SaveWeekLine.save(write, Optional.empty(), numbered, request.today());
            return back(saved.value().date())
                    .saying("A line is on the sheet for "
                            + day(request, saved.value().date()) + ".");
        });
    }

    static Saved back(LocalDate day) {
        return Saved.to("/week?of=" + day);
    }

    static String day(Request request, LocalDate day) {
        return new Formats(request.settings().project().currency(), request.today()).date(day);
    }
}
