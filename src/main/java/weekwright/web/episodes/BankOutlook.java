package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Settings;
import weekwright.forecast.Forecast;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.LineChart;

/**
 * The story bank over half a year: a drawing with its range, the same figures, and a warning where the next twelve slots are
 * not safe.
 *
 * @param drawing SVG text
 * @param warning empty where the chance of an empty slot in the next twelve is one in five or less
 */
public record BankOutlook(String drawing, List<AheadPicture.Table> tables, String warning) {
    private static final int WEEKS = 26;
    private static final double ONE_IN_FIVE = 0.2;

    public BankOutlook {
        tables = List.copyOf(tables);
    }

    /** Empty where the forecast has no weeks. */
    static Optional<BankOutlook> of(Forecast forecast, Settings settings, LocalDate today, Formats formats) {
        if (forecast.storyBank().isEmpty()) {
            return Optional.empty();
        }
        List<AheadPicture.Fan> fan = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Forecast.BankWeek week : forecast.storyBank().stream().limit(WEEKS).toList()) {
            fan.add(new AheadPicture.Fan(week.week(), week.p10(), week.p50(), week.p50(), week.p50(), week.p90()));
            rows.add(List.of(
                    formats.dateShort(week.week()), minutes(week.p10()), minutes(week.p50()), minutes(week.p90())));
        }
        double episode = settings.targetMinutes().doubleValue();
        double floor = settings.bankFloor().doubleValue() * episode / settings.everyWeeks();
        List<LineChart.Level> levels = new ArrayList<>();
        levels.add(new LineChart.Level("one episode", episode));
        if (floor > episode) {
            levels.add(new LineChart.Level("the floor you set", floor));
        }
        LineChart chart = new LineChart(
                "story-bank",
                "Minutes of filmed story not told yet, by week, with the range of eight in ten",
                today,
                List.of(),
                fan,
                levels,
                List.of(),
                BankOutlook::minutes);
        AheadPicture.Table table = new AheadPicture.Table(
                "Story bank in finished minutes",
                List.of("Week to", "one in ten below", "middle", "one in ten above"),
                rows);
        return Optional.of(new BankOutlook(chart.drawings(), List.of(table), warning(forecast)));
    }

    /** Said when the chance of an empty slot among the next twelve passes one in five. */
    static String warning(Forecast forecast) {
        double empty = 1 - forecast.slots().noneEmpty12();
        return empty > ONE_IN_FIVE + 1e-9
                ? "At least one of them stays empty: " + Chances.words(empty) + ". In the mean "
                        + Math.round(forecast.slots().expectedEmpty12() * 10) / 10.0
                        + " of the twelve do. Film ahead, or make a standby ready."
                : "";
    }

    private static String minutes(double minutes) {
        return Math.round(minutes) + Formats.NBSP + "min";
    }
}
