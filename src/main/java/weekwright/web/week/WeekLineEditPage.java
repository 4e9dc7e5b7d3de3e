package weekwright.web.week;

import java.util.Optional;
import weekwright.build.RemoveWeekLine;
import weekwright.build.SaveWeekLine;
import weekwright.build.Shown;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a line of the week that the crew wrote, or takes it off. */
public final class WeekLineEditPage implements Page {

    public record View(Form form, WeekLineFields fields, long row) {}

    @Override
    public View show(Request request) {
        Stored<WeekLine> line = line(request);
        Form form = request.form("", line);
        String to = request.query("to");
        return new View(
                to.isEmpty() || request.wasRefused("") ? form : form.with("date", to),
                WeekLineFields.of(request),
                line.row());
    }

    private static Stored<WeekLine> line(Request request) {
        long row = request.row("row");
        return request.read(read -> WeekLineStore.TABLE.find(read, row))
                .orElseThrow(() -> new NotFound("There is no line " + row + " on a week's sheet."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        long row = request.row("row");
        Shown shown = new Shown(row, form.version());
        Stored<WeekLine> line = line(request);
        if (form.act().equals("delete")) {
            form.ignoringFields();
            return request.save(write -> {
                RemoveWeekLine.remove(write, shown);
                return WeekLinesNewPage.back(line.value().date())
                        .saying("The line of "
                                + WeekLinesNewPage.day(request, line.value().date()) + " is off the sheet.");
            });
        }
        Optional<WeekLine> edited = form.edited(line.value(), WeekLineFields.COLUMNS);
        return request.save(write -> {
            WeekLine saved = SaveWeekLine.save(write, Optional.of(shown), edited.orElseThrow(), request.today())
                    .value();
            return WeekLinesNewPage.back(saved.date()).saying("The line is changed.");
        });
    }
}
