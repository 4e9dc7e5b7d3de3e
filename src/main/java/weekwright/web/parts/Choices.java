package weekwright.web.parts;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import weekwright.base.Codec;
import weekwright.build.StageStore;
import weekwright.build.Stopped;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.render.Form;

/** Lists to choose from, by name. */
public final class Choices {
    /** Why nothing was done, where the word of the files says too little. */
    public static final Map<Stopped.Reason, String> REASONS = Map.of(
            Stopped.Reason.MATERIAL, "waiting for material",
            Stopped.Reason.MACHINE, "machine down",
            Stopped.Reason.COMPANY, "no second person");

    private Choices() {}

    /** Tasks in the order of the build, each with its stage: "Wheel shaft: Arm mortises". */
    public static List<Form.Choice> tasks(Read read, Predicate<Task> which) {
        Map<String, String> names = new HashMap<>();
        Map<String, Integer> places = new HashMap<>();
        StageStore.inOrder(read).forEach(stage -> {
            places.put(stage.value().id().folded(), places.size());
            names.put(stage.value().id().folded(), stage.value().name());
        });
        return TaskStore.TABLE.values(read).stream()
                .filter(which)
                .sorted(Comparator.comparing(
                        task -> places.getOrDefault(task.stage().folded(), places.size())))
                .map(task -> new Form.Choice(
                        task.id().value(), names.getOrDefault(task.stage().folded(), "") + ": " + task.title()))
                .toList();
    }

    public static List<Form.Choice> stages(Read read) {
        return StageStore.inOrder(read).stream()
                .map(Stored::value)
                .map(stage -> new Form.Choice(stage.id().value(), stage.name()))
                .toList();
    }

    /** The words of an enum in its order, as the files have them, with other labels where given. */
    public static <E extends Enum<E>> List<Form.Choice> words(Class<E> type, Map<E, String> labels) {
        return Arrays.stream(type.getEnumConstants())
                .map(one -> new Form.Choice(
                        Codec.word(one),
                        labels.getOrDefault(one, Codec.word(one).replace('-', ' '))))
                .toList();
    }

    /** "no. 47, Six mortises"; a standby by its title alone. */
    public static String title(Episode episode) {
        return episode.number().map(number -> "no.\u00a0" + number + ", ").orElse("") + episode.title();
    }
}
