package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.build.Stage;
import weekwright.build.Task;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.StageStrip;

/**
 * The timber of one stage, with a notch for each task.
 *
 * @param drawing in each width
 * @param table the days that it shows
 */
record StageTimber(String drawing, AheadPicture.Table table) {
    /** Empty without a forecast or a day. */
    static Optional<StageTimber> of(
            Stage stage,
            List<Task> tasks,
            Optional<Forecast.Stage> ahead,
            Optional<LocalDate> done,
            Optional<Forecast> forecast,
            LocalDate today,
            Formats formats) {
        Optional<AheadPicture.Range> landing = ahead.map(Forecast.Stage::landing)
                .filter(days -> days.p10().isPresent())
                .map(days -> new AheadPicture.Range(days.p10(), days.p50(), days.p90()));
        if (done.isEmpty() && landing.isEmpty()) {
            return Optional.empty();
        }
        List<AheadPicture.Notch> notches = new ArrayList<>();
        for (Task task : tasks) {
            task.done()
                    .or(() -> forecast.flatMap(f -> f.task(task.id().value()))
                            .flatMap(one -> one.landing().p50()))
                    .ifPresent(day -> notches.add(new AheadPicture.Notch(task.title(), day)));
        }
        StageStrip strip = new StageStrip(
                new AheadPicture.Stage(
                        stage.name(),
                        "",
                        StageDays.began(tasks),
                        ahead.map(Forecast.Stage::start)
                                .map(days -> new AheadPicture.Range(days.p10(), days.p50(), days.p90())),
                        done.isPresent() ? Optional.empty() : landing,
                        done,
                        notches),
                today,
                formats);
        return Optional.of(new StageTimber(strip.drawings(), table(stage, tasks, notches, done, landing, formats)));
    }

    private static AheadPicture.Table table(
            Stage stage,
            List<Task> tasks,
            List<AheadPicture.Notch> notches,
            Optional<LocalDate> done,
            Optional<AheadPicture.Range> landing,
            Formats formats) {
        List<List<String>> rows = new ArrayList<>();
        StageDays.began(tasks).ifPresent(day -> rows.add(List.of("Begun", formats.dateBrief(day))));
        notches.stream()
                .sorted(Comparator.comparing(AheadPicture.Notch::day))
                .forEach(notch -> rows.add(List.of(
                        notch.name(),
                        (tasks.stream()
                                                .anyMatch(task -> task.title().equals(notch.name())
                                                        && task.done().isPresent())
                                        ? "done "
                                        : "about ")
                                + formats.dateBrief(notch.day()))));
        landing.ifPresent(range -> {
            range.p10().ifPresent(day -> rows.add(List.of("All done, one chance in ten by", formats.dateBrief(day))));
            range.p50().ifPresent(day -> rows.add(List.of("All done, even chances by", formats.dateBrief(day))));
            range.p90().ifPresent(day -> rows.add(List.of("All done, nine chances in ten by", formats.dateBrief(day))));
        });
        done.ifPresent(day -> rows.add(List.of("All done", formats.dateBrief(day))));
        return new AheadPicture.Table(stage.name() + ", day by day", List.of("What", "Day"), rows);
    }
}
