package weekwright.web.crew;

import java.util.Map;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Enters an incident. */
public final class CrewIncidentsNewPage implements Page {
    public record View(Form form, RowKinds.Lists lists) {}

    @Override
    public View show(Request request) {
        return new View(request.form("", Map.of("date", request.today().toString())), RowKinds.lists(request));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return RowKinds.INCIDENT.add(request);
    }
}
