package weekwright.web.log;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Codec;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Stopped;
import weekwright.build.StoppedStore;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.episodes.EpisodeStore;
import weekwright.web.parts.Choices;

/** What is already logged on a day. */
final class LogDay {
    private LogDay() {}

    /** An hours entry in words; {@code rows} is what its button posts. */
    record Line(long row, String rows, String who, String what, int minutes, String more) {}

    /** A stopped day in words. */
    record StoppedLine(String rows, String who, String reason, String note) {}

    static List<Line> entries(Read read, LocalDate day) {
        Map<String, String> names = names(read);
        return HoursEntryStore.between(read, day, day).stream()
                .map(stored -> new Line(
                        stored.row(),
                        stored.row() + ":" + stored.version(),
                        names.getOrDefault(
                                stored.value().crew().folded(),
                                stored.value().crew().value()),
                        what(read, stored.value()),
                        stored.value().hours().minutes(),
                        more(stored.value())))
                .toList();
    }

    private static Map<String, String> names(Read read) {
        Map<String, String> names = new HashMap<>();
        CrewMemberStore.TABLE
                .values(read)
                .forEach(member -> names.put(member.id().folded(), member.name()));
        return names;
    }

    /** What the hours were for, with the part that was not the hands'. */
    static String what(Read read, HoursEntry entry) {
        String thing = entry.task()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .map(task -> task.value().title())
                .or(() -> entry.episode()
                        .flatMap(id -> EpisodeStore.TABLE.find(read, id))
                        .map(episode -> Choices.title(episode.value())))
                .orElse("");
        return switch (entry.asOrDefault()) {
            case HANDS -> thing.isEmpty() ? "at the bench" : thing;
            case CAMERA -> thing.isEmpty() ? "filming" : "filming " + thing;
            case EDIT -> thing.isEmpty() ? "editing" : "editing " + thing;
            case SHOP -> thing.isEmpty() ? "shop" : "shop, " + thing;
            case OFFICE -> thing.isEmpty() ? "office" : "office, " + thing;
        };
    }

    private static String more(HoursEntry entry) {
        StringBuilder text = new StringBuilder();
        entry.pieces().ifPresent(n -> text.append(n).append(n == 1 ? " piece. " : " pieces. "));
        entry.spoiled().filter(n -> n > 0).ifPresent(n -> text.append(n).append(" spoiled. "));
        entry.people().filter(n -> n > 1).ifPresent(n -> text.append(n).append(" people. "));
        return text.append(entry.filmed() ? "Filmed. " : "")
                .append(entry.note())
                .toString()
                .strip();
    }

    static List<StoppedLine> stopped(Read read, LocalDate day, Map<Stopped.Reason, String> words) {
        Map<String, String> names = names(read);
        return StoppedStore.between(read, day, day).stream()
                .map(stored -> new StoppedLine(
                        stored.row() + ":" + stored.version(),
                        stored.value()
                                .crew()
                                .map(id -> names.getOrDefault(id.folded(), id.value()))
                                .orElse("Everybody"),
                        words.getOrDefault(
                                stored.value().reason(),
                                Codec.word(stored.value().reason())),
                        stored.value().note()))
                .toList();
    }
}
