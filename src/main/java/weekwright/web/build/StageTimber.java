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
    /** A task and the day on which it was done or is done at even chances. */
    private record Lands(Task task, LocalDate day) {}

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
        List<Lands> lands = new ArrayList<>();
        for (Task task : tasks) {
            task.done()
                    .or(() -> forecast.flatMap(f -> f.task(task.id().value()))
                            .flatMap(one -> one.landing().p50()))
                    .ifPresent(day -> lands.add(new Lands(task, day)));
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
                        lands.stream()
                                .map(one -> new AheadPicture.Notch(one.task().title(), one.day()))
                                .toList()),
                today,
                formats);
        return Optional.of(new StageTimber(strip.drawings(), table(stage, tasks, lands, done, landing, formats)));
    }

    private static AheadPicture.Table table(
            Stage stage,
            List<Task> tasks,
            List<Lands> lands,
            Optional<LocalDate> done,
            Optional<AheadPicture.Range> landing,
            Formats formats) {
        List<List<String>> rows = new ArrayList<>();
        StageDays.began(tasks).ifPresent(day -> rows.add(List.of("Begun", formats.dateBrief(day))));
        lands.stream()
                .sorted(Comparator.comparing(Lands::day))
                .forEach(one -> rows.add(List.of(
                        one.task().title(),
                        (one.task().done().isPresent() ? "done " : "about ") + formats.dateBrief(one.day()))));
        landing.ifPresent(range -> {
            range.p10().ifPresent(day -> rows.add(List.of("All done, one chance in ten by", formats.dateBrief(day))));
            range.p50().ifPresent(day -> rows.add(List.of("All done, even chances by", formats.dateBrief(day))));
            range.p90().ifPresent(day -> rows.add(List.of("All done, nine chances in ten by", formats.dateBrief(day))));
        });
        done.ifPresent(day -> rows.add(List.of("All done", formats.dateBrief(day))));
        return new AheadPicture.Table(stage.name() + ", day by day", List.of("What", "Day"), rows);
    }
}
