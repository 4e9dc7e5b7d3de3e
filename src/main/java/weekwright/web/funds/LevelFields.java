package weekwright.web.funds;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Shape;
import weekwright.build.Ids;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SavePledgeLevel;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Remarks;

/** The form of a pledge level, for adding one and for changing one. */
final class LevelFields {
    private static final String[] COLUMNS = {
        "name", "amount", "charged", "fee_percent", "fee_fixed", "declined", "payout_days"
    };

    /** What stands in for columns that cannot be read. */
    private static final PledgeLevel STAND_IN = new PledgeLevel(
            new Id("new"),
            "",
            Money.ZERO,
            PledgeLevel.Charged.MONTH,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    private LevelFields() {}

    /** What the fields are chosen from. */
    record Lists(List<Form.Choice> charged, String currency) {}

    static Lists lists(Request request) {
        return new Lists(
                Choices.words(
                        PledgeLevel.Charged.class,
                        Map.of(
                                PledgeLevel.Charged.MONTH, "on the first of each month",
                                PledgeLevel.Charged.EPISODE, "for each published episode")),
                request.formats().currencyMark());
    }

    /** How often a level is charged, after an amount. */
    static String charged(PledgeLevel level) {
        return level.charged() == PledgeLevel.Charged.MONTH ? "a month" : "an episode";
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        PledgeLevel draft = form.draft(STAND_IN, COLUMNS);
        form.besides(() -> request.read(read -> SavePledgeLevel.check(read, Optional.empty(), draft)));
        return request.save(write -> {
            PledgeLevel level = Shape.of(PledgeLevel.class)
                    .with(draft, "id", Ids.word(draft.name(), PledgeLevelStore.TABLE.ids(write)));
            List<Problem> remarks =
                    SavePledgeLevel.check(write, Optional.empty(), level).remarks();
            SavePledgeLevel.save(write, Optional.empty(), level);
            return Saved.to("/funds/levels")
                    .saying(level.name() + " can be pledged. Now count its supporters." + Remarks.said(remarks));
        });
    }

    static Answer change(Request request, Stored<PledgeLevel> old) throws Exception {
        FormReader form = request.form();
        PledgeLevel draft = form.draft(old.value(), COLUMNS);
        Optional<Shown> shown = Optional.of(new Shown(old.row(), form.version()));
        form.besides(() -> request.read(read -> SavePledgeLevel.check(read, shown, draft)));
        return request.save(write -> {
            List<Problem> remarks = SavePledgeLevel.check(write, shown, draft).remarks();
            SavePledgeLevel.save(write, shown, draft);
            return Saved.to("/funds/levels").saying("Saved: " + draft.name() + "." + Remarks.said(remarks));
        });
    }
}
