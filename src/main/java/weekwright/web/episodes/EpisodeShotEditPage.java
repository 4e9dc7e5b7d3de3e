package weekwright.web.episodes;

import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.RemoveShot;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** Changes a picture that an episode wants, or takes it off the list. */
public final class EpisodeShotEditPage implements Page {
    public record View(Form form, Form remove, ShotFields.Lists lists, String id, String title, String what) {}

    @Override
    public View show(Request request) {
        Episode episode = EpisodePage.episode(request).value();
        Stored<Shot> shot = shot(request, episode);
        return request.read(read -> new View(
                request.form("", shot),
                request.form("remove", shot),
                ShotFields.lists(read),
                episode.id().value(),
                episode.title(),
                shot.value().what()));
    }

    private static Stored<Shot> shot(Request request, Episode episode) {
        return request.read(read -> ShotStore.TABLE.find(read, request.row("row")))
                .filter(shot -> shot.value()
                        .episode()
                        .map(id -> Choices.same(id, episode.id()))
                        .orElse(false))
                .orElseThrow(() -> new NotFound("This shot is not there any more."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Episode episode = EpisodePage.episode(request).value();
        Stored<Shot> shot = shot(request, episode);
        if (!form.act().equals("remove")) {
            return ShotFields.change(request, episode, shot);
        }
        return request.save(write -> {
            RemoveShot.remove(write, new Shown(shot.row(), form.version()));
            return Saved.to("/episodes/" + episode.id())
                    .saying("Off the list: " + shot.value().what() + ".");
        });
    }
}
