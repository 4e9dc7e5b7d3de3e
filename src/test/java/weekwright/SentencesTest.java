package weekwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds of every sentence of the program, wherever it stands. */
class SentencesTest {
    private static final Path TEMPLATES = Path.of("templates");
    private static final Path CLASSES = Path.of("src/main/java");
    private static final Path SCRIPTS = Path.of("src/main/resources/static");
    private static final Path WORDS = Path.of("src/main/resources/words");

    /**
     * Words of software teams and of other programs' interfaces. A board is timber here and a card is the camera's, so these two
     * are looked at by people.
     */
    private static final Pattern NOT_OURS = Pattern.compile(
            "\\b(sprints?|story points?|backlogs?|epics?|tickets?|swim ?lanes?|burn-?downs?|workspaces?|dashboards?|widgets?"
                    + "|kanban|gantt|milestones?|assignees?|deadlines?|users?|uploads?|uploaded|uploading|sync|synced|todos?)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    /** A number of a page and its noun, which is wrong for 1: the filters count and counted choose the noun. */
    private static final Pattern NOUN_BY_HAND =
            Pattern.compile("(\\}\\} (hours|days|weeks|months|minutes|shots|tasks|stages|"
                    + "episodes|notes|pictures|people|pieces|lines|orders|gifts|things|build notes)\\b"
                    + "|\\? ?\"(\\w+)\" ?: ?\"\\3(s|es)\")");

    @Test
    void no_sentence_takes_a_word_of_software_teams() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".peb", ".md", ".txt")) {
            look(file, shown(Files.readString(file)), found);
        }
        for (Path file : files(WORDS, ".txt")) {
            look(file, Files.readString(file), found);
        }
        for (Path folder : List.of(CLASSES, SCRIPTS)) {
            for (Path file : files(folder, ".java", ".js")) {
                look(file, literals(Files.readString(file)), found);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void the_look_out_for_such_words_finds_them() {
        List<String> found = new ArrayList<>();
        look(Path.of("a.peb"), shown("<p class=\"card\">Your backlog holds {{ n }} tickets.</p>"), found);
        look(Path.of("B.java"), literals("say(\"Every user sees it\"); // a user"), found);
        look(Path.of("c.peb"), shown("{# the user #}<p title=\"Twelve boards of oak\">A card is full.</p>"), found);
        assertThat(found).containsExactly("a.peb: backlog", "a.peb: tickets", "B.java: user");
    }

    @Test
    void no_template_chooses_the_noun_of_a_number_by_itself() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".peb")) {
            Matcher by = NOUN_BY_HAND.matcher(Files.readString(file));
            while (by.find()) {
                found.add(file + ": " + by.group());
            }
        }
        assertThat(found).isEmpty();
        assertThat(NOUN_BY_HAND.matcher("{{ page.notes }} build notes stay").find())
                .isTrue();
        assertThat(NOUN_BY_HAND.matcher("n == 1 ? \"note\" : \"notes\"").find()).isTrue();
    }

    private static void look(Path file, String text, List<String> found) {
        Matcher word = NOT_OURS.matcher(text);
        while (word.find()) {
            found.add(file + ": " + word.group());
        }
    }

    /** A template without its remarks, its logic and what stands in its tags, but for the words that are shown from there. */
    private static String shown(String template) {
        String text = template.replaceAll("(?s)\\{#.*?#\\}", " ");
        StringBuilder shown = new StringBuilder();
        Matcher literal = Pattern.compile("(?s)\\{\\{(.*?)\\}\\}").matcher(text);
        while (literal.find()) {
            shown.append(literals(literal.group(1))).append('\n');
        }
        Matcher told = Pattern.compile("(?:title|aria-label|alt|placeholder|data-label)=\"([^\"]*)\"")
                .matcher(text);
        while (told.find()) {
            shown.append(told.group(1)).append('\n');
        }
        return shown.append(
                        text.replaceAll("(?s)\\{\\{.*?\\}\\}|\\{%.*?%\\}", " ").replaceAll("(?s)<[^<>]*>", " "))
                .toString();
    }

    /** The texts of a class or a script that have a space in them: sentences and parts of such. */
    private static String literals(String code) {
        String without = code.replaceAll("(?s)/\\*.*?\\*/", " ").replaceAll("(?m)(^|\\s)//.*$", " ");
        return LITERAL.matcher(without)
                .results()
                .map(found -> found.group(1))
                .filter(text -> text.contains(" "))
                .filter(text -> !text.startsWith("SELECT ") && !text.contains("class="))
                .collect(Collectors.joining("\n"));
    }

    private static Set<Path> files(Path under, String... endings) throws IOException {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(file -> Stream.of(endings)
                            .anyMatch(ending -> file.toString().endsWith(ending)))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
