package weekwright.web.episodes;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds an episode; one like another when its id follows the address as {@code ?like=}. */
public final class EpisodesNewPage implements Page {
    /** @param like the episode whose fields and shots are taken over; empty for none */
    public record View(Form form, EpisodeFields.Lists lists, String like, String likeTitle) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            Optional<Episode> like = Id.isOne(request.query("like"))
                    ? EpisodeStore.TABLE
                            .find(read, new Id(request.query("like")))
                            .map(Stored::value)
                    : Optional.empty();
            Map<String, String> texts =
                    new LinkedHashMap<>(EpisodeFields.proposed(read, request.settings(), request.today(), like));
            SlotDays.parse(request, request.query("slot")).ifPresent(slot -> texts.put("slot", slot.toString()));
            Form form = request.form("", texts);
            return new View(
                    form,
                    EpisodeFields.lists(request, read, form),
                    like.map(one -> one.id().value()).orElse(form.value("like")),
                    like.map(Episode::title).orElse(""));
        });
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return EpisodeFields.add(request);
    }
}
