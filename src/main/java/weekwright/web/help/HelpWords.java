package weekwright.web.help;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import weekwright.render.Templates;
import weekwright.web.kit.Access;

/**
 * The words of the program, as in {@code templates/help/words.txt}: a line each, {@code word | who | topics | meaning},
 * sorted by the word; who is {@code all}, or {@code crew} for what helpers do not meet.
 */
final class HelpWords {
    /**
     * A word and what it means.
     *
     * @param topics the pages of the help whose sheets use it
     */
    public record Word(String word, List<String> topics, String meaning) {
        /** Its place on the page: {@code story-bank}. */
        public String anchor() {
            return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        }
    }

    private HelpWords() {}

    /** Those that somebody with this access meets. */
    static List<Word> of(Templates templates, Access access) {
        return templates
                .text("help/words.txt")
                .orElseThrow(() -> new IllegalStateException("no help/words.txt"))
                .lines()
                .map(line -> line.split(" \\| ", 4))
                .filter(parts -> access == Access.CREW || parts[1].equals("all"))
                .map(parts -> new Word(parts[0], readable(parts[2], access), parts[3]))
                .toList();
    }

    private static List<String> readable(String topics, Access access) {
        return Arrays.stream(topics.split(" "))
                .filter(name -> HelpTopics.named(name)
                        .filter(topic -> access.covers(topic.access()))
                        .isPresent())
                .toList();
    }
}
