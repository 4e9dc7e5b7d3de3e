package weekwright.web.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Refused;
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
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;

/** The kinds of rows kept under Crew, and what their fields are chosen from. */
final class RowKinds {
    static final RowKind<DaysOff> OFF = new RowKind<>(
            DaysOffStore.TABLE,
            "",
            new String[] {"crew", "from", "to", "hours", "reason"},
            request -> daysOff(typed(request, "to")),
            (read, row, today) -> SaveDaysOff.check(read, row),
            (write, shown, row, request) -> SaveDaysOff.save(write, shown, row),
            "/crew/days",
            "time off");
    static final RowKind<CrewHours> HOURS = new RowKind<>(
            CrewHoursStore.TABLE,
            "",
            new String[] {"crew", "from", "to", "mon", "tue", "wed", "thu", "fri", "sat", "sun"},
            request -> new CrewHours(
                    new Id("new"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()),
            (read, row, today) -> SaveCrewHours.check(read, row),
            (write, shown, row, request) -> SaveCrewHours.save(write, shown, row),
            "/crew/days",
            "set of other hours");
    static final RowKind<Stopped> STOPPED = new RowKind<>(
            StoppedStore.TABLE,
            "stop",
            new String[] {"date", "crew", "hours", "reason", "task", "equipment", "note"},
            request -> new Stopped(
                    new Id("new"),
                    request.today(),
                    Optional.empty(),
                    Optional.empty(),
                    Stopped.Reason.OTHER,
                    Optional.empty(),
                    Optional.empty(),
                    ""),
            SaveStopped::check,
            (write, shown, row, request) -> SaveStopped.save(write, shown, row, request.today()),
            "/crew/days",
            "stopped day");
    static final RowKind<Gathering> GATHERING = new RowKind<>(
            GatheringStore.TABLE,
            "g",
            new String[] {"date", "hands", "hours", "come_share", "cost", "note"},
            request -> new Gathering(
                    new Id("new"), request.today(), 1, new Hours(60), Optional.empty(), Optional.empty(), ""),
            (read, row, today) -> SaveGathering.check(read, row),
            (write, shown, row, request) -> SaveGathering.save(write, shown, row),
            "/crew/days",
            "gathering");
    static final RowKind<Incident> INCIDENT = new RowKind<>(
            IncidentStore.TABLE,
            "inc",
            new String[] {"date", "who", "what", "hurt", "near_miss", "changed"},
            request -> new Incident(new Id("new"), request.today(), "", "", false, false, ""),
            SaveIncident::check,
            (write, shown, row, request) -> SaveIncident.save(write, shown, row, request.today()),
            "/crew/safety",
            "incident");
    static final RowKind<Caution> CAUTION = new RowKind<>(
            CautionStore.TABLE,
            "",
            new String[] {"hazard", "for", "text"},
            request -> new Caution("", Caution.Whom.HANDS, ""),
            (read, row, today) -> SaveCaution.check(read, row),
            (write, shown, row, request) -> SaveCaution.save(write, shown, row),
            "/crew/safety",
            "caution");

    private RowKinds() {}

    /** Of one day, so that of two days of which one cannot be read nothing is said about their order. */
    private static DaysOff daysOff(LocalDate day) {
        return new DaysOff(Optional.empty(), day, day, Optional.empty(), "");
    }

    private static LocalDate typed(Request request, String field) {
        try {
            return Codec.of(LocalDate.class)
                    .parse(request.form().text(field), request.form().reading());
        } catch (Refused refused) {
            return request.today();
        }
    }

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
                Choices.words(Stopped.Reason.class, Choices.REASONS),
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
                request.formats().currencyMark(),
                request.today().toString()));
    }
}
