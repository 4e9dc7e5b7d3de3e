package weekwright.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.forecast.Forecast;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.HeldWords;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.parts.HeldBy;

/** A forecast in sentences, remarks first. Plain spaces, lines of any length, words of rule 115 for chances. */
final class ForecastText {
    /** Slots and orders beyond so many are counted, not listed. */
    private static final int MOST = 12;
    /** Held-for-funds and work-first landings that differ by so many days are both said. */
    private static final int WORTH_SAYING_DAYS = 7;

    private final Forecast forecast;
    private final Names names;
    private final List<Problem> remarks;
    private final Formats formats;
    private final Sheet sheet = new Sheet();

    ForecastText(ForecastRun.Made made, List<Problem> remarks) {
        this.forecast = made.forecast();
        this.names = made.basis().names();
        this.remarks = remarks;
        this.formats = new Formats(made.basis().currency(), forecast.asOf());
    }

    String text() {
        if (!remarks.isEmpty()) {
            sheet.head("Remarks");
            remarks.forEach(remark -> sheet.line(remark.text()));
        }
        sheet.head(names.project() + ", " + Formats.weekday(forecast.asOf()) + " "
                + Formats.dayMonthLong(forecast.asOf()) + " " + forecast.asOf().getYear());
        sheet.line(Formats.grouped(forecast.trials()) + (forecast.trials() == 1 ? " future" : " futures")
                + " drawn, seed " + forecast.seed() + ", up to " + formats.dateLong(forecast.horizon()) + ".");
        sheet.line(effort());
        stages();
        episodes();
        orders();
        cash();
        return sheet.text();
    }

    private String effort() {
        Forecast.EffortRatio ratio = forecast.effortRatio();
        String learned = ratio.finishedTasks() == 0
                ? "nothing is finished that it could be learned from"
                : "learned from " + Formats.count(ratio.finishedTasks(), "finished task");
        return "Work takes " + times(ratio.p50()) + " times its estimate (" + times(ratio.p10()) + " to "
                + times(ratio.p90()) + "), " + learned + ".";
    }

    private static String times(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }

    private void stages() {
        sheet.head("Stages");
        if (forecast.stages().isEmpty()) {
            sheet.line("No stages yet. Give a stage tasks with hours, and a landing date appears.");
        }
        for (Forecast.Stage stage : forecast.stages()) {
            sheet.line(landing(stage));
            heldBy(stage).ifPresent(sheet::under);
            other(stage).ifPresent(sheet::under);
            if (stage.rough().tasks() > 0) {
                sheet.under("Rough: " + Formats.count(stage.rough().tasks(), "task") + " without hours, guessed at "
                        + Formats.hoursForecast(stage.rough().hours().minutes()) + " hours.");
            }
            materials(stage).ifPresent(sheet::under);
        }
    }

    private String landing(Forecast.Stage stage) {
        Forecast.Days days = stage.landing();
        if (!days.some()) {
            return stage.name() + " has nothing left to do.";
        }
        if (days.p10().isPresent()
                && !days.p10().get().isAfter(forecast.asOf())
                && days.p10().equals(days.p90())) {
            return stage.name() + " was done on " + formats.dateLong(days.p10().get()) + ".";
        }
        String after = "after " + formats.dateLong(forecast.horizon());
        if (days.p10().isEmpty()) {
            return stage.name() + " is done " + after + ".";
        }
        if (days.p50().isEmpty()) {
            return stage.name() + " is done on " + formats.dateLong(days.p10().get()) + " at the earliest, more likely "
                    + after + ".";
        }
        LocalDate middle = days.p50().get();
        if (days.p90().isEmpty()) {
            return stage.name() + " is done about " + formats.dateLong(middle) + ": from "
                    + formats.dateLong(days.p10().get()) + " on, " + Chances.words(days.beyond()) + " " + after + ".";
        }
        return stage.name() + " is done about " + formats.dateLong(middle) + ": "
                + formats.landingRange(days.p10().get(), middle, days.p90().get()) + ".";
    }

    private Optional<String> heldBy(Forecast.Stage stage) {
        if (stage.heldBy().isEmpty()) {
            return Optional.empty();
        }
        Forecast.HeldBy first = stage.heldBy().get(0);
        List<String> others = new ArrayList<>();
        for (Forecast.HeldBy held : stage.heldBy().subList(1, stage.heldBy().size())) {
            if (others.size() < 2 && held.share() >= 0.1) {
                others.add(HeldWords.of(held, names));
            }
        }
        return Optional.of(HeldBy.sentence(first, others, names));
    }

    /** Both answers are said where they lie a week or more apart. */
    private Optional<String> other(Forecast.Stage stage) {
        Optional<LocalDate> held = stage.landing().p50();
        Optional<LocalDate> first = stage.workFirst().p50();
        boolean apart = held.isPresent() && first.isPresent()
                ? held.get().toEpochDay() - first.get().toEpochDay() >= WORTH_SAYING_DAYS
                : held.isEmpty() && first.isPresent();
        return apart ? Optional.of(HeldWords.enoughMoney(formats.dateLong(first.get()))) : Optional.empty();
    }

    private Optional<String> materials(Forecast.Stage stage) {
        Forecast.Materials materials = stage.materials();
        if (materials.need().minor() == 0) {
            return Optional.empty();
        }
        return Optional.of("Materials still to pay: about "
                + formats.moneyForecast(materials.need().minor()) + "; " + Chances.words(materials.covered())
                + " that the reserve stays whole.");
    }

    private void episodes() {
        sheet.head("Episodes");
        int listed = 0;
        for (Forecast.Episode episode : forecast.episodes()) {
            if (episode.slot().isPresent() && listed < MOST) {
                sheet.line(episode(episode));
                listed++;
            }
        }
        long more = forecast.episodes().stream()
                        .filter(episode -> episode.slot().isPresent())
                        .count()
                - listed;
        if (more > 0) {
            sheet.line("And " + Formats.number(more) + " more.");
        }
        if (listed == 0) {
            sheet.line("No episodes are planned.");
        }
        Forecast.Slots slots = forecast.slots();
        sheet.line(
                Formats.sentence(Chances.words(slots.noneEmpty12())) + " that none of the next twelve slots stays empty"
                        + (slots.expectedEmpty12() < 0.05
                                ? "."
                                : "; on average " + decimals(slots.expectedEmpty12()) + " of them do."));
        sheet.line("In hand, if nothing more were filmed: " + Formats.counted(forecast.weeksInHand(), "slot", "slots")
                + " in a row.");
    }

    private static String decimals(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    private String episode(Forecast.Episode episode) {
        double chance = episode.onTime().orElse(0.0);
        StringBuilder line =
                new StringBuilder(Formats.sentence(formats.date(episode.slot().get())));
        line.append(", ").append(names.episode(episode.id())).append(": ").append(Chances.safety(chance));
        line.append(", ").append(Chances.words(chance));
        if (Chances.safety(chance).equals("safe")) {
            return line.append(".").toString();
        }
        episode.lateBy().ifPresent(task -> line.append("; it waits for ").append(names.task(task)));
        line.append(episode.safeFrom()
                .map(day -> "; safe from " + formats.dateLong(day) + ".")
                .orElse("; no slot is safe yet."));
        return line.toString();
    }

    private void orders() {
        sheet.head("Orders");
        if (forecast.orders().isEmpty()) {
            sheet.line("Nothing is left to order.");
        }
        int listed = 0;
        for (Forecast.Order order : forecast.orders()) {
            if (listed == MOST) {
                sheet.line("And " + Formats.number(forecast.orders().size() - MOST) + " more.");
                break;
            }
            sheet.line(order(order));
            listed++;
        }
    }

    private String order(Forecast.Order order) {
        String item = Formats.sentence(names.material(order.material()));
        String amount = order.amount().minor() == 0
                ? "no cost"
                : "about " + formats.moneyForecast(order.amount().minor());
        if (order.orderBy().isEmpty()) {
            return item + ": not needed before " + formats.dateLong(forecast.horizon()) + ", " + amount + ".";
        }
        String by = order.orderBy().get().isBefore(forecast.asOf())
                ? ": should have gone out by "
                        + formats.dateLong(order.orderBy().get())
                : ": order by " + formats.date(order.orderBy().get());
        long half = order.shortBy().p50().minor();
        return item + by + ", needed by " + formats.dateLong(order.needBy().get()) + ", " + amount
                + (half > 0 ? ", short " + formats.moneyForecast(half) : "") + ".";
    }

    private void cash() {
        Forecast.Cash cash = forecast.cash();
        sheet.head("Money");
        sheet.line(formats.money(cash.now().minor()) + " now.");
        sheet.line("As things go it lasts " + until(cash.runway())
                + "; if pledges stopped today and nothing more were ordered, " + until(cash.runwayWithoutPledges())
                + " (four in five).");
        cash.underReserve().stream()
                .filter(month -> month.chance() >= 0.1)
                .findFirst()
                .ifPresent(month -> sheet.line("Under the reserve in "
                        + Formats.monthYear(month.month().atDay(1)) + ", if orders go out whatever the balance: "
                        + Chances.words(month.chance()) + "."));
        sheet.line("Pledges are usually taxable income; ask somebody qualified where you live.");
    }

    private String until(Optional<LocalDate> day) {
        return day.map(last -> last.isBefore(forecast.asOf()) ? "not even today" : "until " + formats.dateLong(last))
                .orElse("until after " + formats.dateLong(forecast.horizon()));
    }
}
