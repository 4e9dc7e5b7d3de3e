package weekwright.web.week;

import java.util.List;
import java.util.Map;
import weekwright.build.Task;
import weekwright.build.WeekLine;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.render.Form;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;

/** The lists to choose from on the form of a line of the week. */
public record WeekLineFields(
        List<Form.Choice> crew, List<Form.Choice> tasks, List<Form.Choice> episodes, List<Form.Choice> kinds) {
    /** The fields of the form, named as the columns. */
    static final String[] COLUMNS = {
        "date", "crew", "kind", "task", "episode", "hours", "from", "to", "text", "done"
    };

    static WeekLineFields of(Request request) {
        return request.read(read -> new WeekLineFields(
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                Choices.tasks(read, Task::isOpen),
                EpisodeStore.TABLE.values(read).stream()
                        .filter(episode -> episode.published().isEmpty())
                        .map((Episode episode) -> new Form.Choice(episode.id().value(), Choices.title(episode)))
                        .toList(),
                Choices.words(
                        WeekLine.Kind.class,
                        Map.of(WeekLine.Kind.FILM, "film", WeekLine.Kind.CARE, "care of the shop"))));
    }
}
