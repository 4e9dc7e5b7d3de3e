package weekwright.engine.simulate;

import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.LineKind;
import weekwright.engine.Inputs.OwnLine;

/** The crew's own week lines as columns, in the order of their days (rule 43: they reserve hours before anything else). */
final class OwnLines {
    final int count;
    final int[] day;
    final int[] person;
    /** Task or -1. */
    final int[] task;
    /** Episode or -1. */
    final int[] episode;

    final LineKind[] kind;
    final int[] minutes;

    OwnLines(Inputs inputs, Crowd crowd, Ids taskIds) {
        Ids episodeIds = Ids.of("episode", inputs.episodes(), Inputs.Episode::id);
        List<OwnLine> lines = inputs.ownLines();
        int[] order = IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).date() >= inputs.asOf()
                        && !lines.get(i).crew().isEmpty())
                .boxed()
                .sorted((a, b) ->
                        Integer.compare(lines.get(a).date(), lines.get(b).date()))
                .mapToInt(Integer::intValue)
                .toArray();
        count = order.length;
        day = new int[count];
        person = new int[count];
        task = new int[count];
        episode = new int[count];
        kind = new LineKind[count];
        minutes = new int[count];
        for (int i = 0; i < count; i++) {
            OwnLine line = lines.get(order[i]);
            day[i] = line.date() - inputs.asOf();
            person[i] = crowd.at(line.crew());
            task[i] = line.task().isEmpty() ? -1 : taskIds.at(line.task());
            episode[i] = line.episode().isEmpty() ? -1 : episodeIds.at(line.episode());
            kind[i] = line.kind();
            minutes[i] = line.minutes();
        }
    }
}
