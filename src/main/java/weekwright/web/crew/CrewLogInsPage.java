package weekwright.web.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Entrance;
import weekwright.account.LogInStore;
import weekwright.account.WeekLinkStore;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Who of the crew has a log-in; makes start codes for others and takes log-ins away; and the addresses of own days. */
public final class CrewLogInsPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");

    /** @param locked whether anybody has a log-in */
    public record View(boolean locked, List<Line> people, Form form) {}

    /**
     * A person.
     *
     * @param since the day the log-in was made
     * @param codeUntil the last day of a start code that was handed out
     * @param weekSince the day on which the secret address of the person's own days was made
     */
    public record Line(
            String id,
            String name,
            String access,
            Optional<LocalDate> since,
            Optional<LocalDate> codeUntil,
            Optional<LocalDate> weekSince,
            boolean me) {}

    @Override
    public View show(Request request) {
        var zone = request.settings().zone();
        List<Line> people = request.read(read -> {
            var since = LogInStore.since(read);
            var weeks = WeekLinkStore.since(read);
            return request.crew().stream()
                    .map(member -> new Line(
                            member.id().value(),
                            member.name(),
                            member.accessOrDefault() == CrewMember.Access.CREW ? "crew" : "helper",
                            Optional.ofNullable(since.get(member.id().folded()))
                                    .map(at -> LocalDate.ofInstant(at, zone)),
                            LogInStore.code(read, member.id())
                                    .filter(code -> request.clock().instant().isBefore(code.until()))
                                    .map(code -> LocalDate.ofInstant(code.until(), zone)),
                            Optional.ofNullable(weeks.get(member.id().folded()))
                                    .map(at -> LocalDate.ofInstant(at, zone)),
                            isMe(request, member.id())))
                    .toList();
        });
        String act = List.of("end", "week", "end-week").stream()
                .filter(request::wasRefused)
                .findFirst()
                .orElse("code");
        return new View(request.locked(), people, request.form(act));
    }

    private static boolean isMe(Request request, Id id) {
        return request.person().filter(me -> me.id().same(id)).isPresent();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Id> chosen =
                form.oneOf("who", request.crew().stream().map(CrewMember::id).toList());
        if (chosen.isEmpty() && form.problems().isEmpty()) {
            form.fault("who", "", "is missing", "press the button beside a person");
        }
        boolean week = form.act().equals("week") || form.act().equals("end-week");
        if (week) {
            form.check();
        } else if (!request.locked()) {
            form.fault("", "", "nobody has a log-in yet", "set the first passphrase before the others'");
        } else if (chosen.isPresent() && isMe(request, chosen.get())) {
            form.fault("", "", "this is your own log-in", "change your passphrase on your own page");
        }
        form.check();
        CrewMember member = request.crew().stream()
                .filter(m -> m.id().same(chosen.orElseThrow()))
                .findFirst()
                .orElseThrow();
        if (week) {
            return Answer.to(Saved.to("/crew/log-ins").saying(week(request, member, form.act())));
        }
        if (form.act().equals("end")) {
            request.db().write(request.who(), write -> {
                LogInStore.remove(write, member.id());
                return null;
            });
            LOG.info("a log-in was taken away");
            return Answer.to(Saved.to("/crew/log-ins").saying(member.name() + " has no log-in any more."));
        }
        LOG.info("a start code was made");
        String code = request.db().write(request.who(), write -> Entrance.giveCode(write, member.id()));
        return Answer.to(Saved.to("/crew/log-ins")
                .saying("Start code of " + member.name() + ": " + code
                        + ". Good once, for seven days, at /account/start. Write it down: it is not shown again."));
    }

    /** Makes the secret address of a person's own days anew, or takes it away; what is said of it. */
    private static String week(Request request, CrewMember member, String act) {
        if (act.equals("end-week")) {
            request.db().write(request.who(), write -> {
                WeekLinkStore.end(write, member.id());
                return null;
            });
            LOG.info("an address of own days was ended");
            return "The address of " + member.name() + "'s own days leads nowhere any more.";
        }
        String token = request.db().write(request.who(), write -> WeekLinkStore.renew(write, member.id()));
        LOG.info("an address of own days was made");
        return "The own days of " + member.name() + ": this server's address, then /come/" + token
                + ". Send it to nobody else; it is not shown again, and one made earlier leads nowhere now.";
    }
}
