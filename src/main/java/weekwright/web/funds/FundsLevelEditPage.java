package weekwright.web.funds;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.LearnedFee;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RemovePledgeLevel;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a pledge level, beside what past pay-outs say of its fee, or removes one that nobody ever chose. */
public final class FundsLevelEditPage implements Page {
    public record View(Form form, Form remove, LevelFields.Lists lists, String name, Learned learned) {}

    /**
     * What past pay-outs say of the fee.
     *
     * @param said sentences; empty where no pay-out says it
     * @param take the percent to fill in; empty where it stands in the form already, or cannot be a fee
     */
    public record Learned(String said, String take) {}

    @Override
    public View show(Request request) {
        Stored<PledgeLevel> level = level(request);
        Form form = request.form("", level);
        return new View(
                form,
                request.form("remove", level),
                LevelFields.lists(request),
                level.value().name(),
                learnedFee(request, level.value())
                        .map(fee -> learned(fee, level.value(), form.value("fee_percent"), request))
                        .orElse(new Learned("", "")));
    }

    private static Optional<LearnedFee> learnedFee(Request request, PledgeLevel level) {
        return LearnedFee.of(level, request.read(LedgerEntryStore.TABLE::values), request.today());
    }

    private static Learned learned(LearnedFee fee, PledgeLevel level, String stands, Request request) {
        Formats formats = request.formats();
        String paid = fee.payouts() == 1
                ? "The pay-out of " + formats.dateLong(fee.first())
                : "The " + Formats.count(fee.payouts(), "pay-out") + " from " + formats.dateLong(fee.first()) + " to "
                        + formats.dateLong(fee.last());
        String kept = paid + " kept " + formats.moneyExact(fee.kept().minor()) + " of "
                + formats.moneyExact(fee.gross().minor()) + ", on about " + Formats.count(fee.charges(), "charge")
                + " of " + formats.moneyExact(level.amount().minor()) + ". ";
        String beside = level.feeFixed()
                .filter(fixed -> fixed.minor() > 0)
                .map(fixed -> formats.moneyExact(fixed.minor()))
                .orElse("");
        if (!fee.fits()) {
            return new Learned(
                    kept
                            + (beside.isEmpty()
                                    ? "That is no share of them: look at these pay-outs again."
                                    : "The fixed fee of " + beside
                                            + " each comes to another sum: look at it, at the amount and at these"
                                            + " pay-outs again."),
                    "");
        }
        boolean same = stands.equals(fee.text());
        return new Learned(
                kept + (beside.isEmpty() ? "That is " : "Beside the fixed " + beside + " each that is ") + fee.text()
                        + " %" + (same ? ", as the fee above says." : " of the amount."),
                same ? "" : fee.text());
    }

    private static Stored<PledgeLevel> level(Request request) {
        return request.read(read -> PledgeLevelStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no pledge level " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<PledgeLevel> level = level(request);
        if (form.act().equals("take")) {
            form.ignoringFields();
            return learnedFee(request, level.value())
                    .filter(LearnedFee::fits)
                    .map(fee -> new Answer.Again(
                            Map.of("fee_percent", List.of(fee.text())),
                            "The fee of " + fee.text() + " % stands in the form now; nothing is saved yet."))
                    .orElse(new Answer.Again(Map.of(), ""));
        }
        if (!form.act().equals("remove")) {
            return LevelFields.change(request, level);
        }
        return request.save(write -> {
            RemovePledgeLevel.remove(write, new Shown(level.row(), form.version()), level.value());
            return Saved.to("/funds/levels").saying(level.value().name() + " is removed.");
        });
    }
}
