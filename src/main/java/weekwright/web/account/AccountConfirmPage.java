package weekwright.web.account;

import weekwright.account.Entrance;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/**
 * One's passphrase once more, before doors are opened or closed for others: a session left open on a device in the shop is not
 * enough for that. It holds for ten minutes. Carries through what was sent.
 */
public final class AccountConfirmPage implements Page {
    private static final String DONE = "/account";

    private final Entrance entrance;

    public AccountConfirmPage(Entrance entrance) {
        this.entrance = entrance;
    }

    /** @param kept what was sent, packed; empty where nothing was */
    public record View(Form form, String kept) {}

    @Override
    public View show(Request request) {
        AccountPassphrasePage.onlyWithLogIn(request);
        Form form = request.form("");
        return new View(form, request.wasRefused("") ? form.value("kept") : request.interrupted());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        AccountPassphrasePage.onlyWithLogIn(request);
        CrewMember member = request.person().orElseThrow();
        FormReader form = request.form();
        String passphrase = form.exact("passphrase");
        String kept = form.text("kept");
        if (passphrase.isEmpty()) {
            form.fault("passphrase", "", "is missing", "type the one you log in with");
        }
        form.check();
        AccountLogInPage.in(
                entrance.passphrase(
                        request.db(), request.crew(), member.id().value(), passphrase, request.remoteAddress()),
                "This is not your passphrase. Type the one you log in with.");
        entrance.confirm(request.session().orElseThrow());
        return Answer.to(Saved.to(DONE)
                .saying("Your passphrase is right. It is not asked again for ten minutes.")
                .orBackTo(
                        kept,
                        member.id().folded(),
                        "Your passphrase is right, and nothing was done yet: press the button once more. It is not"
                                + " asked again for ten minutes."));
    }
}
