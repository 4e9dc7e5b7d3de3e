package weekwright.web.week;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Quantity;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.episodes.CallOffShot;
import weekwright.episodes.CaptureShot;
import weekwright.episodes.FinishFilmed;
import weekwright.episodes.Shot;
import weekwright.render.Form;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Ticks one shot off, at the camera: the clip, the minutes, what was noted of the takes. Helpers do it too. */
public final class WeekShotPage implements Page {
    /** @param words its size, task and episode */
    public record View(Form form, long row, Shot shot, String words, boolean once, boolean crew, LocalDate today) {}

    @Override
    public View show(Request request) {
        Stored<Shot> stored = WeekShotEditPage.shot(request);
        Shot shot = stored.value();
        Map<String, String> first = new HashMap<>(Map.of(
                "day", shot.captured().orElse(request.today()).toString(), "clip", shot.clip(), "takes", shot.takes()));
        shot.minutes().ifPresent(minutes -> first.put("minutes", minutes.text()));
        Form form = request.form("", first);
        return request.read(read -> new View(
                new Form(form.csrf(), form.answerKey(), Optional.of(stored.version()), form.values(), form.errors()),
                stored.row(),
                shot,
                ShotFields.words(read, shot, true),
                FinishFilmed.isOnce(read, shot),
                request.access() == Access.CREW,
                request.today()));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Shot> stored = WeekShotEditPage.shot(request);
        String what = stored.value().what();
        Shown shown = new Shown(stored.row(), form.version());
        switch (form.act()) {
            case "off" -> {
                form.ignoringFields();
                return request.save(write -> {
                    CallOffShot.callOff(write, shown);
                    return Saved.to("/week/shots").saying("Not filmed, called off for safety: " + what + ".");
                });
            }
            case "uncapture" -> {
                form.ignoringFields();
                return request.save(write -> {
                    CaptureShot.takeBack(write, shown);
                    return Saved.to("/week/shots/" + stored.row()).saying("Still to be captured: " + what + ".");
                });
            }
            default -> {
                Optional<LocalDate> day = form.needed("day", LocalDate.class);
                Optional<Quantity> minutes = form.read("minutes", Quantity.class);
                CaptureShot.Took took = new CaptureShot.Took(form.text("clip"), minutes, form.text("takes"));
                return request.save(write -> {
                    CaptureShot.capture(write, shown, day.orElseThrow(), took, request.today());
                    return Saved.to("/week/shots").saying("Captured: " + what + ".");
                });
            }
        }
    }
}
