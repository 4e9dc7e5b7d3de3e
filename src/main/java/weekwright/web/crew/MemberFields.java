package weekwright.web.crew;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.HazardCodes;
import weekwright.build.SaveCrewMember;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The form of a person, for adding one and for changing one. */
final class MemberFields {
    private static final String[] COLUMNS = {
        "name", "trades", "mon", "tue", "wed", "thu", "fri", "sat", "sun", "pay", "from", "to", "access", "public_name"
    };

    private MemberFields() {}

    static List<Form.Choice> access() {
        return List.of(
                new Form.Choice("crew", "crew: sees and changes everything"),
                new Form.Choice("helper", "helper: logs own hours, sees the week and the build without money"));
    }

    static List<Form.Choice> hazards() {
        return HazardCodes.all().stream()
                .map(code -> new Form.Choice(code, HazardCodes.title(code).orElse(code)))
                .toList();
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Map<String, String> fixed = new LinkedHashMap<>(Map.of("id", "new"));
        fixed.put("not_for", String.join(" ", form.texts("not_for")));
        Optional<CrewMember> read = form.record(CrewMember.class, fixed, COLUMNS);
        return request.save(write -> {
            CrewMember member = Shape.of(CrewMember.class)
                    .with(
                            read.orElseThrow(),
                            "id",
                            CrewMemberStore.nextId(write, read.get().name()));
            SaveCrewMember.save(write, Optional.empty(), member);
            return Saved.to("/crew").saying(member.name() + " is one of the crew now.");
        });
    }

    static Answer change(Request request, Stored<CrewMember> old) throws Exception {
        FormReader form = request.form();
        Optional<CrewMember> edited = form.edited(old.value(), COLUMNS);
        Words notFor = new Words(form.texts("not_for"));
        return request.save(write -> {
            CrewMember member = Shape.of(CrewMember.class).with(edited.orElseThrow(), "not_for", notFor);
            SaveCrewMember.save(write, Optional.of(new Shown(old.row(), form.version())), member);
            return Saved.to("/crew").saying(member.name() + " is changed.");
        });
    }

    static List<String> days() {
        return Arrays.asList("mon", "tue", "wed", "thu", "fri", "sat", "sun");
    }
}
