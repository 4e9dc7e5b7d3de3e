package weekwright.web.episodes;

import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Shows what goes with an episode, then removes it. */
public final class EpisodeRemovePage implements Page {
    /** @param going what goes, and what holds it */
    public record View(Form form, String id, String title, EpisodeRemoval.Going going) {}

    @Override
    public View show(Request request) {
        Stored<Episode> episode = EpisodePage.episode(request);
        return request.read(read -> new View(
                request.form("", episode),
                episode.value().id().value(),
                episode.value().title(),
                EpisodeRemoval.of(read, episode.value())));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Episode> episode = EpisodePage.episode(request);
        return request.save(write -> {
            EpisodeRemoval.remove(write, episode, form.version());
            return Saved.to("/episodes").saying("\"" + episode.value().title() + "\" is removed.");
        });
    }
}
