package weekwright.web.kit;

import io.javalin.http.Context;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The checks that every post passes before a page sees it, and its digest. */
final class Posts {
    private static final String KEY = "[A-Za-z0-9._-]{16,120}";

    private Posts() {}

    /** A refusal: its status and the sentence for the person. */
    record Refusal(int status, String sentence) {}

    /** Why a post is not taken at all: another site's, without its token, or of a kind that no form sends. */
    static Optional<Refusal> refusal(Context context, Browser browser, String host) {
        String type = header(context, "Content-Type").toLowerCase(Locale.ROOT);
        if (!type.startsWith("application/x-www-form-urlencoded") && !type.startsWith("multipart/form-data")) {
            return Optional.of(new Refusal(415, "Only forms are taken here."));
        }
        if (!fromHere(context, host)) {
            return Optional.of(new Refusal(403, "This form was sent from another site. Nothing was done."));
        }
        List<String> tokens = context.formParamMap().getOrDefault("csrf", List.of());
        if (tokens.size() != 1 || !Keys.same(tokens.get(0), browser.csrf())) {
            return Optional.of(new Refusal(
                    403,
                    "This form does not carry this browser's key. Nothing was done. Load the page again and fill it"
                            + " in; cookies have to be allowed for this address."));
        }
        if (answerKeys(context).size() != 1 || !answerKeys(context).get(0).matches(KEY)) {
            return Optional.of(
                    new Refusal(422, "This form carries no answer key. Nothing was done. Load the page again."));
        }
        return Optional.empty();
    }

    /** Whether the browser says that the post comes from a page of this server. */
    private static boolean fromHere(Context context, String host) {
        String site = header(context, "Sec-Fetch-Site");
        if (!site.isEmpty() && !site.equals("same-origin")) {
            return false;
        }
        String origin = header(context, "Origin");
        if (!origin.isEmpty()) {
            return sameHost(origin, host);
        }
        String referer = header(context, "Referer");
        return referer.isEmpty() ? !site.isEmpty() : sameHost(referer, host);
    }

    private static boolean sameHost(String address, String host) {
        try {
            URI uri = URI.create(address);
            return uri.getRawAuthority() != null
                    && uri.getRawAuthority().equalsIgnoreCase(host)
                    && ("http".equals(uri.getScheme()) || "https".equals(uri.getScheme()));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    static String answerKey(Context context) {
        return answerKeys(context).get(0);
    }

    private static List<String> answerKeys(Context context) {
        return context.formParamMap().getOrDefault("answer", List.of());
    }

    /** SHA-256 of the address and of all fields but the keys. */
    static String digest(Context context) {
        Map<String, List<String>> fields = new TreeMap<>(context.formParamMap());
        fields.remove("csrf");
        fields.remove("answer");
        List<String> parts = new ArrayList<>(List.of(context.path()));
        fields.forEach((name, values) -> {
            parts.add(name);
            parts.add(values.toString());
        });
        context.uploadedFiles().forEach(file -> parts.add(file.filename() + " " + file.size()));
        return Keys.sha256(parts.toString());
    }

    private static String header(Context context, String name) {
        String value = context.header(name);
        return value == null ? "" : value;
    }
}
