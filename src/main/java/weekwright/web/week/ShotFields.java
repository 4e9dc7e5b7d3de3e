package weekwright.web.week;

import java.util.List;
import java.util.Map;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.SaveShot;
import weekwright.episodes.Shot;
import weekwright.render.Form;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;

/** What the fields of a wanted picture are chosen from, and how a shot is told. */
final class ShotFields {
    static final String[] COLUMNS = {"what", "size", "episode", "task", "must", "once"};

    private static final Shot STAND_IN = Shape.of(Shot.class)
            .parse(Map.of("id", "new"), Reading.form(2), new Problems())
            .orElseThrow();

    private ShotFields() {}

    /** What was typed of a new shot, and every fault in it: of reading and of the rules. */
    static Shot typed(Request request) {
        return typed(request, STAND_IN);
    }

    /** As above, of one that stands. */
    static Shot typed(Request request, Shot old) {
        Shot draft = request.form().draft(old, COLUMNS);
        request.form().besides(() -> request.read(read -> SaveShot.check(read, draft)));
        return draft;
    }

    /** What the fields are chosen from. */
    record Lists(List<Form.Choice> episodes, List<Form.Choice> tasks, List<Form.Choice> sizes) {}

    /** @param chosen the episode that stands in the form, offered even when it is published */
    static Lists lists(Read read, String chosen) {
        return new Lists(
                EpisodeStore.TABLE.values(read).stream()
                        .filter(episode -> episode.published().isEmpty()
                                || episode.id().value().equalsIgnoreCase(chosen))
                        .map(episode -> new Form.Choice(episode.id().value(), Choices.title(episode)))
                        .toList(),
                Choices.tasks(read, task -> task.dropped().isEmpty()),
                Choices.words(Shot.Size.class, Map.of()));
    }

    /** Where a shot hangs: its episode, else the list of all. */
    static String home(Shot shot) {
        return shot.episode().map(id -> "/episodes/" + id).orElse("/week/shots");
    }

    /** "close, while: Hang the gate, for no. 12, Boards for the gate". */
    static String words(Read read, Shot shot, boolean task) {
        StringBuilder words =
                new StringBuilder(shot.size().map(Codec::word).orElse("wide").replace('-', ' '));
        if (task) {
            shot.task()
                    .flatMap(id -> TaskStore.TABLE.find(read, id))
                    .ifPresent(stored ->
                            words.append(", while: ").append(stored.value().title()));
        }
        shot.episode()
                .flatMap(id -> EpisodeStore.TABLE.find(read, id))
                .ifPresent(stored -> words.append(", for ").append(Choices.title(stored.value())));
        return words.toString();
    }

    static Form.Choice heading(Read read, Shot shot) {
        return shot.task()
                .flatMap((Id id) -> TaskStore.TABLE.find(read, id))
                .map(stored -> stored.value())
                .map((Task task) -> new Form.Choice("/build/tasks/" + task.id(), task.title()))
                .or(() -> shot.episode()
                        .flatMap((Id id) -> EpisodeStore.TABLE.find(read, id))
                        .map(stored -> stored.value())
                        .map((Episode episode) -> new Form.Choice("/episodes/" + episode.id(), Choices.title(episode))))
                .orElse(new Form.Choice("", "No task in particular"));
    }

    static NotFound gone() {
        return new NotFound("This shot is not there any more.");
    }

    /** A word after the question mark where it names something that stands. */
    static String query(Request request, String name) {
        String text = request.query(name);
        return text.matches("[A-Za-z0-9._-]{1,40}") ? text : "";
    }
}
