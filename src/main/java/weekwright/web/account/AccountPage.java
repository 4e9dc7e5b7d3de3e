package weekwright.web.account;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Session;
import weekwright.account.SessionStore;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.People;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/**
 * Who sits at this browser. As long as nobody has a log-in: chosen once from the crew list and written down with every
 * change. Else whose log-in it is, with the devices that are logged in.
 */
public final class AccountPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");

    /**
     * @param people to choose from
     * @param now who is chosen or logged in
     * @param sessions those of the person; empty where nobody has a log-in
     * @param end the form that ends one
     */
    public record View(
            Form form,
            List<Form.Choice> people,
            Optional<String> now,
            String to,
            boolean locked,
            List<Device> sessions,
            Form end) {}

    /** A browser at which the person is logged in. @param here whether it is this one */
    public record Device(String mark, String browser, String since, String lastSeen, boolean here) {}

    @Override
    public View show(Request request) {
        if (!request.hasProject()) {
            throw new NotFound("There is no project yet, so nobody is in its crew.");
        }
        onlyKnown(request);
        return new View(
                request.form(
                        "",
                        Map.of("who", request.person().map(p -> p.id().value()).orElse(""))),
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                request.person().map(CrewMember::name),
                request.query("to"),
                request.locked(),
                devices(request),
                request.form("end"));
    }

    private static List<Device> devices(Request request) {
        if (!request.locked()) {
            return List.of();
        }
        Id crew = request.person().orElseThrow().id();
        String here = request.session().map(Session::mark).orElse("");
        return request.read(read -> SessionStore.of(read, crew)).stream()
                .filter(one -> one.alive(request.clock().instant()))
                .map(one -> new Device(
                        one.mark(),
                        BrowserName.of(one.browser()),
                        moment(request, one.since()),
                        moment(request, one.lastSeen()),
                        one.mark().equals(here)))
                .toList();
    }

    private static String moment(Request request, Instant at) {
        return Formats.moment(LocalDateTime.ofInstant(at, request.settings().zone()));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        onlyKnown(request);
        return request.locked() ? end(request) : choose(request);
    }

    private static Answer end(Request request) throws Exception {
        FormReader form = request.form();
        Id crew = request.person().orElseThrow().id();
        String here = request.session().map(Session::mark).orElse("");
        String mark = form.act().equals("log-out") ? here : form.text("session");
        boolean keep = form.text("keep").equals("yes");
        form.check();
        boolean ended = request.db().write(request.who(), write -> SessionStore.end(write, crew, mark));
        if (!ended) {
            throw new NotFound("This device is not logged in as you, or was logged out before.");
        }
        LOG.info("a session was ended");
        return mark.equals(here)
                ? Answer.forgetting(Saved.to("/account/log-in"), !keep, People.loggedOut())
                : Answer.to(Saved.to("/account").saying("That device is logged out."));
    }

    private static Answer choose(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Id> who =
                form.oneOf("who", request.crew().stream().map(CrewMember::id).toList());
        String to = form.text("to");
        if (who.isEmpty() && form.problems().isEmpty()) {
            form.fault("who", "", "is missing", "choose one of the crew");
        }
        form.check();
        CrewMember member = request.crew().stream()
                .filter(m -> m.id().same(who.orElseThrow()))
                .findFirst()
                .orElseThrow();
        return Answer.to(
                Saved.to(local(to, member)).saying("This browser writes down what is done as " + member.name() + "."),
                People.chosen(member));
    }

    private static void onlyKnown(Request request) {
        if (request.locked() && request.person().isEmpty()) {
            throw new Request.Elsewhere(Saved.to("/account/log-in"));
        }
    }

    /** Where to go on: a path of this server, else where this person begins. */
    static String local(String to, CrewMember member) {
        boolean helper = member.accessOrDefault() == CrewMember.Access.HELPER;
        return to.matches("/[a-z][A-Za-z0-9/._~-]*") ? to : helper ? "/week" : "/ahead";
    }
}
