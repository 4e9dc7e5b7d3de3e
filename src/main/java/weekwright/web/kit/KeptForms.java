package weekwright.web.kit;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was typed into a form for which the passphrase was wanted first. It travels through the page that asks for it in that
 * browser alone, signed for this browser and this person; after that it waits here, at most an hour, until the form is shown
 * again. Nothing is saved by it: the person presses the button anew. Pictures are not kept. Safe for use from several threads.
 */
final class KeptForms {
    private static final int LONGEST = 200_000;
    private static final int MOST = 32;
    private static final Duration HOUR = Duration.ofHours(1);

    private final Clock clock;
    private final Map<String, Kept> waiting = new LinkedHashMap<>();

    /** @param sentence what is said above it */
    record Kept(String crew, String address, Map<String, List<String>> fields, String sentence, Instant until) {}

    KeptForms(Clock clock) {
        this.clock = clock;
    }

    /** The text for the hidden field of the page that asks; empty for what is not to be kept, such as passphrases. */
    static String pack(Context context, Browser browser, String key) {
        if (context.path().startsWith("/account") || browser.who().isEmpty()) {
            return "";
        }
        String fields = context.formParamMap().entrySet().stream()
                .filter(e -> !e.getKey().equals("csrf") && !e.getKey().equals("answer"))
                .flatMap(e -> e.getValue().stream().map(value -> encoded(e.getKey()) + "=" + encoded(value)))
                .collect(Collectors.joining("&"));
        String query = context.queryString() == null ? "" : context.queryString();
        String text = encoded(browser.who()) + "~" + encoded(context.path()) + "~" + encoded(query) + "~" + fields;
        return text.length() > LONGEST ? "" : text + "~" + sign(text, browser, key);
    }

    /**
     * Takes what that page carried.
     *
     * @return where to go on; empty when it was somebody else's, or forged
     */
    Optional<String> unpack(Saved.Kept carried, Browser browser, String key) {
        String packed = carried.packed();
        String crew = carried.crew();
        int cut = packed.lastIndexOf('~');
        if (cut < 0 || !Keys.same(packed.substring(cut + 1), sign(packed.substring(0, cut), browser, key))) {
            return Optional.empty();
        }
        String[] parts = packed.substring(0, cut).split("~", 4);
        if (!decoded(parts[0]).equals(crew)) {
            return Optional.empty();
        }
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (String pair : parts[3].split("&")) {
            String[] halves = pair.split("=", 2);
            if (halves.length == 2) {
                fields.computeIfAbsent(decoded(halves[0]), name -> new ArrayList<>())
                        .add(decoded(halves[1]));
            }
        }
        String address = decoded(parts[1]);
        String query = decoded(parts[2]);
        String name = Keys.random();
        put(
                name,
                new Kept(
                        crew,
                        address,
                        fields,
                        carried.sentence(),
                        clock.instant().plus(HOUR)));
        return Optional.of(address + "?" + (query.isEmpty() ? "" : query + "&") + "kept=" + name);
    }

    private synchronized void put(String name, Kept kept) {
        waiting.values().removeIf(one -> !clock.instant().isBefore(one.until()));
        while (waiting.size() >= MOST) {
            waiting.remove(waiting.keySet().iterator().next());
        }
        waiting.put(name, kept);
    }

    /** What waits under a name for this person at this address. */
    synchronized Optional<Kept> find(String name, String crew, String address) {
        return Optional.ofNullable(waiting.get(name))
                .filter(kept -> kept.crew().equals(crew)
                        && kept.address().equals(address)
                        && clock.instant().isBefore(kept.until()));
    }

    private static String sign(String text, Browser browser, String key) {
        return Keys.sign(key, "kept", browser.name() + text);
    }

    /** Without the sign that parts the text. */
    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("~", "%7E");
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
