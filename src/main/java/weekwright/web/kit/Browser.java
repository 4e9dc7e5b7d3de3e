package weekwright.web.kit;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.util.Locale;
import java.util.Optional;
import weekwright.account.Session;
import weekwright.render.Frame;

/**
 * What one browser carries in its cookies: its random name {@code w}, from which the token of its forms is made, the
 * person chosen, the line for the next page. None can be read by script but the theme, which script sets.
 *
 * @param name random, 43 letters; not a secret of a person, only of this browser
 * @param fresh the name was given just now; it is kept with the next page
 * @param csrf token of its forms: HMAC-SHA256 of the name under the project's key
 * @param token the secret of its session, or empty
 * @param who the chosen person's id in lower case, or empty
 */
record Browser(
        String name, boolean fresh, String csrf, String token, String who, String theme, Optional<Frame.Flash> flash) {
    private static final String NAME = "w";
    private static final String WHO = "who";
    private static final String SESSION = "session";
    private static final String FLASH = "said";
    private static final int YEAR = 31_536_000;
    private static final int FLASH_SECONDS = 120;

    /** Reads the cookies; a browser without a name is given one. */
    static Browser of(Context context, String key) {
        String name = text(context, NAME);
        boolean fresh = !name.matches("[A-Za-z0-9_-]{43}");
        if (fresh) {
            name = Keys.random();
        }
        String theme = text(context, "theme");
        return new Browser(
                name,
                fresh,
                Keys.sign(key, "form", name),
                text(context, SESSION),
                text(context, WHO).toLowerCase(Locale.ROOT),
                theme.equals("day") || theme.equals("night") ? theme : "",
                flash(context, key, name));
    }

    private static Optional<Frame.Flash> flash(Context context, String key, String name) {
        String[] halves = text(context, FLASH).split("~", -1);
        if (halves.length != 2 || !Keys.same(halves[1], Keys.sign(key, "said", name + halves[0]))) {
            return Optional.empty();
        }
        return FlashText.read(halves[0]).flash();
    }

    /** Keeps the name of a browser that had none. */
    void keepName(Context context) {
        if (fresh) {
            keep(context, NAME, name, YEAR);
        }
    }

    /** Sends the line on to the next page. */
    void carry(Context context, String key, Saved saved) {
        if (saved.flash().isEmpty()) {
            return;
        }
        String text = FlashText.of(saved);
        if (text.length() < 3_000) {
            keep(context, FLASH, text + "~" + Keys.sign(key, "said", name + text), FLASH_SECONDS);
        }
    }

    /** The line has been said. */
    static void said(Context context) {
        if (!text(context, FLASH).isEmpty()) {
            keep(context, FLASH, "", 0);
        }
    }

    static void keep(Context context, String name, String value, int maxAgeSeconds) {
        context.cookie(new Cookie(
                named(context, name), value, "/", maxAgeSeconds, Front.https(context), true, null, SameSite.LAX));
    }

    /** The cookie of a session, as long as a session lasts at most. */
    static Answer.Cookie sessionCookie(String token) {
        return new Answer.Cookie(SESSION, token, token.isEmpty() ? 0 : (int) Session.WHOLE.toSeconds());
    }

    static Answer.Cookie whoCookie(String id) {
        return new Answer.Cookie(WHO, id, YEAR);
    }

    /** Under https browsers hold a cookie of this prefix to its host and to https (RFC 6265bis, section 4.1.3.2). */
    private static String named(Context context, String cookie) {
        return Front.https(context) ? "__Host-" + cookie : cookie;
    }

    private static String text(Context context, String cookie) {
        String value = context.cookie(named(context, cookie));
        return value == null ? "" : value;
    }
}
