package weekwright.web.notes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.build.BuildLog;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.site.PublicLog;
import weekwright.site.SupportersLinkStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** What of the project is public, and the secret link of the supporters. */
public final class NotesPublicPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");
    /**
     * @param open whether it is served here
     * @param shows and hides: what is switched on and off
     * @param notes how many everyone may read today, in words
     * @param link path of the supporters' pages; empty without a link
     */
    public record View(
            Form form, boolean open, List<String> shows, List<String> hides, String notes, Optional<String> link) {}

    @Override
    public View show(Request request) {
        BuildLog log = request.settings().buildLog();
        List<String> shows = new ArrayList<>();
        List<String> hides = new ArrayList<>();
        sort("how far each stage is", log.stages(), shows, hides);
        sort("when the stage in hand is done", log.landing(), shows, hides);
        sort("the episodes that are out", log.episodes(), shows, hides);
        sort("thanks to those who gave", log.thanks(), shows, hides);
        sort("your drawing", log.drawing(), shows, hides);
        sort("why its date moved", log.moved(), shows, hides);
        sort("the next purchase", log.rung(), shows, hides);
        sort("where pledges went", log.pledge(), shows, hides);
        return request.read(read -> new View(
                request.form(request.wasRefused("end") ? "end" : ""),
                BuildLog.on(log.open()),
                shows,
                hides,
                Formats.sentence(Formats.counted(
                        PublicLog.of(read, request.today()).notes().size(),
                        "note is for everyone today",
                        "notes are for everyone today")),
                SupportersLinkStore.find(read).map(token -> "/public/supporters/" + token + "/index.html")));
    }

    private static void sort(String what, Optional<Boolean> asked, List<String> shows, List<String> hides) {
        (BuildLog.on(asked) ? shows : hides).add(what);
    }

    @Override
    public Answer submit(Request request) throws Exception {
        boolean end = request.form().act().equals("end");
        LOG.info(end ? "the supporters' link is being ended" : "a supporters' link is being made");
        return request.save(write -> {
            if (end) {
                SupportersLinkStore.end(write);
            } else {
                SupportersLinkStore.renew(write);
            }
            return Saved.to("/notes/public")
                    .saying(
                            end
                                    ? "The supporters' address has ended."
                                    : "The supporters' address is new; one before it has ended.");
        });
    }
}
