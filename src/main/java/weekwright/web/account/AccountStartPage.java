package weekwright.web.account;

import java.util.List;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Entrance;
import weekwright.account.LogInStore;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.People;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.kit.TurnedAway;

/** A first passphrase by a start code: one that the crew handed over, or, for the very first log-in, the console's. */
public final class AccountStartPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");
    private final Entrance entrance;

    public AccountStartPage(Entrance entrance) {
        this.entrance = entrance;
    }

    /** @param first whether nobody has a log-in as yet */
    public record View(Form form, boolean first, List<String> names) {}

    @Override
    public View show(Request request) {
        if (!request.hasProject()) {
            throw new NotFound("There is no project yet, so nobody is in its crew.");
        }
        return new View(
                request.form(""),
                !request.locked(),
                request.locked()
                        ? List.of()
                        : request.crew().stream()
                                .filter(member -> member.accessOrDefault() == CrewMember.Access.CREW)
                                .map(CrewMember::name)
                                .toList());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String name = form.neededText("name");
        String code = form.neededText("code");
        String passphrase = NewPassphrase.read(request, name);
        form.check();
        boolean first = !request.locked();
        Entrance.Tried tried = entrance.code(request.db(), request.crew(), name, code, request.remoteAddress());
        CrewMember member =
                AccountLogInPage.in(tried, "Name and code do not belong together, or the code was used or is too old.");
        if (first && member.accessOrDefault() != CrewMember.Access.CREW) {
            throw new TurnedAway(403, "The first log-in belongs to somebody with access crew.", 0);
        }
        String hash = entrance.passphrases().hash(passphrase);
        boolean[] taken = {false};
        String token = request.db().write(member.id().value(), write -> {
            if (first
                    ? LogInStore.any(write)
                    : LogInStore.code(write, member.id()).isEmpty()) {
                taken[0] = true;
                return "";
            }
            LogInStore.set(write, member.id(), hash);
            return entrance.begin(write, member.id(), request.header("User-Agent"));
        });
        if (taken[0]) {
            throw new TurnedAway(401, "This code was used meanwhile.", 0);
        }
        LOG.info("a first passphrase was set");
        String said = first
                ? "The passphrase is set. From now on everybody needs a log-in; make the others' start codes under"
                        + " Crew, Log-ins."
                : "The passphrase is set.";
        return Answer.to(Saved.to(AccountPage.local("", member)).saying(said), People.loggedIn(member, token));
    }
}
