package weekwright.web.log;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.build.CrewMember;
import weekwright.build.RemoveStopped;
import weekwright.build.SaveStopped;
import weekwright.build.Shown;
import weekwright.build.Stopped;
import weekwright.build.StoppedStore;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** The days of Log on which nothing was done: told with a reason, taken away. */
final class LogStopped {
    static final String NOTHING = "nothing";
    private static final String DELETE = "delete-stopped";
    private static final String[] COLUMNS = {"date", "crew", "hours", "reason", "note"};

    private LogStopped() {}

    static boolean mine(String act) {
        return act.equals(NOTHING) || act.equals(DELETE);
    }

    static Answer submit(Request request, FormReader form) throws Exception {
        return form.act().equals(NOTHING) ? keep(request, form) : delete(request, form);
    }

    private static Answer keep(Request request, FormReader form) throws Exception {
        List<Id> known = LogPage.people(request).stream().map(CrewMember::id).toList();
        Optional<Stopped> typed = form.record(Stopped.class, Map.of("id", "stopped.0"), COLUMNS);
        String crew = form.text("crew");
        if (Id.isOne(crew) && known.stream().noneMatch(id -> id.value().equalsIgnoreCase(crew))) {
            form.fault("crew", crew, "is not one of those here", "choose one of the list");
        }
        if (typed.flatMap(Stopped::hours).map(hours -> hours.minutes() == 0).orElse(false)) {
            form.fault(
                    "hours", form.text("hours"), "is nothing lost", "write the hours, or leave it empty for the day");
        }
        return request.save(write -> {
            Stopped row = Shape.of(Stopped.class).with(typed.orElseThrow(), "id", StoppedStore.nextId(write));
            SaveStopped.save(write, Optional.empty(), row, request.today());
            String who = row.crew().map(id -> LogPage.name(request, id)).orElse("Everybody");
            return Saved.to("/log")
                    .saying(who + ": nothing done on " + Formats.dayMonthLong(row.date()) + ", "
                            + Choices.REASONS.getOrDefault(row.reason(), Codec.word(row.reason())) + ".");
        });
    }

    private static Answer delete(Request request, FormReader form) throws Exception {
        List<Shown> rows = LogPage.shown(form.text("rows"));
        return request.save(write -> {
            for (Shown row : rows) {
                RemoveStopped.remove(write, row);
            }
            return Saved.to("/log").saying("The stopped day is taken away.");
        });
    }
}
