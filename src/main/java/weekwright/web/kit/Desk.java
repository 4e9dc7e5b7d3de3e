package weekwright.web.kit;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Entrance;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.KeyReused;
import weekwright.db.Stale;
import weekwright.db.StoreTrouble;
import weekwright.render.Frame;
import weekwright.render.Templates;

/**
 * Takes each request through the {@link Door} to its page and the answer to the {@link Replies}: what was posted, what is shown when
 * it was refused. Every way out of a page ends here. Safe for use from several threads.
 */
public final class Desk {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.web");

    private final Clock clock;
    private final Supplier<Optional<Project>> project;
    private final Front front;
    private final Replies replies;
    private final Door door;

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
        this.clock = clock;
        this.project = project;
        this.front = front;
        KeptForms keptForms = new KeptForms(clock);
        replies = new Replies(templates, clock, sampleNotice, help, provenance, keptForms);
        door = new Door(replies, clock, front, logIn, confirm, entrance, keptForms);
    }

    // ---- pages

    /** Answers GET and HEAD of a page. */
    public void show(Context context, String path, Access needed, Page page) {
        guarded(context, path, (request, browser) -> {
            if (!door.received(request, browser, needed)) {
                return;
            }
            door.takeKept(request);
            Record view = page.show(request);
            boolean aside = BySelf.aside(context);
            if (!aside) {
                Browser.said(context);
            }
            Optional<Frame.Flash> flash = aside ? Optional.empty() : browser.flash();
            replies.sheet(request, browser, 200, PageName.of(path).template(), view, flash);
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
                replies.trouble(
                        request,
                        browser,
                        Trouble.plain(refusal.get().status(), refusal.get().sentence()));
                return;
            }
            if (!door.received(request, browser, needed.access())
                    || needed.confirmed() && !door.confirmed(request, browser)) {
                return;
            }
            try {
                Answer answer = page.submit(request);
                if (answer instanceof Answer.Again once) {
                    again(request, browser, page, once);
                } else {
                    replies.send(request, browser, answer);
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
                replies.trouble(request, browser, Trouble.gone(request, ""));
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
            if (door.admitted(request, browser, needed)) {
                replies.send(request, browser, fragment.answer(request));
            }
        });
    }

    private interface Work {
        void run(Request request, Browser browser) throws Exception;
    }

    private void guarded(Context context, String path, Work work) {
        front.mark(context);
        Optional<Project> open = project.get();
        Browser browser = Browser.of(context, replies.key(open));
        Request request = new Request(context, path, open, clock, browser, front);
        try {
            work.run(request, browser);
        } catch (Request.Elsewhere e) {
            replies.send(request, browser, Answer.to(e.saved()));
        } catch (NotFound e) {
            replies.trouble(request, browser, Trouble.plain(404, e.getMessage()));
        } catch (Forbidden e) {
            LOG.info("{} {} refused with 403", context.method(), path);
            replies.trouble(request, browser, Trouble.plain(403, e.getMessage()));
        } catch (StoreTrouble e) {
            LOG.warn("{} {}: {}", context.method(), path, e.toString());
            replies.trouble(request, browser, Trouble.plain(status(e), e.getMessage()));
        } catch (HttpResponseException e) {
            replies.trouble(request, browser, Trouble.plain(e.getStatus(), Trouble.sentence(e.getStatus())));
        } catch (Exception e) {
            Optional<Trouble> sent = Trouble.unreadable(e);
            if (sent.isPresent()) {
                replies.trouble(request, browser, sent.get());
            } else {
                replies.failed(request, browser, e);
            }
        }
        if (context.method() == HandlerType.POST) {
            Unread.forget(context);
        }
    }

    // ---- refused forms

    private void again(
            Request request,
            Browser browser,
            Page page,
            int status,
            Map<String, String> errors,
            List<Problem> problems) {
        request.shownAgain(typed(request, request.form().act(), Map.of(), errors, problems));
        if (status == 503) {
            request.context().header("Retry-After", "2");
        }
        if (BySelf.asked(request.context())) {
            BySelf.refused(request.context(), status, errors.values());
            return;
        }
        replies.sheet(request, browser, status, PageName.of(request.path()).template(), page.show(request));
    }

    /** The page with what was typed and what a button filled in; nothing is wrong with it. */
    private void again(Request request, Browser browser, Page page, Answer.Again once) {
        request.shownAgain(typed(request, "", once.instead(), Map.of(), List.of()));
        Optional<Frame.Flash> flash =
                once.said().isEmpty() ? Optional.empty() : Optional.of(new Frame.Flash(once.said(), Optional.empty()));
        replies.sheet(request, browser, 200, PageName.of(request.path()).template(), page.show(request), flash);
    }

    /** @param instead of what was typed in these fields */
    private static Request.Typed typed(
            Request request,
            String act,
            Map<String, List<String>> instead,
            Map<String, String> errors,
            List<Problem> problems) {
        Map<String, List<String>> values = new LinkedHashMap<>(request.context().formParamMap());
        values.putAll(instead);
        FormReader.KEYS.forEach(values::remove);
        long version = request.form().version();
        return new Request.Typed(act, version == 0 ? Optional.empty() : Optional.of(version), values, errors, problems);
    }

    private void stale(Request request, Browser browser, Stale stale) {
        Optional<Conflict> conflict = Conflict.of(request, stale);
        if (conflict.isPresent() && BySelf.asked(request.context())) {
            BySelf.refused(request.context(), 409, List.of(BySelf.CHANGED));
        } else if (conflict.isPresent()) {
            replies.sheet(request, browser, 409, "parts/conflict", conflict.get());
        } else {
            replies.trouble(request, browser, Trouble.gone(request, stale.thing()));
        }
    }

    // ---- what went wrong

    /** Answers an address that no page has, or a method that it does not take. */
    public void unknown(Context context, int status) {
        guarded(
                context,
                "/",
                (request, browser) ->
                        replies.trouble(request, browser, Trouble.plain(status, Trouble.sentence(status))));
    }

    /** 507 Insufficient Storage (RFC 4918 section 11.5) for a disk that takes nothing, 503 for a busy store. */
    private static int status(StoreTrouble trouble) {
        return trouble.kind() == StoreTrouble.Kind.BUSY ? 503 : 507;
    }
}
