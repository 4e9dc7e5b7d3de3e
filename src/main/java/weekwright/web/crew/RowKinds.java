package weekwright.web.crew;

import java.util.List;
import java.util.Map;
import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.CrewHours;
import weekwright.build.CrewHoursStore;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.EquipmentStore;
import weekwright.build.Gathering;
import weekwright.build.GatheringStore;
import weekwright.build.Incident;
import weekwright.build.IncidentStore;
import weekwright.build.SaveCaution;
import weekwright.build.SaveCrewHours;
import weekwright.build.SaveDaysOff;
import weekwright.build.SaveGathering;
import weekwright.build.SaveIncident;
import weekwright.build.SaveStopped;
import weekwright.build.Stopped;
import weekwright.build.StoppedStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;

/** The kinds of rows kept under Crew, and what their fields are chosen from. */
final class RowKinds {
    static final RowKind<DaysOff> OFF = new RowKind<>(
            DaysOffStore.TABLE,
            DaysOff.class,
            "",
            new String[] {"crew", "from", "to", "hours", "reason"},
            (write, shown, row, request) -> SaveDaysOff.save(write, shown, row),
            "/crew/days",
            "time off");
    static final RowKind<CrewHours> HOURS = new RowKind<>(
            CrewHoursStore.TABLE,
            CrewHours.class,
            "",
            new String[] {"crew", "from", "to", "mon", "tue", "wed", "thu", "fri", "sat", "sun"},
            (write, shown, row, request) -> SaveCrewHours.save(write, shown, row),
            "/crew/days",
            "set of other hours");
    static final RowKind<Stopped> STOPPED = new RowKind<>(
            StoppedStore.TABLE,
            Stopped.class,
            "stop",
            new String[] {"date", "crew", "hours", "reason", "task", "equipment", "note"},
            (write, shown, row, request) -> SaveStopped.save(write, shown, row, request.today()),
            "/crew/days",
            "stopped day");
    static final RowKind<Gathering> GATHERING = new RowKind<>(
            GatheringStore.TABLE,
            Gathering.class,
            "g",
            new String[] {"date", "hands", "hours", "come_share", "cost", "note"},
            (write, shown, row, request) -> SaveGathering.save(write, shown, row),
            "/crew/days",
            "gathering");
    static final RowKind<Incident> INCIDENT = new RowKind<>(
            IncidentStore.TABLE,
            Incident.class,
            "inc",
            new String[] {"date", "who", "what", "hurt", "near_miss", "changed"},
            (write, shown, row, request) -> SaveIncident.save(write, shown, row, request.today()),
            "/crew/safety",
            "incident");
    static final RowKind<Caution> CAUTION = new RowKind<>(
            CautionStore.TABLE,
            Caution.class,
            "",
            new String[] {"hazard", "for", "text"},
            (write, shown, row, request) -> SaveCaution.save(write, shown, row),
            "/crew/safety",
            "caution");

    private RowKinds() {}

    /** What the fields of these forms are chosen from. */
    record Lists(
            List<Form.Choice> people,
            List<Form.Choice> reasons,
            List<Form.Choice> tasks,
            List<Form.Choice> equipment,
            List<Form.Choice> hazards,
            List<Form.Choice> whom,
            List<String> days,
            String currency,
            String today) {}

    static Lists lists(Request request) {
        return request.read(read -> new Lists(
                request.crew().stream()
                        .map(one -> new Form.Choice(one.id().value(), one.name()))
                        .toList(),
                Choices.words(
                        Stopped.Reason.class,
                        Map.of(
                                Stopped.Reason.MATERIAL, "waiting for material",
                                Stopped.Reason.MACHINE, "machine down",
                                Stopped.Reason.COMPANY, "no second person")),
                Choices.tasks(read, task -> task.dropped().isEmpty()),
                EquipmentStore.TABLE.values(read).stream()
                        .map(one -> new Form.Choice(one.id().value(), one.name()))
                        .toList(),
                MemberFields.hazards(),
                Choices.words(
                        Caution.Whom.class,
                        Map.of(
                                Caution.Whom.HANDS, "the hands",
                                Caution.Whom.CAMERA, "whoever holds the camera")),
                MemberFields.days(),
                new Formats(request.settings().project().currency(), request.today()).currencyMark(),
                request.today().toString()));
    }
}
