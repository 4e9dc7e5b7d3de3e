package weekwright.web.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.RemoveWeekLine;
import weekwright.build.SaveWeekLine;
import weekwright.build.Shown;
import weekwright.build.SwapWeekLines;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Db;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a line of the week that the crew wrote, or takes it off. */
public final class WeekLineEditPage implements Page {
    /** This week and the next. */
    private static final int SWAP_DAYS = 13;

    /**
     * @param others lines with which it can change places
     * @param tried what the change would do; empty before that was asked
     */
    public record View(Form form, WeekLineFields fields, long row, List<Form.Choice> others, List<String> tried) {}

    @Override
    public View show(Request request) {
        Stored<WeekLine> line = line(request);
        String act = Tried.refused(request);
        Form form = request.form(act, line);
        String to = request.query("to");
        return new View(
                to.isEmpty() || request.wasRefused(act) ? form : form.with("date", to),
                WeekLineFields.of(request),
                line.row(),
                others(request, line),
                Tried.shown(request));
    }

    private static List<Form.Choice> others(Request request, Stored<WeekLine> line) {
        LocalDate monday = Weeks.monday(line.value().date());
        return request.read(read -> {
            WeekFacts facts = WeekFacts.of(read, monday);
            return WeekLineStore.between(read, monday, monday.plusDays(SWAP_DAYS)).stream()
                    .filter(other ->
                            other.row() != line.row() && !other.value().date().isBefore(request.today()))
                    .map(other -> new Form.Choice(
                            other.value().id().value(),
                            Formats.weekdayShort(other.value().date()) + " "
                                    + Formats.dayMonth(other.value().date()) + ", "
                                    + facts.person(other.value()
                                            .crew()
                                            .map(Object::toString)
                                            .orElse(""))
                                    + ", " + WeekDays.text(other.value(), facts)))
                    .toList();
        });
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
        switch (form.act()) {
            case "swap", "try-swap" -> {
                Optional<Id> other = form.needed("swap", Id.class);
                form.ignoringFields();
                return keep(
                        request,
                        write -> {
                            SwapWeekLines.swap(write, shown, other.orElseThrow(), request.today());
                            return line.value();
                        },
                        "The two lines have changed places.");
            }
            case "aside", "try-aside" -> {
                Optional<Id> task = Tried.task(request, form);
                form.ignoringFields();
                return keep(
                        request,
                        write -> {
                            Tried.notThisWeek(write, request, line.value().date(), task.orElseThrow());
                            RemoveWeekLine.remove(write, shown);
                            return line.value();
                        },
                        "The line is off the sheet, and its task is laid aside until "
                                + WeekLinesNewPage.day(
                                        request, Tried.until(line.value().date())) + ".");
            }
            default -> {
                WeekLine edited = form.draft(line.value(), WeekLineFields.COLUMNS);
                form.besides(() ->
                        request.read(read -> SaveWeekLine.check(read, Optional.of(shown), edited, request.today())));
                form.texts("swap");
                return keep(
                        request,
                        write -> SaveWeekLine.save(write, Optional.of(shown), edited, request.today())
                                .value(),
                        "The line is saved.");
            }
        }
    }

    /** Keeps a change, or only tells what it would do. */
    private static Answer keep(Request request, Db.Work<WeekLine, Exception> change, String said) throws Exception {
        if (request.form().act().startsWith("try")) {
            return Tried.of(request, change);
        }
        return request.save(
                write -> WeekLinesNewPage.back(change.in(write).date()).saying(said));
    }
}
