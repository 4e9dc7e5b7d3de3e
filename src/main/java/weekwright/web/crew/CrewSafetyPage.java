package weekwright.web.crew;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Refused;
import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.CrewMember;
import weekwright.build.HazardCodes;
import weekwright.build.Incident;
import weekwright.build.IncidentStore;
import weekwright.build.SayRead;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.EmergencyCells;

/**
 * The safety folder, to print: dangers of the open work with who has read of them, machines and who may use them,
 * inspections, who was on site, the crew's own cautions, and what went wrong or nearly did. For the crew alone.
 */
public final class CrewSafetyPage implements Page {
    private static final int DAYS_BACK = 28;

    /**
     * @param names of the crew, a column each to sign that they have read of a danger
     * @param from first day of the list of who was on site
     * @param to its last day
     */
    public record View(
            Form form,
            List<OwnCaution> cautions,
            List<Event> incidents,
            List<SafetyFolder.Danger> dangers,
            List<String> names,
            List<SafetyFolder.Machine> machines,
            List<SafetyFolder.OnSite> onSite,
            LocalDate from,
            LocalDate to,
            List<Frame.Cell> emergency) {}

    /** A caution of the crew's own. */
    public record OwnCaution(long row, String hazard, boolean camera, String text) {}

    /** @param kind hurt, near miss, or both */
    public record Event(long row, LocalDate date, String who, String what, String kind, String changed) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        LocalDate to = day(request, "to", today);
        LocalDate from = day(request, "from", to.minusDays(DAYS_BACK - 1L));
        Formats formats = request.formats();
        return request.read(read -> {
            SafetyFolder folder = new SafetyFolder(read, today);
            return new View(
                    request.form("read"),
                    CautionStore.TABLE.list(read).stream()
                            .map(CrewSafetyPage::caution)
                            .toList(),
                    IncidentStore.TABLE.list(read).stream()
                            .map(CrewSafetyPage::event)
                            .sorted(Comparator.comparing(Event::date).reversed())
                            .toList(),
                    folder.dangers(),
                    folder.names(),
                    folder.machines(today, formats::dateShort),
                    folder.onSite(from, to),
                    from,
                    to,
                    EmergencyCells.of(request.settings().emergency()));
        });
    }

    /** Somebody has read of a danger: of one, or of all that stand there. */
    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<Id> crew = request.crew().stream().map(CrewMember::id).toList();
        Optional<Id> who = form.oneOf("crew", crew);
        if (who.isEmpty() && form.text("crew").isEmpty()) {
            form.fault("crew", "", "is missing", "choose who has read it");
        }
        List<String> codes = form.texts("hazard");
        if (codes.isEmpty()) {
            form.fault("hazard", "", "is missing", "choose the hazard that was read of");
        }
        String name = request.crew().stream()
                .filter(one -> who.map(id -> id.equals(one.id())).orElse(false))
                .map(CrewMember::name)
                .findFirst()
                .orElse("");
        return request.save(write -> {
            for (String code : codes) {
                SayRead.say(write, code, who.orElseThrow(), request.today());
            }
            return Saved.to("/crew/safety#dangers-head")
                    .saying(name + " has read of "
                            + (codes.size() == 1
                                    ? HazardCodes.title(codes.get(0))
                                            .orElse(codes.get(0))
                                            .toLowerCase(Locale.ROOT)
                                    : Formats.counted(codes.size(), "danger", "dangers"))
                            + ".");
        });
    }

    private static LocalDate day(Request request, String name, LocalDate otherwise) {
        String text = request.query(name);
        if (text.isEmpty()) {
            return otherwise;
        }
        try {
            return Codec.of(LocalDate.class).parse(text, request.settings().typed());
        } catch (Refused refused) {
            throw new NotFound("\"" + text + "\" " + refused.rule() + ".");
        }
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
