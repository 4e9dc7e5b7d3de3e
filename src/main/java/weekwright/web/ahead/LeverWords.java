package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Levers;
import weekwright.forecast.Forecast;
import weekwright.forecast.LeverAnswer;
import weekwright.forecast.Names;
import weekwright.render.Formats;

/** Levers and what they do, in words. */
final class LeverWords {
    private static final int MINUTES = 60;

    private final Names names;
    private final Formats formats;
    private final LocalDate horizon;

    LeverWords(Names names, Formats formats, LocalDate horizon) {
        this.names = names;
        this.formats = formats;
        this.horizon = horizon;
    }

    /** What is changed, a phrase each: "Ilse 4 hours a week more". */
    List<String> said(Levers levers, Inputs inputs) {
        List<String> all = new ArrayList<>();
        for (Inputs.Crew one : inputs.crew()) {
            int minutes = levers.weekMinutes().getOrDefault(one.id(), 0);
            if (minutes != 0) {
                all.add(names.person(one.id()) + " " + hours(Math.abs(minutes)) + " a week " + more(minutes));
            }
        }
        Levers.Helper helper = levers.helper();
        if (helper.weekMinutes() > 0) {
            all.add("a helper" + (helper.trade().isEmpty() ? "" : " who is a " + helper.trade()) + " for "
                    + hours(helper.weekMinutes()) + " a week"
                    + (helper.from() == Inputs.NONE ? "" : " from " + formats.date(day(helper.from())) + " on"));
        }
        if (levers.supportersPercent() != 0) {
            all.add(hundred(levers.supportersPercent()) + (levers.supportersPercent() > 0 ? " more" : " fewer")
                    + " supporters");
        }
        if (levers.pricesPercent() != 0) {
            all.add("prices " + hundred(levers.pricesPercent()) + (levers.pricesPercent() > 0 ? " higher" : " lower"));
        }
        for (Inputs.Task task : inputs.tasks()) {
            if (levers.dropped().contains(task.id())) {
                all.add("“" + names.task(task.id()) + "” dropped");
            }
            Integer until = levers.postponed().get(task.id());
            if (until != null) {
                all.add("“" + names.task(task.id()) + "” not before " + formats.date(day(until)));
            }
        }
        if (levers.everyWeeks() != 0) {
            all.add(
                    levers.everyWeeks() == 1
                            ? "an episode every week"
                            : "an episode every " + Formats.number(levers.everyWeeks()) + " weeks");
        }
        if (levers.grant().amountMinor() != 0) {
            all.add(formats.money(levers.grant().amountMinor()) + " paid in on "
                    + formats.date(day(levers.grant().day())));
        }
        if (levers.filmPercent() != 100) {
            all.add("films of " + levers.filmPercent() + " in a hundred of their length");
        }
        if (levers.leftEmpty() != 0) {
            all.add(
                    levers.leftEmpty() == 1
                            ? "the next slot left empty"
                            : "the next " + Formats.number(levers.leftEmpty()) + " slots left empty");
        }
        if (levers.onDeposit()) {
            all.add("orders sent as soon as the deposit is there");
        }
        return all;
    }

    private static LocalDate day(int epoch) {
        return LocalDate.ofEpochDay(epoch);
    }

    private static String hours(int minutes) {
        return Formats.counted(minutes / MINUTES, "hour", "hours");
    }

    private static String more(int change) {
        return change > 0 ? "more" : "less";
    }

    private static String hundred(int percent) {
        return Math.abs(percent) + " in a hundred";
    }

    /** The page's sentence, of the first stage whose middle moves. */
    String head(LeverAnswer answer) {
        Optional<LeverAnswer.Stage> moved = answer.stages().stream()
                .filter(stage -> stage.middle().map(days -> days != 0).orElse(true))
                .findFirst();
        if (moved.isEmpty()) {
            boolean slots = Math.abs(answer.empty().then() - answer.empty().now()) >= 0.05;
            return "No stage lands on another day in most futures" + (slots ? ", but the slots change." : ".");
        }
        LeverAnswer.Stage stage = moved.get();
        String name = names.stage(stage.id());
        if (stage.middle().isEmpty()) {
            return name + (stage.sooner() > stage.later() ? " lands at all: " : " no longer lands: ")
                    + landing(stage.landing().then()) + " instead of "
                    + landing(stage.landing().now()) + ".";
        }
        int days = stage.middle().get();
        return name + " lands " + Formats.counted(Math.abs(days), "day", "days") + (days < 0 ? " sooner" : " later")
                + ", " + landing(stage.landing().then()) + ".";
    }

    /** "about 9 December", "after 25 November 2029", "nothing left to do". */
    String landing(Forecast.Days days) {
        return days.p50()
                .map(day -> "about " + formats.far(day))
                .orElse(days.some() ? "after " + formats.date(horizon) : "nothing left to do");
    }

    /** "12 days sooner", "the same", "at last" where one side never lands. */
    static String difference(LeverAnswer.Stage stage) {
        if (stage.middle().isEmpty()) {
            return stage.sooner() > stage.later() ? "lands at all" : "lands no longer";
        }
        int days = stage.middle().get();
        return days == 0 ? "the same" : Formats.count(Math.abs(days), "day") + (days < 0 ? " sooner" : " later");
    }

    /** "sooner in 94 of 100 futures". */
    static String share(LeverAnswer.Stage stage) {
        List<String> parts = new ArrayList<>();
        if (stage.sooner() > 0) {
            parts.add("sooner in " + of(stage.sooner()));
        }
        if (stage.later() > 0) {
            parts.add("later in " + of(stage.later()));
        }
        return parts.isEmpty() ? "in every future" : Formats.list(parts) + " of 100 futures";
    }

    private static String of(double share) {
        long hundredths = Math.round(100 * share);
        return hundredths == 0 ? "less than one" : Long.toString(hundredths);
    }
}
