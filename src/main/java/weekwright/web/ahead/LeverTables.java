package weekwright.web.ahead;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.build.Said;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.LeverAnswer;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.LeverPicture;

/** What levers do, as tables and as a drawing: each figure as it stands, as tried, and how the two differ. */
final class LeverTables {
    private final LeverAnswer answer;
    private final LeverWords words;
    private final Names names;
    private final LocalDate today;
    private final LocalDate horizon;
    private final Formats formats;

    /** @param horizon the last day that is drawn */
    LeverTables(
            LeverAnswer answer, LeverWords words, Names names, LocalDate today, LocalDate horizon, Formats formats) {
        this.answer = answer;
        this.words = words;
        this.names = names;
        this.today = today;
        this.horizon = horizon;
        this.formats = formats;
    }

    /** @param anew landing with an order of work made for it; empty where that is not known or changes nothing */
    record Stage(
            String id,
            String name,
            String now,
            String then,
            String difference,
            String share,
            String covered,
            String anew) {}

    /** Another figure. */
    record Row(String what, String now, String then, String difference) {}

    List<Stage> stages() {
        return answer.stages().stream()
                .map(stage -> new Stage(
                        stage.id(),
                        names.stage(stage.id()),
                        words.landing(stage.landing().now()),
                        words.landing(stage.landing().then()),
                        LeverWords.difference(stage),
                        LeverWords.share(stage),
                        percents(stage.covered()),
                        stage.reordered().map(words::landing).orElse("")))
                .toList();
    }

    private static String percents(LeverAnswer.Pair<Double> chance) {
        String now = Chances.percent(chance.now());
        String then = Chances.percent(chance.then());
        return now.equals(then) ? now : then + ", now " + now;
    }

    /** The stages as SVG text; empty without any. */
    String drawings() {
        return answer.stages().isEmpty()
                ? ""
                : new LeverPicture(
                                answer.stages().stream()
                                        .map(stage -> new LeverPicture.Row(
                                                names.stage(stage.id()),
                                                range(stage.landing().now()),
                                                range(stage.landing().then()),
                                                "/build/stages/" + stage.id()))
                                        .toList(),
                                today,
                                formats)
                        .drawings();
    }

    private static AheadPicture.Range range(Forecast.Days days) {
        return new AheadPicture.Range(days.p10(), days.p50(), days.p90());
    }

    /** Slots and money. */
    List<Row> rows() {
        double more = answer.empty().then() - answer.empty().now();
        double under = answer.underReserve().then() - answer.underReserve().now();
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                "Slots of the next twelve that stay empty, in the mean",
                one(answer.empty().now()),
                one(answer.empty().then()),
                Math.abs(more) < 0.05 ? "the same" : one(Math.abs(more)) + (more > 0 ? " more" : " fewer")));
        rows.add(days("The cash holds until, in four of five futures", answer.runway(), "under zero today"));
        rows.add(days("If pledges stopped today, until", answer.withoutPledges(), "under the reserve today"));
        rows.add(new Row(
                "Chance of a day under the reserve, orders going out on their day",
                Chances.percent(answer.underReserve().now()),
                Chances.percent(answer.underReserve().then()),
                Math.abs(under) < 0.005 ? "the same" : under > 0 ? "more likely" : "less likely"));
        rows.add(new Row(
                "Paid out by the end of " + Said.month(YearMonth.from(today).plusMonths(12)) + ", in the mean",
                formats.moneyForecast(answer.paidOut().now()),
                formats.moneyForecast(answer.paidOut().then()),
                apart(answer.paidOut().then() - answer.paidOut().now())));
        return rows;
    }

    private static String one(double mean) {
        return String.format(Locale.ROOT, "%.1f", mean);
    }

    /** @param gone what is said where the last day is over already */
    private Row days(String what, LeverAnswer.Pair<Optional<LocalDate>> pair, String gone) {
        long apart = pair.then().orElse(horizon).toEpochDay()
                - pair.now().orElse(horizon).toEpochDay();
        return new Row(
                what,
                day(pair.now(), gone),
                day(pair.then(), gone),
                apart == 0 ? "the same" : Formats.count(Math.abs(apart), "day") + (apart > 0 ? " longer" : " less"));
    }

    private String day(Optional<LocalDate> day, String gone) {
        return day.map(last -> last.isBefore(today) ? gone : formats.date(last))
                .orElse("past " + formats.date(horizon));
    }

    private String apart(long moreMinor) {
        String apart = formats.moneyForecast(Math.abs(moreMinor));
        return apart.equals(formats.moneyForecast(0)) ? "the same" : apart + (moreMinor > 0 ? " more" : " less");
    }

    /** From how many futures. */
    String drawn() {
        return Formats.grouped(answer.futures()) + " futures of each, in pairs with the same luck (seed "
                + Forecasts.SEED + ").";
    }
}
