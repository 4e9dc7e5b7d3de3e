package weekwright.web.episodes;

import weekwright.episodes.Episode;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a picture that an episode wants. */
public final class EpisodeShotsNewPage implements Page {
    public record View(Form form, ShotFields.Lists lists, String id, String title) {}

    @Override
    public View show(Request request) {
        Episode episode = EpisodePage.episode(request).value();
        return request.read(read ->
                new View(request.form(""), ShotFields.lists(read), episode.id().value(), episode.title()));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return ShotFields.add(request, EpisodePage.episode(request).value());
    }
}
