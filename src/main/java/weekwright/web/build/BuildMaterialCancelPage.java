package weekwright.web.build;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.CancelMaterial;
import weekwright.funds.Material;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Calls an order off, and says first what is lost by it. */
public final class BuildMaterialCancelPage implements Page {
    /**
     * @param open whether there is an order to call off
     * @param said until when it can be, and what was paid
     */
    public record View(
            String id,
            String item,
            boolean open,
            String said,
            boolean paid,
            LocalDate today,
            String currency,
            Form form) {}

    @Override
    public View show(Request request) {
        Stored<Material> stored = BuildMaterialPage.line(request);
        Material line = stored.value();
        Formats formats = request.formats();
        Money paid = request.read(read -> CancelMaterial.paid(read, line));
        Form form = request.form("cancel", Map.of("cancelled", request.today().toString()));
        return new View(
                line.id().value(),
                line.item(),
                line.ordered().isPresent() && line.received().isEmpty(),
                until(line, formats) + " " + lost(paid, formats),
                paid.minor() > 0,
                request.today(),
                formats.currencyMark(),
                new Form(form.csrf(), form.answerKey(), Optional.of(stored.version()), form.values(), form.errors()));
    }

    private static String until(Material line, Formats formats) {
        return line.cancelBy()
                .map(day -> day.isBefore(formats.today())
                        ? "The last day to call it off was " + formats.dateLong(day)
                                + "; ask the supplier what holds now."
                        : "It can be called off until " + formats.date(day) + formats.comingOrGone(day) + ".")
                .orElse("No last day to call it off was agreed; ask the supplier.");
    }

    private static String lost(Money paid, Formats formats) {
        return paid.minor() > 0
                ? formats.moneyExact(paid.minor()) + " is paid and lost, as far as nothing comes back."
                : "Nothing is paid for it, so nothing is lost.";
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Material line = BuildMaterialPage.line(request).value();
        Shown shown = new Shown(BuildMaterialPage.line(request).row(), form.version());
        Formats formats = request.formats();
        Optional<LocalDate> day = form.needed("cancelled", LocalDate.class);
        Optional<Money> back = form.read("back", Money.class);
        return request.save(write -> {
            CancelMaterial.Cancelled done =
                    CancelMaterial.cancel(write, shown, day.orElseThrow(), back, request.today());
            String returned = back.map(money -> " " + formats.moneyExact(money.minor()) + " back is in the books.")
                    .orElse("");
            String lost = done.lost().minor() > 0
                    ? " " + formats.moneyExact(done.lost().minor()) + " is lost."
                    : "";
            return Saved.to("/build/materials/" + line.id()).saying("The order is called off." + returned + lost);
        });
    }
}
