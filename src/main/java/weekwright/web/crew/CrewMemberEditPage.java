package weekwright.web.crew;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a person. */
public final class CrewMemberEditPage implements Page {
    /** @param currency its mark */
    public record View(
            Form form,
            String name,
            List<String> days,
            List<Form.Choice> access,
            List<Form.Choice> hazards,
            String currency) {}

    @Override
    public View show(Request request) {
        Stored<CrewMember> member = member(request);
        Form form = request.form("", member);
        if (!request.wasRefused("")) {
            Map<String, List<String>> values = new LinkedHashMap<>(form.values());
            values.put("not_for", member.value().notFor().list());
            values.putIfAbsent("access", List.of("crew"));
            form = new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
        }
        return new View(
                form,
                member.value().name(),
                MemberFields.days(),
                MemberFields.access(),
                MemberFields.hazards(),
                new Formats(request.settings().project().currency(), request.today()).currencyMark());
    }

    private static Stored<CrewMember> member(Request request) {
        return request.read(read -> CrewMemberStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is nobody " + request.part("id") + " in the crew."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return MemberFields.change(request, member(request));
    }
}
