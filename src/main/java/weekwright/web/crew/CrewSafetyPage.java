package weekwright.web.crew;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.HazardCodes;
import weekwright.build.Incident;
import weekwright.build.IncidentStore;
import weekwright.db.Stored;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The crew's own cautions, and what went wrong or nearly did. For the crew alone. */
public final class CrewSafetyPage implements Page {
    public record View(List<OwnCaution> cautions, List<Event> incidents) {}

    /** A caution of the crew's own. */
    public record OwnCaution(long row, String hazard, boolean camera, String text) {}

    /** @param kind hurt, near miss, or both */
    public record Event(long row, LocalDate date, String who, String what, String kind, String changed) {}

    @Override
    public View show(Request request) {
        return request.read(read -> new View(
                CautionStore.TABLE.list(read).stream()
                        .map(CrewSafetyPage::caution)
                        .toList(),
                IncidentStore.TABLE.list(read).stream()
                        .map(CrewSafetyPage::event)
                        .sorted(Comparator.comparing(Event::date).reversed())
                        .toList()));
    }

    private static OwnCaution caution(Stored<Caution> row) {
        Caution one = row.value();
        return new OwnCaution(
                row.row(),
                HazardCodes.title(one.hazard()).orElse(one.hazard()),
                one.whom() == Caution.Whom.CAMERA,
                one.text());
    }

    private static Event event(Stored<Incident> row) {
        Incident one = row.value();
        String kind = one.hurt() ? (one.nearMiss() ? "hurt, near miss" : "hurt") : one.nearMiss() ? "near miss" : "";
        return new Event(row.row(), one.date(), one.who(), one.what(), kind, one.changed());
    }
}
