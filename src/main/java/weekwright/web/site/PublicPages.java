package weekwright.web.site;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.build.BuildLog;
import weekwright.render.Templates;
import weekwright.site.PublishSite;
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
    private record Made(long version, LocalDate day, String token, Instant at, Site site) {}

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
        byte[] bytes = site(request)
                .at(path.endsWith("/") ? path + "index.html" : path)
                .orElseThrow(() -> new NotFound("There is no such page in the build log."));
        String ending = path.substring(path.lastIndexOf('.') + 1);
        String type = path.equals("feed.xml")
                ? "application/atom+xml; charset=utf-8"
                : TYPES.getOrDefault(ending, "text/html; charset=utf-8");
        boolean hashed = path.startsWith("assets/") || path.startsWith("pictures/");
        boolean secret = path.startsWith("supporters/");
        String caching =
                hashed ? "public, max-age=31536000, immutable" : secret ? "private, no-store" : "public, max-age=60";
        return new Answer.Body(200, type, bytes, Map.of("Cache-Control", caching));
    }

    private Site site(Request request) {
        String token = request.read(SupportersLinkStore::find).orElse("");
        Optional<Made> made = kept.filter(one -> one.version() == request.version()
                && one.day().equals(request.today())
                && one.token().equals(token)
                && request.clock().instant().isBefore(one.at().plus(KEPT)));
        if (made.isPresent()) {
            return made.get().site();
        }
        Site site = PublishSite.site(request.db(), request.project().folder(), templates, copies, request.today());
        kept = Optional.of(new Made(
                request.version(), request.today(), token, request.clock().instant(), site));
        return site;
    }
}
