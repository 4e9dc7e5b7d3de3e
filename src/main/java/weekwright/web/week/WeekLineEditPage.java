package weekwright.web.week;

import java.util.Map;
import java.util.Optional;
import weekwright.build.RemoveWeekLine;
import weekwright.build.RestoreWeekLine;
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
import weekwright.web.kit.Saved;

/** Changes a line of the week that the crew wrote, takes it off, or brings it back. */
public final class WeekLineEditPage implements Page {

    public record View(Form form, WeekLineFields fields, long row) {}

    @Override
    public View show(Request request) {
        Stored<WeekLine> line = line(request);
        return new View(request.form("", line), WeekLineFields.of(request), line.row());
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
        if (form.act().equals("restore")) {
            form.ignoringFields();
            return request.save(write -> RestoreWeekLine.restore(write, row)
                    .map(line -> WeekLinesNewPage.back(line.value().date()).saying("The line is back."))
                    .orElse(Saved.to("/week")));
        }
        Stored<WeekLine> line = line(request);
        if (form.act().equals("delete")) {
            form.ignoringFields();
            return request.save(write -> {
                RemoveWeekLine.remove(write, shown);
                return WeekLinesNewPage.back(line.value().date())
                        .saying("The line of " + WeekLinesNewPage.day(request, line.value().date()) + " is off the sheet.")
                        .undo("/week/lines/" + row + "/edit", "Put it back", Map.of("do", "restore"));
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
