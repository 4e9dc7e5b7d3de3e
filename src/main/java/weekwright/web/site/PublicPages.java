package weekwright.web.site;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.account.Codes;
import weekwright.build.BuildLog;
import weekwright.render.Templates;
import weekwright.site.Site;
import weekwright.site.SupportersLinkStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/**
 * The build log without an account, once the crew has opened it: the same pages as {@code publish} writes. They are made
 * from one reading of the store and kept until the project or the day changes, ten minutes at most. Safe for use from several threads.
 */
public final class PublicPages implements Fragment {
    private static final String CLOSED = "There is no public build log here.";
    /** A newer forecast raises no version. */
    private static final Duration KEPT = Duration.ofMinutes(10);
    /** Pages that were asked for last, as they were answered: a film brings thousands to the same few. */
    private static final int MOST_KEPT = 400;

    private static final Map<String, String> TYPES = Map.of(
            "html", "text/html; charset=utf-8",
            "xml", "application/xml; charset=utf-8",
            "css", "text/css; charset=utf-8",
            "woff2", "font/woff2",
            "jpg", "image/jpeg",
            "jpeg", "image/jpeg",
            "png", "image/png",
            "webp", "image/webp");

    private final Templates templates;
    private final Function<String, Optional<Path>> copies;
    private volatile Optional<Made> kept = Optional.empty();

    /** The pages of one state of the project on one day. */
    private record Made(long version, LocalDate day, String token, Instant at, Site site, Map<String, Tagged> pages) {
        /** A page, or another file; empty where nothing stands there. */
        Optional<Tagged> at(String path) {
            if (!path.endsWith(".html") && !path.endsWith(".xml")) {
                return site.at(path).map(bytes -> new Tagged(bytes, ""));
            }
            Tagged had = pages.get(path);
            if (had != null) {
                return Optional.of(had);
            }
            Optional<Tagged> page = site.at(path).map(Tagged::of);
            page.ifPresent(one -> pages.put(path, one));
            return page;
        }
    }

    /** @param tag of the bytes, empty where the path itself changes with them */
    private record Tagged(byte[] bytes, String tag) {
        static Tagged of(byte[] bytes) {
            return new Tagged(bytes, "\"" + Codes.sha256(new String(bytes, StandardCharsets.UTF_8)) + "\"");
        }
    }

    private static Map<String, Tagged> lastAsked() {
        return Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<String, Tagged> eldest) {
                return size() > MOST_KEPT;
            }
        });
    }

    /** @param copies see {@link Site} */
    public PublicPages(Templates templates, Function<String, Optional<Path>> copies) {
        this.templates = templates;
        this.copies = copies;
    }

    @Override
    public Answer answer(Request request) {
        if (!request.hasProject() || !BuildLog.on(request.settings().buildLog().open())) {
            throw new NotFound(CLOSED);
        }
        String path = request.address().replaceFirst("^/public/?", "");
        if (path.isEmpty()) {
            return Answer.to("/public/index.html");
        }
        Tagged page = made(request)
                .at(path.endsWith("/") ? path + "index.html" : path)
                .orElseThrow(() -> new NotFound("There is no such page in the build log."));
        String ending = path.substring(path.lastIndexOf('.') + 1);
        String type = path.equals("feed.xml")
                ? "application/atom+xml; charset=utf-8"
                : TYPES.getOrDefault(ending, "text/html; charset=utf-8");
        boolean hashed = path.startsWith("assets/") || path.startsWith("pictures/");
        boolean secret = path.startsWith("supporters/");
        if (hashed || secret) {
            String caching = hashed ? "public, max-age=31536000, immutable" : "private, no-store";
            return new Answer.Body(200, type, page.bytes(), Map.of("Cache-Control", caching));
        }
        return Answer.tagged(request, type, page.bytes(), page.tag(), "public, max-age=60");
    }

    private Made made(Request request) {
        String token = request.read(SupportersLinkStore::find).orElse("");
        Optional<Made> had = kept.filter(one -> one.version() == request.version()
                && one.day().equals(request.today())
                && one.token().equals(token)
                && request.clock().instant().isBefore(one.at().plus(KEPT)));
        if (had.isPresent()) {
            return had.get();
        }
        Made made = new Made(
                request.version(),
                request.today(),
                token,
                request.clock().instant(),
                Site.of(request.db(), request.project().folder(), templates, copies, request.today()),
                lastAsked());
        kept = Optional.of(made);
        return made;
    }
}
