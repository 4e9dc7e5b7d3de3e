package weekwright.web.crew;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.account.LogInStore;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.HazardReadStore;
import weekwright.build.HoursEntryStore;
import weekwright.build.RemoveCrewMember;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.build.StoppedStore;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.ClipStore;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.StepByStore;
import weekwright.notes.NoteStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a person. */
public final class CrewMemberEditPage implements Page {
    /** @param currency its mark */
    public record View(
            Form form,
            Form remove,
            String name,
            List<String> days,
            List<Form.Choice> access,
            List<Form.Choice> hazards,
            String currency) {}

    @Override
    public View show(Request request) {
        Stored<CrewMember> member = member(request);
        Form form = request.form("", member);
        if (!request.wasRefused("")) {
            Map<String, List<String>> values = new LinkedHashMap<>(form.values());
            values.put("not_for", member.value().notFor().list());
            values.putIfAbsent("access", List.of("crew"));
            form = new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
        }
        return new View(
                form,
                request.form("remove", member),
                member.value().name(),
                MemberFields.days(),
                MemberFields.access(),
                MemberFields.hazards(),
                request.formats().currencyMark());
    }

    private static Stored<CrewMember> member(Request request) {
        return request.read(read -> CrewMemberStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is nobody " + request.part("id") + " in the crew."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Stored<CrewMember> member = member(request);
        if (!request.form().act().equals("remove")) {
            return MemberFields.change(request, member);
        }
        return request.save(write -> {
            RemoveCrewMember.remove(
                    write,
                    new Shown(member.row(), request.form().version()),
                    member.value(),
                    named(write, member.value()));
            return Saved.to("/crew").saying(member.value().name() + " is not of the crew any more.");
        });
    }

    /** What is on record of a person, in words. */
    private static List<String> named(Read read, CrewMember member) {
        String id = member.id().value();
        List<String> named = new ArrayList<>();
        some(named, HoursEntryStore.TABLE.where(read, "crew", id).size(), "entry of hours", "entries of hours");
        some(named, WeekLineStore.TABLE.where(read, "crew", id).size(), "line on week sheets", "lines on week sheets");
        some(named, StoppedStore.TABLE.where(read, "crew", id).size(), "stopped day", "stopped days");
        some(named, EpisodeStore.TABLE.where(read, "editor", id).size(), "episode", "episodes");
        some(named, HazardReadStore.TABLE.where(read, "crew", id).size(), "hazard read", "hazards read");
        some(named, StepByStore.TABLE.where(read, "crew", id).size(), "step of an episode", "steps of episodes");
        some(named, ClipStore.TABLE.where(read, "who", id).size(), "clip", "clips");
        some(named, NoteStore.TABLE.where(read, "author", id).size(), "build note", "build notes");
        some(
                named,
                LogInStore.passphrase(read, member.id()).isPresent() ? 1 : 0,
                "log-in, to be ended first",
                "log-ins");
        return named;
    }

    private static void some(List<String> list, long count, String one, String several) {
        if (count > 0) {
            list.add(Said.count(count, one, several));
        }
    }
}
