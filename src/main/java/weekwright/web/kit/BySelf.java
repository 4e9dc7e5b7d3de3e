package weekwright.web.kit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What an open page or the worker beside it asks for by itself, nobody having pressed anything. A page that is drawn anew in part
 * or kept for later says {@code Accept: text/html} alone, and the line for the next page waits for a page that somebody sees.
 *
 * <p>The answers to posts that an open page sends by itself, such as what a phone kept while the server was out of reach: the same
 * checks, the same statuses, JSON in place of a page. Such a post says {@code Accept: application/json}; one that is sent later
 * than it was typed says {@code Prefer: return=minimal} (RFC 7240) besides, and leaves no line for the next page.
 */
final class BySelf {
    static final String NOBODY = "Nobody is known here any more. Nothing was saved; come in again and send it then.";
    static final String CHANGED =
            "It was changed by somebody else since this was typed, so nothing was saved. Look at it as it"
                    + " stands now, and type this in again where it is still right.";

    private static final JsonMapper JSON = new JsonMapper();

    private BySelf() {}

    /** Whether a page is not shown as the next one. */
    static boolean aside(Context context) {
        return "text/html".equals(context.header("Accept"));
    }

    static boolean asked(Context context) {
        return "POST".equals(context.method().name()) && "application/json".equals(context.header("Accept"));
    }

    static boolean later(Context context) {
        return asked(context) && "return=minimal".equals(context.header("Prefer"));
    }

    /** Saved, now or when it came for the first time: where a form would have gone on to. */
    static void done(Context context, Saved saved) {
        Map<String, Object> body = new LinkedHashMap<>();
        body.put("to", saved.to());
        body.put("said", saved.flash().map(line -> line.text()).orElse(""));
        send(context, 200, body);
    }

    /** Not saved, and why. */
    static void refused(Context context, int status, Collection<String> faults) {
        send(context, status, Map.of("faults", faults));
    }

    private static void send(Context context, int status, Map<String, Object> body) {
        try {
            context.status(status)
                    .header("Cache-Control", "no-store")
                    .contentType("application/json; charset=utf-8")
                    .result(JSON.writeValueAsString(body).getBytes(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
