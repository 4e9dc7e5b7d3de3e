package weekwright.web.crew;

import java.time.LocalDateTime;
import java.util.List;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.history.BringBack;
import weekwright.history.Names;
import weekwright.history.Removal;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** What was removed and is still gone, newest first; each comes back with all that went with it. */
public final class CrewHistoryRemovedPage implements Page {
    private static final int LINES = 50;

    /** @param earlier the project version before which older removals begin; 0 where there are none */
    public record View(Form form, List<Line> lines, long earlier) {}

    /** One removal. */
    public record Line(long version, String when, String who, String what, String with) {}

    @Override
    public View show(Request request) {
        String before = request.query("before");
        long below = before.matches("[0-9]{1,15}") ? Long.parseLong(before) : Long.MAX_VALUE;
        return request.read(read -> {
            Names names = new Names(read);
            List<Long> versions = History.removals(read, below, LINES + 1);
            return new View(
                    request.form("back"),
                    versions.stream()
                            .limit(LINES)
                            .map(version -> line(request, read, names, version))
                            .toList(),
                    versions.size() > LINES ? versions.get(LINES - 1) : 0);
        });
    }

    private static Line line(Request request, Read read, Names names, long version) {
        Removal removal = Removal.of(read, names, version);
        return new Line(
                version,
                Formats.moment(
                        LocalDateTime.ofInstant(removal.at(), request.settings().zone())),
                Formats.sentence(removal.who()),
                Formats.sentence(removal.what()),
                removal.with());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        long version = form.needed("change", Integer.class).orElse(0);
        return request.save(write -> {
            BringBack.removed(write, version, request.today());
            return Saved.to("/crew/history/removed").saying("It is back, with all that went with it.");
        });
    }
}
