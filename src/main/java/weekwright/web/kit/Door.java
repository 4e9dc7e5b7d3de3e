package weekwright.web.kit;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.Entrance;
import weekwright.account.SessionStore;
import weekwright.db.StoreTrouble;

/**
 * Who comes in: sends on who is not yet known, refuses who may not, asks for the passphrase again, and gives back what was typed
 * meanwhile. Where somebody does not come in, the reply is written. Safe for use from several threads.
 */
final class Door {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.web");

    private static final String LOG_IN = "/account/log-in";
    private static final String CONFIRM = "/account/confirm";
    private static final String NOBODY_YET =
            "This server can be reached from other devices, and nobody has a log-in. Stop it,"
                    + " make one with \"weekwright passphrase FOLDER NAME\", and start it again.";

    private final Replies replies;
    private final Clock clock;
    private final Front front;
    private final Page logIn;
    private final Page confirm;
    private final Entrance entrance;
    private final KeptForms keptForms;

    /** The parameters are those of {@link Desk}. */
    Door(Replies replies, Clock clock, Front front, Page logIn, Page confirm, Entrance entrance, KeptForms keptForms) {
        this.replies = replies;
        this.clock = clock;
        this.front = front;
        this.logIn = logIn;
        this.confirm = confirm;
        this.entrance = entrance;
        this.keptForms = keptForms;
    }

    /** As {@link #admitted} for what a person asks for; what an open page asks by itself keeps no session alive. */
    boolean received(Request request, Browser browser, Access needed) {
        seen(request);
        return admitted(request, browser, needed);
    }

    /** Sends on who is not yet known, refuses who may not. */
    boolean admitted(Request request, Browser browser, Access needed) {
        boolean open = needed == Access.PUBLIC && !request.path().startsWith("/start");
        if (front.beyond() && !request.locked() && !open) {
            replies.trouble(request, browser, Trouble.plain(403, NOBODY_YET));
            return false;
        }
        if (needed == Access.PUBLIC) {
            return true;
        }
        if (!request.hasProject()) {
            replies.send(request, browser, Answer.to("/start"));
            return false;
        }
        if (request.access() == Access.PUBLIC) {
            boolean posted = request.context().method().name().equals("POST");
            if (posted && BySelf.asked(request.context())) {
                BySelf.refused(request.context(), 401, List.of(BySelf.NOBODY));
            } else if (posted && request.locked()) {
                request.interruptedBy(KeptForms.pack(request.context(), browser, replies.key(request)));
                replies.sheet(request, browser, 401, PageName.of(LOG_IN).template(), logIn.show(request));
            } else {
                String back = posted ? "" : "?to=" + request.address();
                replies.send(request, browser, Answer.to((request.locked() ? LOG_IN : "/account") + back));
            }
            return false;
        }
        if (!request.access().covers(needed)) {
            LOG.info("{} {} refused with 403", request.context().method(), request.path());
            replies.trouble(
                    request,
                    browser,
                    Trouble.plain(
                            403, "This sheet is for the crew. A helper logs hours and sees the week and the build."));
            return false;
        }
        return true;
    }

    /** Asks for the passphrase again where it was typed too long ago; what was sent comes back after it. */
    boolean confirmed(Request request, Browser browser) {
        if (!request.locked() || request.session().filter(entrance::confirmed).isPresent()) {
            return true;
        }
        LOG.info("POST {} asked for the passphrase again", request.path());
        request.interruptedBy(KeptForms.pack(request.context(), browser, replies.key(request)));
        replies.sheet(request, browser, 403, PageName.of(CONFIRM).template(), confirm.show(request));
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
    void takeKept(Request request) {
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
            request.shownAgain(new Request.Typed(
                    act,
                    version.matches("[0-9]{1,15}") ? Optional.of(Long.parseLong(version)) : Optional.empty(),
                    typed,
                    Map.of("", kept.sentence()),
                    List.of()));
        });
    }
}
