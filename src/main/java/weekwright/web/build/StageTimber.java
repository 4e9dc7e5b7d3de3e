package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Stage;
import weekwright.build.Task;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.StageStrip;

/** The timber of one stage, with a notch for each task. */
final class StageTimber {
    private StageTimber() {}

    /** Wide and narrow; empty without a forecast or a day. */
    static List<String> drawings(
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
            return List.of();
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
        return List.of(strip.wide(), strip.narrow());
    }
}
