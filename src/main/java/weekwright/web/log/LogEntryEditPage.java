package weekwright.web.log;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.CrewMemberStore;
import weekwright.build.EditHours;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.LoggedHours;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Forbidden;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** Puts an hours entry right, or takes it away. */
public final class LogEntryEditPage implements Page {
    private static final String[] COLUMNS = {
        "date",
        "crew",
        "people",
        "task",
        "episode",
        "as",
        "hours",
        "pieces",
        "spoiled",
        "filmed",
        "footage_minutes",
        "note"
    };

    /** @param rows what the button that takes it away posts */
    public record View(
            Form form,
            String head,
            String rows,
            List<Form.Choice> people,
            List<Form.Choice> tasks,
            List<Form.Choice> episodes,
            List<Form.Choice> as) {}

    @Override
    public View show(Request request) {
        Stored<HoursEntry> entry = entry(request);
        HoursEntry value = entry.value();
        return request.read(read -> new View(
                request.form("", entry),
                Formats.hoursLong(value.hours().minutes()) + " on " + Formats.dayMonthLong(value.date()) + ", "
                        + LogDay.what(read, value),
                entry.row() + ":" + entry.version(),
                CrewMemberStore.TABLE.values(read).stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                Choices.tasks(read, task -> task.isWork()),
                EpisodeStore.TABLE.values(read).stream()
                        .map(episode -> new Form.Choice(episode.id().value(), Choices.title(episode)))
                        .toList(),
                Choices.words(
                        HoursEntry.As.class,
                        Map.of(
                                HoursEntry.As.HANDS, "at the bench",
                                HoursEntry.As.CAMERA, "filming",
                                HoursEntry.As.EDIT, "editing"))));
    }

    private static Stored<HoursEntry> entry(Request request) {
        Stored<HoursEntry> entry = request.read(read -> HoursEntryStore.TABLE.find(read, request.row("row")))
                .orElseThrow(() -> new NotFound("This entry is not there any more."));
        LogPage.mayTouch(request, Optional.of(entry));
        return entry;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Stored<HoursEntry> entry = entry(request);
        FormReader form = request.form();
        HoursEntry edited = form.draft(entry.value(), COLUMNS);
        Shown shown = new Shown(entry.row(), form.version());
        form.besides(
                () -> request.read(read -> LoggedHours.problems(read, edited, Optional.of(shown), request.today())));
        Id own =
                request.person().map(person -> person.id()).orElse(entry.value().crew());
        if (request.access() != Access.CREW && !edited.crew().same(own)) {
            throw new Forbidden("A helper logs their own hours only.");
        }
        return request.save(write -> {
            LoggedHours kept = EditHours.edit(write, shown, edited, request.today());
            StringBuilder said = new StringBuilder("The entry is saved.");
            kept.remarks()
                    .forEach(remark -> said.append(' ')
                            .append(Formats.sentence(remark.sentence()))
                            .append('.'));
            return Saved.to("/log").saying(said.toString());
        });
    }
}
