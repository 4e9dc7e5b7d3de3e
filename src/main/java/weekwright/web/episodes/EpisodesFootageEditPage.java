package weekwright.web.episodes;

import java.util.List;
import java.util.Optional;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.episodes.Clip;
import weekwright.episodes.ClipStore;
import weekwright.episodes.LogClips;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** Corrects a clip of the footage log, or takes it out. */
public final class EpisodesFootageEditPage implements Page {
    private static final String[] COLUMNS = {
        "date", "time", "card", "clip", "task", "minutes", "size", "who", "rating", "remarks"
    };

    public record View(Form form, Form remove, String clip, List<Form.Choice> tasks, List<Form.Choice> people) {}

    @Override
    public View show(Request request) {
        Stored<Clip> clip = clip(request);
        return request.read(read -> new View(
                request.form("", clip),
                request.form("remove", clip),
                clip.value().clip(),
                Choices.tasks(read, task -> true),
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList()));
    }

    private static Stored<Clip> clip(Request request) {
        return request.read(read -> ClipStore.TABLE.find(read, request.row("row")))
                .orElseThrow(() -> new NotFound("This clip is not in the log any more."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Clip> clip = clip(request);
        Shown shown = new Shown(clip.row(), form.version());
        if (form.act().equals("remove")) {
            return request.save(write -> {
                LogClips.remove(write, shown);
                return Saved.to("/episodes/footage")
                        .saying("Clip " + clip.value().clip() + " is out of the log.");
            });
        }
        Optional<Clip> edited = form.edited(clip.value(), COLUMNS);
        return request.save(write -> {
            LogClips.change(write, shown, edited.orElseThrow(), request.today());
            return Saved.to("/episodes/footage").saying("Clip " + edited.get().clip() + " is saved.");
        });
    }
}
