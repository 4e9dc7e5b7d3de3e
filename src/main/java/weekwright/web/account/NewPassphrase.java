package weekwright.web.account;

import java.util.List;
import weekwright.account.PassphraseRules;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/** The two boxes in which a new passphrase is typed. */
final class NewPassphrase {
    private NewPassphrase() {}

    /** Reads them; what is wrong becomes a fault of the form, never naming the passphrase. */
    static String read(Request request, String name) {
        FormReader form = request.form();
        String passphrase = form.exact("passphrase");
        String again = form.exact("again");
        List<String> own = List.of(name, request.settings().project().name());
        PassphraseRules.check("passphrase", passphrase, own, form.problems());
        if (!passphrase.equals(again)) {
            form.fault("again", "", "is not the same as above", "type the passphrase twice");
        }
        return passphrase;
    }
}
