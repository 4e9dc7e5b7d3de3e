package weekwright.web.episodes;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.SaveShot;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Remarks;

/** The form of a wanted picture, for adding one and for changing one. */
final class ShotFields {
    private static final String[] COLUMNS = {"task", "what", "size", "must", "once"};

    private ShotFields() {}

    /** What the fields are chosen from. */
    record Lists(List<Form.Choice> tasks, List<Form.Choice> sizes) {}

    static Lists lists(Read read) {
        return new Lists(
                Choices.tasks(read, task -> task.dropped().isEmpty()), Choices.words(Shot.Size.class, Map.of()));
    }

    static Answer add(Request request, Episode episode) throws Exception {
        FormReader form = request.form();
        Optional<Shot> read = form.record(
                Shot.class, Map.of("id", "new", "episode", episode.id().value()), COLUMNS);
        return request.save(write -> {
            Shot shot = Shape.of(Shot.class)
                    .with(read.orElseThrow(), "id", ReferenceStore.unusedId(write, ShotStore.TABLE.name(), "shot"));
            SaveShot.Saved kept = SaveShot.save(write, Optional.empty(), shot);
            return Saved.to("/episodes/" + episode.id())
                    .saying("Wanted: " + shot.what() + "." + Remarks.said(kept.remarks()));
        });
    }

    static Answer change(Request request, Episode episode, Stored<Shot> old) throws Exception {
        FormReader form = request.form();
        Optional<Shot> edited = form.edited(old.value(), COLUMNS);
        return request.save(write -> {
            SaveShot.Saved kept =
                    SaveShot.save(write, Optional.of(new Shown(old.row(), form.version())), edited.orElseThrow());
            return Saved.to("/episodes/" + episode.id()).saying("The shot is changed." + Remarks.said(kept.remarks()));
        });
    }
}
