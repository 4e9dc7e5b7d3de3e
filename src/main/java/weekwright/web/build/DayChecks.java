package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.CrewMember;
import weekwright.build.EquipmentNeeds;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.Task;
import weekwright.build.TaskHazards;
import weekwright.build.UnmetLinks;
import weekwright.db.Read;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;

/**
 * What must stand before a task's day is begun: what it follows, materials, equipment, people, weather, permits. What the
 * program knows says so; the rest is a box for the pencil. A list never says that something is safe.
 */
final class DayChecks {
    private final Read read;
    private final Task task;
    private final LocalDate date;
    private final List<CrewMember> there;
    private final List<String> hazards;
    private final Optional<Forecast> forecast;
    private final Formats formats;

    /**
     * One box.
     *
     * @param known how it stands as far as the program knows: "yes", "not yet", or empty
     */
    record Check(String what, String known) {}

    DayChecks(
            Read read,
            Task task,
            LocalDate date,
            List<CrewMember> there,
            List<String> hazards,
            Optional<Forecast> forecast,
            Formats formats) {
        this.read = read;
        this.task = task;
        this.date = date;
        this.there = there;
        this.hazards = hazards;
        this.forecast = forecast;
        this.formats = formats;
    }

    List<Check> all(String permits) {
        List<Check> checks = new ArrayList<>();
        List<Task> unmet = UnmetLinks.of(read, task);
        if (unmet.isEmpty()) {
            checks.add(new Check("Everything that it follows is done", "yes"));
        }
        unmet.forEach(before -> checks.add(new Check("Done before it: " + before.title(), "not yet")));
        for (StageMaterials.Line line : StageMaterials.of(read, List.of(task), forecast, formats)) {
            checks.add(new Check(
                    line.item() + (line.amount().isEmpty() ? "" : ", " + line.amount()) + ": " + line.standing(),
                    line.open() ? "not yet" : "yes"));
        }
        equipment(checks);
        people(checks);
        weather(checks);
        checks.add(
                new Check(permits.isEmpty() ? "Permits and notices, and who gave them:" : "Permits: " + permits, ""));
        if (!hazards.isEmpty()) {
            checks.add(new Check("Everybody has read the cautions below and knows the stop word", ""));
        }
        return checks;
    }

    private void equipment(List<Check> checks) {
        EquipmentNeeds.of(task)
                .counts()
                .forEach((id, count) -> EquipmentStore.TABLE
                        .find(read, id)
                        .map(one -> one.value())
                        .ifPresent(one -> {
                            boolean late = one.inspectBy()
                                    .filter(day -> day.isBefore(date))
                                    .isPresent();
                            boolean down = one.downFrom()
                                    .filter(day -> !day.isAfter(date))
                                    .isPresent();
                            checks.add(new Check(
                                    one.name()
                                            + (count > 1 ? ", " + count : "")
                                            + (down
                                                    ? ": down"
                                                    : late
                                                            ? ": inspection was due "
                                                                    + formats.dateShort(one.inspectBy()
                                                                            .get())
                                                            : ": guards on, tried"),
                                    down || late ? "not yet" : ""));
                        }));
    }

    private void people(List<Check> checks) {
        int need = task.handsOrDefault();
        List<String> hands = there.stream()
                .filter(one ->
                        task.trades().isEmpty() || task.trades().list().stream().anyMatch(one.trades()::has))
                .filter(one -> !HazardCodes.keptOff(one, hazards))
                .map(CrewMember::name)
                .toList();
        checks.add(new Check(
                (need == 1 ? "One person" : Formats.sentence(Formats.number(need)) + " people") + " for it"
                        + (hands.isEmpty() ? ": nobody has hours that day" : ": " + Formats.list(hands)),
                hands.size() >= task.leastHandsOrDefault() ? "yes" : "not yet"));
        Task.Company company = TaskHazards.company(read, task);
        if (company != Task.Company.ALONE) {
            checks.add(new Check(
                    company == Task.Company.BY
                            ? "Somebody beside, who does not hold the camera"
                            : "Somebody else at work that day",
                    there.size() > task.leastHandsOrDefault() ? "yes" : "not yet"));
        }
        Task.Camera camera = task.cameraOrDefault();
        if (camera == Task.Camera.ONCE || camera == Task.Camera.OPERATOR) {
            List<String> operators = there.stream()
                    .filter(one -> one.trades().has("camera"))
                    .map(CrewMember::name)
                    .toList();
            checks.add(new Check(
                    "Somebody for the camera" + (operators.isEmpty() ? "" : ": " + Formats.list(operators)),
                    operators.isEmpty() ? "not yet" : ""));
        }
    }

    private void weather(List<Check> checks) {
        if (task.outdoors()) {
            checks.add(new Check("Weather of the day looked up; below these it is not begun (wind, rain, frost):", ""));
        }
    }
}
