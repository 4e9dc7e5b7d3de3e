package weekwright.web.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The names that follow from a page's address: drop the ids, make singular the segment an id follows, join. So
 * {@code /build/tasks/{id}/edit} is {@code weekwright.web.build.BuildTaskEditPage} with the template
 * {@code build/build-task-edit}.
 *
 * @param group the page group: first segment, package and folder of templates
 * @param words the joined words in lower case: build, task, edit
 */
public record PageName(String group, List<String> words) {

    public static PageName of(String path) {
        List<String> segments = List.of(path.substring(1).split("/"));
        List<String> words = new ArrayList<>();
        for (int i = 0; i < segments.size(); i++) {
            String segment = segments.get(i);
            if (segment.startsWith("{")) {
                continue;
            }
            boolean ofOne = i + 1 < segments.size() && segments.get(i + 1).startsWith("{");
            words.addAll(List.of((ofOne ? singular(segment) : segment).split("-")));
        }
        return new PageName(segments.get(0), List.copyOf(words));
    }

    private static String singular(String word) {
        return word.endsWith("ies")
                ? word.substring(0, word.length() - 3) + "y"
                : word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
    }

    /** {@code weekwright.web.build.BuildTaskEditPage}. */
    public String className() {
        StringBuilder name = new StringBuilder("weekwright.web." + group + ".");
        words.forEach(word ->
                name.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1)));
        return name.append("Page").toString();
    }

    /** {@code build/build-task-edit}. */
    public String template() {
        return group + "/" + String.join("-", words);
    }
}
