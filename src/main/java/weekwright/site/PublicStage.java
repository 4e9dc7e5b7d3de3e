package weekwright.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.HoursEntry;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.forecast.MovedStore;
import weekwright.forecast.SavedForecastStore;
import weekwright.render.Formats;
import weekwright.render.chart.KeyDrawing;

/**
 * How far a stage is, by hours.
 *
 * @param doneMinutes hours of the hands logged on its tasks
 * @param leftMinutes hours that are still to do
 * @param landed the day its last task was done; empty while any is open
 */
public record PublicStage(
        Id id, String name, boolean side, int doneMinutes, int leftMinutes, Optional<LocalDate> landed) {

    /** In the order of the build. */
    static List<PublicStage> all(Read read) {
        Map<String, List<HoursEntry>> entries = TaskFigures.entries(read);
        List<PublicStage> stages = new ArrayList<>();
        for (Stored<Stage> stored : StageStore.inOrder(read)) {
            Stage stage = stored.value();
            List<Task> tasks = TaskStore.ofStage(read, stage.id()).stream()
                    .map(Stored::value)
                    .filter(task -> task.dropped().isEmpty())
                    .toList();
            TaskFigures sum = TaskFigures.sum(tasks, entries);
            boolean landed = !tasks.isEmpty()
                    && tasks.stream().allMatch(task -> task.done().isPresent());
            stages.add(new PublicStage(
                    stage.id(),
                    stage.name(),
                    stage.side(),
                    sum.logged(),
                    sum.left(),
                    landed
                            ? tasks.stream()
                                    .flatMap(task -> task.done().stream())
                                    .max(Comparator.naturalOrder())
                            : Optional.empty()));
        }
        return List.copyOf(stages);
    }

    /** The stage that is in hand: the first of the build with hours on it and work left. */
    static Optional<PublicStage> inHand(List<PublicStage> stages) {
        return stages.stream()
                .filter(stage -> !stage.side() && stage.landed().isEmpty() && stage.doneMinutes() > 0)
                .findFirst();
    }

    /** When the stage in hand is done, from the newest forecast kept; in months where it is over eight weeks off. */
    static String landing(Read read, List<PublicStage> stages, Formats formats, int moneyDigits) {
        Optional<PublicStage> stage = inHand(stages);
        return stage.flatMap(one -> SavedForecastStore.newest(read, formats.today())
                        .flatMap(saved ->
                                saved.forecast(moneyDigits).stage(one.id().value())))
                .map(Forecast.Stage::landing)
                .filter(days -> days.p10().isPresent() && days.p90().isPresent())
                .map(days -> stage.get().name() + " is done "
                        + between(days.p10().get(), days.p90().get(), formats) + ", with four chances in five.")
                .orElse("");
    }

    /** Why the date of the stage in hand moved since a week ago, in one sentence; empty where that is not known. */
    static String moved(Read read, List<PublicStage> stages, Formats formats) {
        Optional<PublicStage> stage = inHand(stages);
        return stage.flatMap(one -> MovedStore.find(read, one.id().value(), formats.today()))
                .map(kept -> sentence(stage.get().name(), kept, formats))
                .orElse("");
    }

    private static String sentence(String stage, MovedStore.Kept kept, Formats formats) {
        String since = "Since " + formats.dateLong(kept.since()) + " the date of " + stage;
        if (kept.sum() == 0) {
            return since + " has not moved.";
        }
        boolean later = kept.sum() > 0;
        return since + " moved " + Formats.count(Math.abs(kept.sum()), "day") + (later ? " later" : " earlier")
                + ", mostly because "
                + switch (kept.foremost()) {
                    case WORK -> later ? "the work went slower than expected." : "the work went faster than expected.";
                    case ESTIMATES -> "we now reckon with other hours for some of the work.";
                    case PLAN -> "we changed the plan.";
                    case MATERIALS ->
                        later
                                ? "materials take longer or cost more than expected."
                                : "materials come sooner or cost less than expected.";
                    case MONEY ->
                        later
                                ? "there is less money for materials than expected."
                                : "there is more money for materials than expected.";
                };
    }

    private static String between(LocalDate low, LocalDate high, Formats formats) {
        if (!high.isAfter(formats.today().plusWeeks(8))) {
            return formats.between(low, high);
        }
        String from = Formats.monthYear(low);
        String to = Formats.monthYear(high);
        return from.equals(to) ? "in " + from : "between " + from + " and " + to;
    }

    /** How far it is, in words. */
    String words(Formats formats) {
        if (landed.isPresent()) {
            return "done, " + formats.dateLong(landed.get()) + ", " + hours(doneMinutes);
        }
        return doneMinutes == 0
                ? "to come"
                : "in hand, " + hours(doneMinutes) + " done, about " + hours(leftMinutes) + " to go";
    }

    /** Whole hours, at least one: quarters are no business of the public's. */
    private static String hours(int minutes) {
        return Formats.count(Math.max(1, (minutes + 30) / 60), "hour");
    }

    KeyDrawing.Standing standing() {
        return landed.isPresent()
                ? KeyDrawing.Standing.DONE
                : doneMinutes > 0 ? KeyDrawing.Standing.IN_HAND : KeyDrawing.Standing.TO_COME;
    }
}
