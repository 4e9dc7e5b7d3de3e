package weekwright.web.crew;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Reading;
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

    private static final Shape<CrewMember> SHAPE = Shape.of(CrewMember.class);

    /** What stands in for columns that cannot be read. */
    private static final CrewMember STAND_IN =
            SHAPE.parse(Map.of("id", "new"), Reading.form(2), new Problems()).orElseThrow();

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
        CrewMember draft = draft(request, Optional.empty());
        return request.save(write -> {
            CrewMember member = SHAPE.with(draft, "id", CrewMemberStore.nextId(write, draft.name()));
            SaveCrewMember.save(write, Optional.empty(), member);
            return Saved.to("/crew").saying(member.name() + " is one of the crew now.");
        });
    }

    static Answer change(Request request, Stored<CrewMember> old) throws Exception {
        Optional<Shown> shown = Optional.of(new Shown(old.row(), request.form().version()));
        CrewMember draft = draft(request, shown);
        return request.save(write -> {
            CrewMember member = SHAPE.with(draft, "id", old.value().id());
            SaveCrewMember.save(write, shown, member);
            return Saved.to("/crew").saying("Saved: " + member.name() + ".");
        });
    }

    /** What was typed, and every fault in it: of reading and of the rules. The form carries all but the id. */
    private static CrewMember draft(Request request, Optional<Shown> shown) {
        FormReader form = request.form();
        CrewMember draft = SHAPE.with(form.draft(STAND_IN, COLUMNS), "not_for", new Words(form.texts("not_for")));
        form.besides(() -> request.read(read -> SaveCrewMember.check(read, shown, draft)));
        return draft;
    }

    static List<String> days() {
        return Arrays.asList("mon", "tue", "wed", "thu", "fri", "sat", "sun");
    }
}
