package weekwright.web.account;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Entrance;
import weekwright.account.LogInStore;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.People;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** One's own passphrase; the old one is asked. All sessions of the person end, this browser gets a new one. */
public final class AccountPassphrasePage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");
    private final Entrance entrance;

    public AccountPassphrasePage(Entrance entrance) {
        this.entrance = entrance;
    }

    public record View(Form form) {}

    @Override
    public View show(Request request) {
        onlyWithLogIn(request);
        return new View(request.form(""));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        onlyWithLogIn(request);
        CrewMember member = request.person().orElseThrow();
        FormReader form = request.form();
        String old = form.exact("old");
        String passphrase = NewPassphrase.read(request, member.name());
        form.check();
        Entrance.Tried tried =
                entrance.passphrase(request.db(), request.crew(), member.id().value(), old, request.remoteAddress());
        Optional<CrewMember> right = tried.member();
        if (right.isEmpty() && tried.delay().isZero()) {
            form.fault("old", "", "is not your passphrase", "type the one you log in with now");
            form.check();
        }
        AccountLogInPage.in(tried, "");
        String hash = entrance.passphrases().hash(passphrase);
        String token = request.db().write(request.who(), write -> {
            LogInStore.set(write, member.id(), hash);
            return entrance.begin(write, member.id(), request.header("User-Agent"));
        });
        LOG.info("a passphrase was changed");
        return Answer.to(
                Saved.to("/account").saying("The new passphrase holds. Every other device of yours is logged out."),
                People.loggedIn(member, token));
    }

    static void onlyWithLogIn(Request request) {
        if (!request.locked()) {
            throw new Request.Elsewhere(Saved.to("/account/start"));
        }
    }
}
