package weekwright.web.kit;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.KeyReused;
import weekwright.db.Stale;
import weekwright.db.StoreTrouble;
import weekwright.render.Frame;
import weekwright.render.Templates;

/**
 * Takes each request to its page and the answer back: who may, what was posted, what is shown when it was refused. Every
 * way out of a page ends here. Safe for use from several threads.
 */
public final class Desk {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.web");

    private final Templates templates;
    private final Clock clock;
    private final Supplier<Optional<Project>> project;
    private final Optional<String> sampleNotice;
    private final Function<Request, List<Frame.Cell>> provenance;
    private final String startKey = Keys.random();

    /**
     * @param project the open one, asked anew for each request: it may be made while serving
     * @param sampleNotice a line on every page of the sample
     * @param provenance the cells of the title block
     */
    public Desk(
            Templates templates,
            Clock clock,
            Supplier<Optional<Project>> project,
            Optional<String> sampleNotice,
            Function<Request, List<Frame.Cell>> provenance) {
        this.templates = templates;
        this.clock = clock;
        this.project = project;
        this.sampleNotice = sampleNotice;
        this.provenance = provenance;
    }

    // ---- pages

    /** Answers GET and HEAD of a page. */
    public void show(Context context, String path, Access needed, Page page) {
        guarded(context, path, (request, browser) -> {
            if (!admitted(request, browser, needed)) {
                return;
            }
            Record view = page.show(request);
            html(request, browser, 200, PageName.of(path), view, true);
        });
    }

    /** Answers POST of a page. */
    public void submit(Context context, String path, Access needed, Page page) {
        guarded(context, path, (request, browser) -> {
            Optional<Posts.Refusal> refusal = Posts.refusal(context, browser);
            if (refusal.isPresent()) {
                trouble(
                        request,
                        browser,
                        Trouble.plain(refusal.get().status(), refusal.get().sentence()));
                return;
            }
            if (!admitted(request, browser, needed)) {
                return;
            }
            try {
                Answer answer = page.submit(request);
                if (answer instanceof Answer.Again once) {
                    again(request, browser, page, once);
                } else {
                    send(request, browser, answer);
                }
            } catch (Rejected rejected) {
                Map<String, String> errors =
                        Refusals.byField(rejected.problems(), request.form().fields());
                again(request, browser, page, 422, errors, rejected.problems());
            } catch (KeyReused reused) {
                again(request, browser, page, 422, Map.of("", Refusals.KEY_REUSED), List.of());
            } catch (NotFound gone) {
                if (request.form().version() == 0) {
                    throw gone;
                }
                trouble(request, browser, Trouble.gone(request));
            } catch (Stale stale) {
                stale(request, browser, stale);
            } catch (StoreTrouble broken) {
                LOG.warn("POST {} not saved: {}", path, broken.toString());
                again(request, browser, page, status(broken), Map.of("", broken.getMessage()), List.of());
            }
        });
    }

    /** Answers GET and HEAD of an address that is no page. */
    public void fragment(Context context, String path, Access needed, Fragment fragment) {
        guarded(context, path, (request, browser) -> {
            if (admitted(request, browser, needed)) {
                send(request, browser, fragment.answer(request));
            }
        });
    }

    private interface Work {
        void run(Request request, Browser browser) throws Exception;
    }

    private void guarded(Context context, String path, Work work) {
        Optional<Project> open = project.get();
        Browser browser = Browser.of(context, key(open));
        Request request = new Request(context, path, open, clock, browser);
        try {
            work.run(request, browser);
        } catch (Request.Elsewhere e) {
            send(request, browser, Answer.to(e.saved()));
        } catch (NotFound e) {
            trouble(request, browser, Trouble.plain(404, e.getMessage()));
        } catch (Forbidden e) {
            trouble(request, browser, Trouble.plain(403, e.getMessage()));
        } catch (StoreTrouble e) {
            LOG.warn("{} {}: {}", context.method(), path, e.toString());
            trouble(request, browser, Trouble.plain(status(e), e.getMessage()));
        } catch (HttpResponseException e) {
            trouble(request, browser, Trouble.plain(e.getStatus(), Trouble.sentence(e.getStatus())));
        } catch (Exception e) {
            failed(request, browser, e);
        }
    }

    /** Sends on who is not yet known, refuses who may not. */
    private boolean admitted(Request request, Browser browser, Access needed) {
        if (needed == Access.PUBLIC) {
            return true;
        }
        if (!request.hasProject()) {
            send(request, browser, Answer.to("/start"));
            return false;
        }
        if (request.access() == Access.PUBLIC) {
            String back = request.context().method().name().equals("GET") ? "?to=" + request.address() : "";
            send(request, browser, Answer.to("/account" + back));
            return false;
        }
        if (!request.access().covers(needed)) {
            trouble(
                    request,
                    browser,
                    Trouble.plain(403, "This sheet is for the crew. A helper logs hours and sees the week."));
            return false;
        }
        return true;
    }

    // ---- refused forms

    private void again(
            Request request,
            Browser browser,
            Page page,
            int status,
            Map<String, String> errors,
            List<Problem> problems) {
        FormReader form = request.form();
        Map<String, List<String>> values = new LinkedHashMap<>(request.context().formParamMap());
        FormReader.KEYS.forEach(values::remove);
        Optional<Long> version = form.version() == 0 ? Optional.empty() : Optional.of(form.version());
        request.refuse(new Request.Typed(form.act(), version, values, errors, problems));
        if (status == 503) {
            request.context().header("Retry-After", "2");
        }
        html(request, browser, status, PageName.of(request.path()), page.show(request), false);
    }

    /** The page with what was typed and what a button filled in; nothing is wrong with it. */
    private void again(Request request, Browser browser, Page page, Answer.Again once) {
        Map<String, List<String>> values = new LinkedHashMap<>(request.context().formParamMap());
        values.putAll(once.instead());
        FormReader.KEYS.forEach(values::remove);
        long version = request.form().version();
        request.refuse(new Request.Typed(
                "", version == 0 ? Optional.empty() : Optional.of(version), values, Map.of(), List.of()));
        Optional<Frame.Flash> flash =
                once.said().isEmpty() ? Optional.empty() : Optional.of(new Frame.Flash(once.said(), Optional.empty()));
        html(request, browser, 200, PageName.of(request.path()).template(), page.show(request), flash);
    }

    private void stale(Request request, Browser browser, Stale stale) {
        Optional<Conflict> conflict = Conflict.of(request, stale);
        if (conflict.isPresent()) {
            html(request, browser, 409, "parts/conflict", conflict.get(), false);
        } else {
            trouble(request, browser, Trouble.gone(request));
        }
    }

    // ---- out

    private void send(Request request, Browser browser, Answer answer) {
        Context context = request.context();
        if (answer instanceof Answer.GoOn goOn) {
            browser.carry(context, key(request), goOn.saved());
            goOn.cookie().ifPresent(c -> Browser.keep(context, c.name(), c.value(), c.maxAgeSeconds()));
            context.header("Cache-Control", "no-store");
            context.status(303).header("Location", goOn.saved().to());
        } else if (answer instanceof Answer.Body body) {
            body.headers().forEach(context::header);
            context.status(body.status()).contentType(body.type()).result(body.bytes());
        }
    }

    private void html(Request request, Browser browser, int status, PageName name, Record view, boolean said) {
        if (said) {
            Browser.said(request.context());
        }
        html(request, browser, status, name.template(), view, said);
    }

    private void html(Request request, Browser browser, int status, String template, Record view, boolean said) {
        html(request, browser, status, template, view, said ? browser.flash() : Optional.empty());
    }

    private void html(
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
        if (!request.hasProject()) {
            return new Frame(
                    "weekwright",
                    "EUR",
                    LocalDate.now(clock.withZone(ZoneOffset.UTC)),
                    group,
                    "public",
                    Optional.empty(),
                    0,
                    browser.theme(),
                    browser.csrf(),
                    Keys.random(),
                    flash,
                    sampleNotice,
                    List.of(),
                    "/");
        }
        return new Frame(
                request.settings().project().name(),
                request.settings().project().currency(),
                request.today(),
                group,
                request.access().name().toLowerCase(java.util.Locale.ROOT),
                request.person().map(person -> person.name()),
                request.db().version(),
                browser.theme(),
                browser.csrf(),
                Keys.random(),
                flash,
                sampleNotice,
                provenance.apply(request),
                "/");
    }

    // ---- what went wrong

    /** Answers an address that no page has, or a method that it does not take. */
    public void unknown(Context context, int status) {
        guarded(
                context,
                "/",
                (request, browser) -> trouble(request, browser, Trouble.plain(status, Trouble.sentence(status))));
    }

    private void failed(Request request, Browser browser, Exception e) {
        String reference = Keys.random().substring(0, 8);
        LOG.error("{} {} failed, reference {}", request.context().method(), request.path(), reference, e);
        trouble(request, browser, Trouble.failed(reference));
    }

    private void trouble(Request request, Browser browser, Trouble trouble) {
        try {
            html(request, browser, trouble.status(), "parts/trouble", trouble, false);
        } catch (RuntimeException e) {
            LOG.error("the sheet of status {} failed", trouble.status(), e);
            request.context()
                    .status(trouble.status())
                    .header("Cache-Control", "no-store")
                    .contentType("text/plain; charset=utf-8")
                    .result(trouble.title() + "\n" + trouble.text() + "\n");
        }
    }

    /** 507 Insufficient Storage (RFC 4918 section 11.5) for a disk that takes nothing, 503 for a busy store. */
    private static int status(StoreTrouble trouble) {
        return trouble.kind() == StoreTrouble.Kind.BUSY ? 503 : 507;
    }

    private String key(Request request) {
        return request.hasProject() ? request.db().csrfKey() : startKey;
    }

    private String key(Optional<Project> open) {
        return open.map(p -> p.db().csrfKey()).orElse(startKey);
    }
}
