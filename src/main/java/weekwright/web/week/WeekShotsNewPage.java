package weekwright.web.week;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.episodes.SaveShot;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Remarks;

/** Adds a picture that is wanted of a task, for an episode, or both. */
public final class WeekShotsNewPage implements Page {
    public record View(Form form, ShotFields.Lists lists) {}

    @Override
    public View show(Request request) {
        Map<String, String> first =
                Map.of("task", ShotFields.query(request, "task"), "episode", ShotFields.query(request, "episode"));
        return request.read(read -> new View(request.form("", first), ShotFields.lists(read, first.get("episode"))));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Shot draft = ShotFields.typed(request);
        return request.save(write -> {
            Shot shot = Shape.of(Shot.class)
                    .with(draft, "id", ReferenceStore.unusedId(write, ShotStore.TABLE.name(), "shot"));
            SaveShot.Saved kept = SaveShot.save(write, Optional.empty(), shot);
            return Saved.to(ShotFields.home(shot))
                    .saying("Wanted: " + shot.what() + "." + Remarks.said(kept.remarks()));
        });
    }
}
