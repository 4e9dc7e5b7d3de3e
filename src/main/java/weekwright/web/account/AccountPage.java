package weekwright.web.account;

import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.People;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Who sits at this browser: chosen once from the crew list and written down with every change. */
public final class AccountPage implements Page {

    /**
     * @param people to choose from
     * @param now who is chosen
     */
    public record View(Form form, List<Form.Choice> people, Optional<String> now, String to) {}

    @Override
    public View show(Request request) {
        if (!request.hasProject()) {
            throw new NotFound("There is no project yet, so nobody is in its crew.");
        }
        return new View(
                request.form(
                        "",
                        java.util.Map.of(
                                "who", request.person().map(p -> p.id().value()).orElse(""))),
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                request.person().map(CrewMember::name),
                request.query("to"));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Id> who =
                form.oneOf("who", request.crew().stream().map(CrewMember::id).toList());
        String to = form.text("to");
        if (who.isEmpty() && form.problems().isEmpty()) {
            form.fault("who", "", "is missing", "choose one of the crew");
        }
        form.check();
        CrewMember member = request.crew().stream()
                .filter(m -> m.id().folded().equals(who.orElseThrow().folded()))
                .findFirst()
                .orElseThrow();
        boolean local = to.matches("/[a-z][A-Za-z0-9/._~-]*");
        return Answer.to(
                Saved.to(local ? to : "/ahead")
                        .saying("This browser writes down what is done as " + member.name() + "."),
                People.chosen(member));
    }
}
