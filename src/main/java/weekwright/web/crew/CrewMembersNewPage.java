package weekwright.web.crew;

import java.util.List;
import java.util.Map;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a person. */
public final class CrewMembersNewPage implements Page {
    /** @param currency its mark */
    public record View(
            Form form, List<String> days, List<Form.Choice> access, List<Form.Choice> hazards, String currency) {}

    @Override
    public View show(Request request) {
        return new View(
                request.form("", Map.of("access", "crew")),
                MemberFields.days(),
                MemberFields.access(),
                MemberFields.hazards(),
                request.formats().currencyMark());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return MemberFields.add(request);
    }
}
