package weekwright.web.episodes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.KeepRoll;
import weekwright.episodes.Roll;
import weekwright.episodes.RollStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Whom an episode thanks: givers, gathered by themselves, and the roll of supporters, pasted. */
public final class EpisodeCreditsPage implements Page {
    /** @param text the credits, a line each, to be copied into the film */
    public record View(Form form, String id, String title, List<Credits> credits, String text) {}

    @Override
    public View show(Request request) {
        Episode episode = EpisodePage.episode(request).value();
        return request.read(read -> {
            List<Credits> credits = Credits.of(read, episode);
            Optional<Stored<Roll>> roll =
                    RollStore.ofEpisode(read, episode.id()).stream().findFirst();
            Form form = request.form(
                    "", Map.of("names", roll.map(row -> row.value().names()).orElse("")));
            if (!request.wasRefused("") && roll.isPresent()) {
                form = new Form(
                        form.csrf(), form.answerKey(), Optional.of(roll.get().version()), form.values(), form.errors());
            }
            return new View(
                    form,
                    episode.id().value(),
                    episode.title(),
                    credits,
                    String.join("\n", credits.stream().map(Credits::line).toList()));
        });
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Episode episode = EpisodePage.episode(request).value();
        String names = form.exact("names").strip();
        long version = form.version();
        return request.save(write -> {
            KeepRoll.keep(write, episode.id(), names, version);
            return Saved.to("/episodes/" + episode.id() + "/credits")
                    .saying(names.isEmpty() ? "There is no roll any more." : "The roll is saved with the episode.");
        });
    }
}
