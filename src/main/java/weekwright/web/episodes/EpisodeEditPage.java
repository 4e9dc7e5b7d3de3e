package weekwright.web.episodes;

import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes an episode and what it tells. */
public final class EpisodeEditPage implements Page {
    public record View(Form form, EpisodeFields.Lists lists, String id, String title) {}

    @Override
    public View show(Request request) {
        Stored<Episode> episode = EpisodePage.episode(request);
        return request.read(read -> {
            Form form = request.form("", episode);
            if (!request.wasRefused("")) {
                form = EpisodeFields.filled(read, episode.value().id(), form);
            }
            return new View(
                    form,
                    EpisodeFields.lists(request, read, form),
                    episode.value().id().value(),
                    episode.value().title());
        });
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return EpisodeFields.change(request, EpisodePage.episode(request));
    }
}
