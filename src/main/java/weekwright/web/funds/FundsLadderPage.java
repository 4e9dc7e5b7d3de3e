package weekwright.web.funds;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Settings;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Table;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/**
 * Stage by stage: what each costs, by when its orders go out, how likely the money carries them, what waiting for it costs; then
 * how long the money lasts. All of it is looked up in the last forecast.
 */
public final class FundsLadderPage implements Page {
    private static final double FOUR_IN_FIVE = 0.8;
    private static final int MOST_MONTHS = 12;

    /**
     * @param drawn which futures it was counted in; empty without a forecast
     * @param lasts how long the money lasts, both ways
     */
    public record View(
            boolean forecast,
            String head,
            String lead,
            List<Line> lines,
            List<Joint> joint,
            Optional<FundsFan> money,
            List<String> lasts,
            String reserve,
            String drawn) {}

    /** A coming stage, in words. */
    public record Line(
            String id,
            String name,
            String need,
            String needBy,
            String orderBy,
            String covered,
            String middle,
            String bad,
            String from,
            String waits) {}

    /** A stage's chances by month's end. */
    public record Joint(String said, Table table) {}

    @Override
    public View show(Request request) {
        Settings settings = request.settings();
        Formats formats = request.formats();
        Optional<Forecasts.Shown> shown = Outlook.shown(request);
        String reserve = formats.money(settings.reserve().minor());
        if (shown.isEmpty()) {
            return new View(
                    false,
                    "Stage by stage",
                    FundsLadder.NOT_SAID,
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    reserve,
                    "");
        }
        Forecast forecast = shown.get().forecast();
        List<LedgerEntry> ledger = request.read(LedgerEntryStore.TABLE::values);
        List<Forecast.Stage> coming = forecast.stages().stream()
                .filter(stage -> isComing(stage, forecast.asOf()))
                .toList();
        return new View(
                true,
                head(coming),
                lead(coming, formats),
                coming.stream().map(stage -> line(stage, formats)).toList(),
                coming.stream()
                        .filter(stage -> !stage.joint().isEmpty())
                        .map(stage -> joint(stage, formats))
                        .toList(),
                Optional.of(FundsFan.of(shown.get(), settings, ledger, formats)),
                lasts(forecast, formats),
                reserve,
                Outlook.drawn(forecast, formats));
    }

    private static boolean isComing(Forecast.Stage stage, LocalDate today) {
        return stage.landing().some()
                && stage.landing().p90().map(day -> day.isAfter(today)).orElse(true);
    }

    private static String head(List<Forecast.Stage> coming) {
        Optional<Forecast.Stage> worst = coming.stream()
                .filter(stage -> stage.materials().need().minor() > 0
                        && stage.materials().covered() < FOUR_IN_FIVE)
                .findFirst();
        if (worst.isPresent()) {
            return Formats.sentence(worst.get().name()) + " has its money in time: "
                    + Chances.words(worst.get().materials().covered());
        }
        return coming.stream().anyMatch(stage -> stage.materials().need().minor() > 0)
                ? "Every coming stage has its money in time, four chances in five or better"
                : "Nothing is left to be bought";
    }

    private static String lead(List<Forecast.Stage> coming, Formats formats) {
        long need = coming.stream()
                .mapToLong(stage -> stage.materials().need().minor())
                .sum();
        return need == 0
                ? ""
                : "What is listed for " + Formats.count(coming.size(), "coming stage") + " still costs "
                        + formats.moneyForecast(need) + " in the mean.";
    }

    private static Line line(Forecast.Stage stage, Formats formats) {
        Forecast.Materials materials = stage.materials();
        boolean need = materials.need().minor() > 0;
        return new Line(
                stage.id(),
                stage.name(),
                need ? formats.moneyForecast(materials.need().minor()) : "nothing",
                materials.needBy().map(formats::far).orElse(""),
                materials.orderBy().map(formats::far).orElse(""),
                need ? Chances.percent(materials.covered()) : "",
                need ? missing(materials.shortfall().p50().minor(), formats) : "",
                need ? missing(materials.shortfall().p90().minor(), formats) : "",
                need ? materials.coveredFrom().map(formats::far).orElse("not as far as is drawn") : "",
                waits(stage));
    }

    private static String missing(long minor, Formats formats) {
        return minor == 0 ? "nothing" : formats.moneyForecast(minor);
    }

    /** By how much the middle landing is later where orders wait for funds. */
    static String waits(Forecast.Stage stage) {
        Optional<LocalDate> held = stage.landing().p50();
        Optional<LocalDate> first = stage.workFirst().p50();
        if (first.isEmpty()) {
            return "too far to say";
        }
        if (held.isEmpty()) {
            return "more than is drawn";
        }
        long days = ChronoUnit.DAYS.between(first.get(), held.get());
        if (days <= 0) {
            return "nothing";
        }
        long weeks = Math.round(days / 7.0);
        return weeks == 0 ? "under a week" : Formats.count(weeks, "week");
    }

    private static Joint joint(Forecast.Stage stage, Formats formats) {
        List<Forecast.Joint> months = stage.joint();
        Forecast.Joint told = months.stream()
                .filter(one -> one.held().landed() >= 0.5)
                .findFirst()
                .orElse(months.get(months.size() - 1));
        List<List<String>> rows = new ArrayList<>();
        int step = (months.size() + MOST_MONTHS - 1) / MOST_MONTHS;
        for (int i = (months.size() - 1) % step; i < months.size(); i += step) {
            Forecast.Joint one = months.get(i);
            rows.add(List.of(
                    Formats.monthYear(one.by()),
                    Chances.percent(one.held().landed()),
                    Chances.percent(one.held().kept()),
                    Chances.percent(one.held().both()),
                    Chances.percent(one.workFirst().landed()),
                    Chances.percent(one.workFirst().kept()),
                    Chances.percent(one.workFirst().both())));
        }
        return new Joint(
                Formats.sentence(stage.name()) + " done by the end of " + Formats.monthYear(told.by())
                        + " with the reserve never touched: "
                        + Chances.words(told.held().both()) + " if orders wait for the money, "
                        + Chances.words(told.workFirst().both()) + " if they go out on their day.",
                new Table(
                        Formats.sentence(stage.name()),
                        List.of(
                                "By the end of",
                                "Done, orders wait",
                                "Reserve kept",
                                "Both",
                                "Done, orders on their day",
                                "Reserve kept",
                                "Both"),
                        rows));
    }

    /** Rule 90 and its counterpart without pledges. */
    static List<String> lasts(Forecast forecast, Formats formats) {
        String far = "as far as is drawn, to " + formats.dateLong(forecast.horizon());
        String lasts = forecast.cash()
                .runway()
                .map(day -> day.isBefore(forecast.asOf())
                        ? "the account stands under zero today."
                        : lasting("until " + formats.dateLong(day)))
                .orElse(lasting(far));
        String without = forecast.cash()
                .runwayWithoutPledges()
                .map(day -> day.isBefore(forecast.asOf())
                        ? "it stands under the reserve today."
                        : "it stays above the reserve until " + formats.dateLong(day) + ", four chances in five.")
                .orElse("it stays above the reserve " + far + ", four chances in five.");
        return List.of(
                "As things go, orders on their day, " + lasts,
                "If pledges stopped today and nothing more were ordered, " + without);
    }

    private static String lasting(String until) {
        return "it lasts " + until + ": up to then no day ends under zero, four chances in five.";
    }
}
