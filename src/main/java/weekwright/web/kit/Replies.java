package weekwright.web.kit;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.db.Disk;
import weekwright.render.Frame;
import weekwright.render.Templates;

/**
 * What goes back to a browser: a sheet in its frame, a way on, a file, or what went wrong. Safe for use from several threads.
 */
final class Replies {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.web");

    private static final String LITTLE_ROOM =
            "The disk has less than 200 MB left. Entries are still taken, files are not. Free some room soon.";

    private final Templates templates;
    private final Clock clock;
    private final Optional<String> sampleNotice;
    private final Function<Request, Optional<Frame.Help>> help;
    private final Function<Request, List<Frame.Cell>> provenance;
    private final KeptForms keptForms;
    private final String startKey = Keys.random();

    /** The parameters are those of {@link Desk}. */
    Replies(
            Templates templates,
            Clock clock,
            Optional<String> sampleNotice,
            Function<Request, Optional<Frame.Help>> help,
            Function<Request, List<Frame.Cell>> provenance,
            KeptForms keptForms) {
        this.templates = templates;
        this.clock = clock;
        this.sampleNotice = sampleNotice;
        this.help = help;
        this.provenance = provenance;
        this.keptForms = keptForms;
    }

    /** The key by which forms and cookies are signed: the project's, before there is one this start's. */
    String key(Optional<Project> open) {
        return open.map(p -> p.db().csrfKey()).orElse(startKey);
    }

    /** As above. */
    String key(Request request) {
        return request.hasProject() ? request.db().csrfKey() : startKey;
    }

    /** A way on, a file or a stream. */
    void send(Request request, Browser browser, Answer answer) {
        Context context = request.context();
        if (answer instanceof Answer.GoOn goOn) {
            Saved saved = goOn.saved();
            if (saved.kept().isPresent()) {
                saved = keptForms
                        .unpack(saved.kept().get(), browser, key(request))
                        .map(Saved::to)
                        .orElse(saved);
            }
            if (!BySelf.later(context)) {
                browser.carry(context, key(request), saved);
            }
            goOn.headers().forEach(context::header);
            goOn.cookies().forEach(c -> Browser.keep(context, c.name(), c.value(), c.maxAgeSeconds()));
            if (BySelf.asked(context)) {
                BySelf.done(context, saved);
                return;
            }
            context.header("Cache-Control", "no-store");
            context.status(303).header("Location", saved.to());
        } else if (answer instanceof Answer.Body body) {
            body.headers().forEach(context::header);
            context.status(body.status()).contentType(body.type()).result(body.bytes());
        } else if (answer instanceof Answer.Stream stream) {
            stream.headers().forEach(context::header);
            context.status(200).contentType(stream.type()).result(stream.content());
        }
    }

    /** A sheet on which nothing is said of what was done before. */
    void sheet(Request request, Browser browser, int status, String template, Record view) {
        sheet(request, browser, status, template, view, Optional.empty());
    }

    void sheet(
            Request request, Browser browser, int status, String template, Record view, Optional<Frame.Flash> flash) {
        String group = template.startsWith("parts/")
                ? "account"
                : PageName.of(request.path()).group();
        browser.keepName(request.context());
        String text = templates.render(template, frame(request, browser, group, flash), view);
        request.context()
                .status(status)
                .header("Cache-Control", "no-store")
                .contentType("text/html; charset=utf-8")
                .result(text.getBytes(StandardCharsets.UTF_8));
    }

    private Frame frame(Request request, Browser browser, String group, Optional<Frame.Flash> flash) {
        // a stranger before the log-in learns nothing of the project
        if (!request.hasProject() || (request.locked() && request.access() == Access.PUBLIC)) {
            return new Frame(
                    "weekwright",
                    "EUR",
                    LocalDate.now(clock.withZone(ZoneOffset.UTC)),
                    group,
                    "public",
                    Optional.empty(),
                    "",
                    0,
                    browser.theme(),
                    browser.csrf(),
                    Keys.random(),
                    flash,
                    sampleNotice,
                    Optional.empty(),
                    List.of(),
                    "/");
        }
        return new Frame(
                request.settings().project().name(),
                request.settings().project().currency(),
                request.today(),
                group,
                request.access().name().toLowerCase(Locale.ROOT),
                request.person().map(person -> person.name()),
                request.whose(),
                request.version(),
                browser.theme(),
                browser.csrf(),
                Keys.random(),
                flash,
                Disk.littleRoom(request.project().folder().path()) ? Optional.of(LITTLE_ROOM) : sampleNotice,
                help.apply(request),
                provenance.apply(request),
                "/");
    }

    /** A fault of the program: the sheet has a reference, the log tells the rest under it. */
    void failed(Request request, Browser browser, Exception e) {
        String reference = Keys.random().substring(0, 8);
        LOG.error("{} {} failed, reference {}", request.context().method(), request.path(), reference, e);
        trouble(request, browser, Trouble.failed(reference));
    }

    /** What went wrong, as a sheet, or in one sentence where a form was sent by itself. */
    void trouble(Request request, Browser browser, Trouble trouble) {
        if (BySelf.asked(request.context())) {
            BySelf.refused(request.context(), trouble.status(), List.of(trouble.text()));
            return;
        }
        try {
            sheet(request, browser, trouble.status(), "parts/trouble", trouble);
        } catch (RuntimeException e) {
            LOG.error("the sheet of status {} failed", trouble.status(), e);
            request.context()
                    .status(trouble.status())
                    .header("Cache-Control", "no-store")
                    .contentType("text/plain; charset=utf-8")
                    .result(trouble.title() + "\n" + trouble.text() + "\n");
        }
    }
}
