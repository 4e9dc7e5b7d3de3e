package weekwright.web.kit;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.UncheckedIOException;
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
import weekwright.account.Entrance;
import weekwright.account.SessionStore;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Disk;
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

    private static final String TOO_LARGE =
            "What was sent is too large. Nothing of it was saved. Send a file of at most 40 MB,"
                    + " and at most 160 MB at once; each page says what it reads.";
    private static final String LITTLE_ROOM =
            "The disk has less than 200 MB left. Entries are still taken, files are not. Free some room soon.";
    private static final String CUT_OFF = "The form arrived cut off. Nothing of it was saved. Send it once more.";
    private static final String LOG_IN = "/account/log-in";
    private static final String CONFIRM = "/account/confirm";
    private static final String NOBODY_YET =
            "This server can be reached from other devices, and nobody has a log-in. Stop it,"
                    + " make one with \"weekwright passphrase FOLDER NAME\", and start it again.";

    private final Templates templates;
    private final Clock clock;
    private final Supplier<Optional<Project>> project;
    private final Optional<String> sampleNotice;
    private final Function<Request, Optional<Frame.Help>> help;
    private final Function<Request, List<Frame.Cell>> provenance;
    private final Front front;
    private final Page logIn;
    private final Page confirm;
    private final Entrance entrance;
    private final KeptForms keptForms;
    private final String startKey = Keys.random();

    /**
     * @param project the open one, asked anew for each request: it may be made while serving
     * @param sampleNotice a line on every page of the sample
     * @param help where a sheet is explained to whoever asks for it
     * @param provenance the cells of the title block
     * @param logIn shown in place of a page whose form was sent after the log-in had ended
     * @param confirm shown in place of a page whose form needs the passphrase again
     * @param entrance knows when it was typed last
     */
    public Desk(
            Templates templates,
            Clock clock,
            Supplier<Optional<Project>> project,
            Optional<String> sampleNotice,
            Function<Request, Optional<Frame.Help>> help,
            Function<Request, List<Frame.Cell>> provenance,
            Front front,
            Page logIn,
            Page confirm,
            Entrance entrance) {
        this.front = front;
        this.logIn = logIn;
        this.confirm = confirm;
        this.entrance = entrance;
        this.keptForms = new KeptForms(clock);
        this.templates = templates;
        this.clock = clock;
        this.project = project;
        this.sampleNotice = sampleNotice;
        this.help = help;
        this.provenance = provenance;
    }

    // ---- pages

    /** Answers GET and HEAD of a page. */
    public void show(Context context, String path, Access needed, Page page) {
        guarded(context, path, (request, browser) -> {
            if (!received(request, browser, needed)) {
                return;
            }
            takeKept(request, path);
            Record view = page.show(request);
            html(request, browser, 200, PageName.of(path), view, true);
        });
    }

    /** What a post needs. @param confirmed the passphrase within the last ten minutes, where there are log-ins */
    public record Needed(Access access, boolean confirmed) {}

    /** Answers POST of a page. */
    public void submit(Context context, String path, Needed needed, Page page) {
        guarded(context, path, (request, browser) -> {
            Optional<Posts.Refusal> refusal = Posts.refusal(context, browser, front.host(context));
            if (refusal.isPresent()) {
                LOG.info(
                        "POST {} refused with {}: no form of ours",
                        path,
                        refusal.get().status());
                trouble(
                        request,
                        browser,
                        Trouble.plain(refusal.get().status(), refusal.get().sentence()));
                return;
            }
            if (!received(request, browser, needed.access()) || needed.confirmed() && !confirmed(request, browser)) {
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
            } catch (TurnedAway away) {
                if (away.retryAfterSeconds() > 0) {
                    context.header("Retry-After", String.valueOf(away.retryAfterSeconds()));
                }
                again(request, browser, page, away.status(), Map.of("", away.getMessage()), List.of());
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
                notSaved(request, browser, page, broken);
            } catch (IOException | UncheckedIOException broken) {
                Optional<StoreTrouble> trouble = StoreTrouble.writing(broken);
                if (trouble.isEmpty()) {
                    throw broken;
                }
                notSaved(request, browser, page, trouble.get());
            }
        });
    }

    /** The disk or the folder took nothing: the form again, with what was typed. */
    private void notSaved(Request request, Browser browser, Page page, StoreTrouble trouble) {
        LOG.warn("POST {} not saved: {}", request.path(), trouble.toString());
        again(request, browser, page, status(trouble), Map.of("", trouble.getMessage()), List.of());
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
        front.mark(context);
        Optional<Project> open = project.get();
        Browser browser = Browser.of(context, key(open));
        Request request = new Request(context, path, open, clock, browser, front);
        try {
            work.run(request, browser);
        } catch (Request.Elsewhere e) {
            send(request, browser, Answer.to(e.saved()));
        } catch (NotFound e) {
            trouble(request, browser, Trouble.plain(404, e.getMessage()));
        } catch (Forbidden e) {
            LOG.info("{} {} refused with 403", context.method(), path);
            trouble(request, browser, Trouble.plain(403, e.getMessage()));
        } catch (StoreTrouble e) {
            LOG.warn("{} {}: {}", context.method(), path, e.toString());
            trouble(request, browser, Trouble.plain(status(e), e.getMessage()));
        } catch (HttpResponseException e) {
            trouble(request, browser, Trouble.plain(e.getStatus(), Trouble.sentence(e.getStatus())));
        } catch (Exception e) {
            Optional<Trouble> sent = unreadable(e);
            if (sent.isPresent()) {
                trouble(request, browser, sent.get());
            } else {
                failed(request, browser, e);
            }
        }
        if (context.method() == HandlerType.POST) {
            Unread.forget(context);
        }
    }

    /** As {@link #admitted} for what a person asks for; what an open page asks by itself keeps no session alive. */
    private boolean received(Request request, Browser browser, Access needed) {
        seen(request);
        return admitted(request, browser, needed);
    }

    /** What the server says of a form with files that is larger than it takes, or that is cut off: it throws plain exceptions. */
    private static Optional<Trouble> unreadable(Exception e) {
        boolean broken = false;
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            String said = String.valueOf(cause.getMessage());
            if (cause instanceof IllegalStateException && said.matches("max .*(size|length).* exceeded.*")) {
                return Optional.of(Trouble.plain(413, TOO_LARGE));
            }
            broken |= said.endsWith("bad multipart");
        }
        return broken ? Optional.of(Trouble.plain(400, CUT_OFF)) : Optional.empty();
    }

    /** Sends on who is not yet known, refuses who may not. */
    private boolean admitted(Request request, Browser browser, Access needed) {
        boolean open = needed == Access.PUBLIC && !request.path().startsWith("/start");
        if (front.beyond() && !request.locked() && !open) {
            trouble(request, browser, Trouble.plain(403, NOBODY_YET));
            return false;
        }
        if (needed == Access.PUBLIC) {
            return true;
        }
        if (!request.hasProject()) {
            send(request, browser, Answer.to("/start"));
            return false;
        }
        if (request.access() == Access.PUBLIC) {
            boolean posted = request.context().method().name().equals("POST");
            if (posted && BySelf.asked(request.context())) {
                BySelf.refused(request.context(), 401, List.of(BySelf.NOBODY));
            } else if (posted && request.locked()) {
                request.interruptedBy(KeptForms.pack(request.context(), browser, key(request)));
                html(request, browser, 401, PageName.of(LOG_IN), logIn.show(request), false);
            } else {
                String back = posted ? "" : "?to=" + request.address();
                send(request, browser, Answer.to((request.locked() ? LOG_IN : "/account") + back));
            }
            return false;
        }
        if (!request.access().covers(needed)) {
            LOG.info("{} {} refused with 403", request.context().method(), request.path());
            trouble(
                    request,
                    browser,
                    Trouble.plain(
                            403, "This sheet is for the crew. A helper logs hours and sees the week and the build."));
            return false;
        }
        return true;
    }

    /** Asks for the passphrase again where it was typed too long ago; what was sent comes back after it. */
    private boolean confirmed(Request request, Browser browser) {
        if (!request.locked() || request.session().filter(entrance::confirmed).isPresent()) {
            return true;
        }
        LOG.info("POST {} asked for the passphrase again", request.path());
        request.interruptedBy(KeptForms.pack(request.context(), browser, key(request)));
        html(request, browser, 403, PageName.of(CONFIRM), confirm.show(request), false);
        return false;
    }

    /** Writes down that a session is in use, now and then. */
    private void seen(Request request) {
        request.session().filter(one -> one.stale(clock.instant())).ifPresent(one -> {
            try {
                request.db().write(request.who(), write -> {
                    SessionStore.seen(write, one.tokenSha256());
                    return null;
                });
            } catch (StoreTrouble busy) {
                LOG.warn("a session's use was not written down: {}", busy.toString());
            }
        });
    }

    /** After a log-in that had ended meanwhile: the form shows what was typed. */
    private void takeKept(Request request, String path) {
        String name = request.query("kept");
        if (name.isEmpty() || request.person().isEmpty()) {
            return;
        }
        String crew = request.person().orElseThrow().id().folded();
        keptForms.find(name, crew, request.address()).ifPresent(kept -> {
            Map<String, List<String>> fields = kept.fields();
            String version = String.join("", fields.getOrDefault("version", List.of()));
            String act = String.join("", fields.getOrDefault("do", List.of()));
            Map<String, List<String>> typed = new LinkedHashMap<>(fields);
            FormReader.KEYS.forEach(typed::remove);
            request.refuse(new Request.Typed(
                    act,
                    version.matches("[0-9]{1,15}") ? Optional.of(Long.parseLong(version)) : Optional.empty(),
                    typed,
                    Map.of("", kept.sentence()),
                    List.of()));
        });
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
        if (BySelf.asked(request.context())) {
            BySelf.refused(request.context(), status, errors.values());
            return;
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
        if (conflict.isPresent() && BySelf.asked(request.context())) {
            BySelf.refused(request.context(), 409, List.of(BySelf.CHANGED));
        } else if (conflict.isPresent()) {
            html(request, browser, 409, "parts/conflict", conflict.get(), false);
        } else {
            trouble(request, browser, Trouble.gone(request));
        }
    }

    // ---- out

    private void send(Request request, Browser browser, Answer answer) {
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
                request.access().name().toLowerCase(java.util.Locale.ROOT),
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
        if (BySelf.asked(request.context())) {
            BySelf.refused(request.context(), trouble.status(), List.of(trouble.text()));
            return;
        }
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
