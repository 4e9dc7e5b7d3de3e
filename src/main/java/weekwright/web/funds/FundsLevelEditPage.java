package weekwright.web.funds;

import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RemovePledgeLevel;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a pledge level, or removes one that nobody ever chose. */
public final class FundsLevelEditPage implements Page {
    public record View(Form form, Form remove, LevelFields.Lists lists, String name) {}

    @Override
    public View show(Request request) {
        Stored<PledgeLevel> level = level(request);
        return new View(
                request.form("", level),
                request.form("remove", level),
                LevelFields.lists(request),
                level.value().name());
    }

    private static Stored<PledgeLevel> level(Request request) {
        return request.read(read -> PledgeLevelStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no pledge level " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<PledgeLevel> level = level(request);
        if (!form.act().equals("remove")) {
            return LevelFields.change(request, level);
        }
        return request.save(write -> {
            RemovePledgeLevel.remove(write, new Shown(level.row(), form.version()), level.value());
            return Saved.to("/funds/levels").saying(level.value().name() + " is removed.");
        });
    }
}
