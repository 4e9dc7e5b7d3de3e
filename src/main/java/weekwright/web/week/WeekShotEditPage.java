package weekwright.web.week;

import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.episodes.RemoveShot;
import weekwright.episodes.SaveShot;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Remarks;

/** Changes a wanted picture, or takes it off the list. */
public final class WeekShotEditPage implements Page {
    public record View(Form form, Form remove, ShotFields.Lists lists, long row, String what) {}

    @Override
    public View show(Request request) {
        Stored<Shot> shot = shot(request);
        return request.read(read -> new View(
                request.form("", shot),
                request.form("remove", shot),
                ShotFields.lists(read, shot.value().episode().map(Id::value).orElse("")),
                shot.row(),
                shot.value().what()));
    }

    static Stored<Shot> shot(Request request) {
        return request.read(read -> ShotStore.TABLE.find(read, request.row("row")))
                .orElseThrow(ShotFields::gone);
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Shot> shot = shot(request);
        Shown shown = new Shown(shot.row(), form.version());
        if (form.act().equals("remove")) {
            return request.save(write -> {
                RemoveShot.remove(write, shown);
                return Saved.to(ShotFields.home(shot.value()))
                        .saying("Off the list: " + shot.value().what() + ".");
            });
        }
        Shot edited = ShotFields.typed(request, shot.value());
        return request.save(write -> {
            SaveShot.Saved kept = SaveShot.save(write, Optional.of(shown), edited);
            return Saved.to(ShotFields.home(edited)).saying("The shot is saved." + Remarks.said(kept.remarks()));
        });
    }
}
