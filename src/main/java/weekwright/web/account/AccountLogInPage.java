package weekwright.web.account;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Entrance;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.People;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.kit.TurnedAway;

/** Name and passphrase, once anybody has a log-in. Carries through what was typed when a log-in had ended. */
public final class AccountLogInPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");

    private final Entrance entrance;

    public AccountLogInPage(Entrance entrance) {
        this.entrance = entrance;
    }

    /**
     * @param to where to go on
     * @param kept what was typed, packed; empty where nothing was
     */
    public record View(Form form, String to, String kept) {}

    @Override
    public View show(Request request) {
        if (!request.locked()) {
            throw new Request.Elsewhere(Saved.to("/account"));
        }
        Form form = request.form("");
        boolean refused = request.wasRefused("");
        return new View(
                form,
                refused ? form.value("to") : request.query("to"),
                refused ? form.value("kept") : request.interrupted());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        if (!request.locked()) {
            throw new Request.Elsewhere(Saved.to("/account"));
        }
        FormReader form = request.form();
        String name = form.text("name");
        String passphrase = form.exact("passphrase");
        String to = form.text("to");
        String kept = form.text("kept");
        form.check();
        Entrance.Tried tried =
                entrance.passphrase(request.db(), request.crew(), name, passphrase, request.remoteAddress());
        CrewMember member = in(tried, "Name and passphrase do not belong together.");
        String token = request.db()
                .write(member.id().value(), write -> entrance.begin(write, member.id(), request.header("User-Agent")));
        return Answer.to(
                Saved.to(AccountPage.local(to, member))
                        .orBackTo(
                                kept,
                                member.id().folded(),
                                "Your log-in had ended. What you typed stands here; save it once more."),
                People.loggedIn(member, token));
    }

    /** Who it is. @throws TurnedAway when it is nobody, or too soon to try */
    static CrewMember in(Entrance.Tried tried, String sentence) throws TurnedAway {
        if (!tried.delay().isZero()) {
            long seconds = Math.max(1, tried.delay().toSeconds());
            LOG.info("log-in refused, too many tries");
            throw new TurnedAway(
                    429,
                    "Too many wrong tries from this device. Try again in " + seconds
                            + (seconds == 1 ? " second." : " seconds."),
                    seconds);
        }
        Optional<CrewMember> member = tried.member();
        LOG.info(member.isPresent() ? "log-in accepted" : "log-in refused");
        return member.orElseThrow(() -> new TurnedAway(401, sentence, 0));
    }
}
