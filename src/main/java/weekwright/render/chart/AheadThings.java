package weekwright.render.chart;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Purchase;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Slot;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.AheadPicture.Thread;

/** What each thing on the picture says when it is touched: one sentence or two. */
final class AheadThings {
    private final Formats formats;

    AheadThings(Formats formats) {
        this.formats = formats;
    }

    String stage(Stage stage, Optional<Range> before) {
        if (stage.done().isPresent()) {
            return stage.name() + ": done " + formats.dateLong(stage.done().get()) + ".";
        }
        Optional<Range> landing = stage.landing();
        Optional<LocalDate> even = landing.flatMap(Range::p50);
        if (even.isEmpty()) {
            return stage.name()
                    + (landing.isPresent() ? ": later than the forecast reaches." : ": nothing to do is known of it.");
        }
        StringBuilder said = new StringBuilder(
                stage.name() + " is done about " + formats.dateLong(even.get()) + (range(landing.get())) + ".");
        before.flatMap(Range::p50)
                .ifPresent(then -> said.append(" Before: ")
                        .append(formats.dateLong(then))
                        .append(before.map(this::range).orElse(""))
                        .append('.'));
        return said.toString();
    }

    private String range(Range range) {
        return range.p10().isPresent() && range.p90().isPresent()
                ? ", four chances in five from "
                        + formats.dateLong(range.p10().get()) + " to "
                        + formats.dateLong(range.p90().get())
                : "";
    }

    /** An episode, then the threads that lead to it. */
    String slot(Slot slot, Model model) {
        StringBuilder said = new StringBuilder(slot(slot));
        for (Thread work : model.work(slot)) {
            said.append(" It tells work on ")
                    .append(model.stage(work))
                    .append(", done about ")
                    .append(formats.dateLong(work.from().orElseThrow()))
                    .append('.');
        }
        for (Purchase purchase : model.bought(slot)) {
            said.append(" To be bought for it: ").append(purchase.name()).append('.');
        }
        return said.toString();
    }

    private String slot(Slot slot) {
        String day = formats.date(slot.day());
        return switch (slot.safety()) {
            case OPEN -> day + ": nothing is planned.";
            case BANK -> day + ": nothing is planned; the story bank can fill it.";
            case OUT -> day + ": " + named(slot) + " is out.";
            default ->
                day + ": " + named(slot) + ", " + slot.safety().word() + ", "
                        + (slot.filled() <= 0
                                ? "nothing of it is shot"
                                : slot.filled() >= 1
                                        ? "all of it shot"
                                        : Chances.percent(slot.filled()) + " of it shot")
                        + ".";
        };
    }

    private static String named(Slot slot) {
        return (slot.number().isEmpty() ? "" : "no." + Formats.NBSP + slot.number() + ", ") + slot.title();
    }

    String purchase(Purchase purchase) {
        return purchase.name() + ": " + formats.moneyForecast(purchase.amount()) + ", to be ordered by "
                + formats.dateLong(purchase.orderBy()) + "; "
                + (purchase.shortBy() > 0
                        ? formats.moneyForecast(purchase.shortBy()) + " short on that day."
                        : "covered.");
    }

    static boolean planned(Slot slot) {
        return slot.safety() != Safety.OUT && slot.safety() != Safety.OPEN;
    }
}
