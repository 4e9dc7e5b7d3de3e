package weekwright.web.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.render.Templates;
import weekwright.testkit.ServerFixture;
import weekwright.web.kit.Access;

class HelpWordsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final List<HelpWords.Word> WORDS = HelpWords.of(Templates.packed(), Access.CREW);
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_words_stand_in_the_order_of_the_alphabet_each_once_with_its_place() {
        Document page = SERVER.as("ilse").get("/help/words").page();
        List<String> shown = page.select("dl.words dt").eachText();
        assertThat(shown)
                .hasSizeGreaterThan(70)
                .doesNotHaveDuplicates()
                .isSortedAccordingTo(Comparator.comparing(word -> word.toLowerCase(Locale.ROOT)));
        assertThat(page.select("dl.words > div[id]").eachAttr("id"))
                .hasSameSizeAs(shown)
                .doesNotHaveDuplicates()
                .contains("story-bank");
        assertThat(page.getElementById("story-bank").select("dd").text())
                .startsWith("Finished minutes that filmed and untold work can still give.");
    }

    @Test
    void every_word_is_a_line_and_belongs_to_pages_of_the_help_that_are_there() {
        assertThat(WORDS).allSatisfy(word -> {
            assertThat(word.meaning()).as(word.word()).endsWith(".").hasSizeLessThan(130);
            assertThat(word.topics())
                    .as(word.word())
                    .isNotEmpty()
                    .allMatch(topic -> HelpTopics.named(topic).isPresent());
        });
    }

    @Test
    void every_page_of_the_help_but_the_search_names_words_of_its_sheets() {
        assertThat(HelpTopics.readableBy(Access.CREW))
                .extracting(HelpTopics.Topic::name)
                .filteredOn(
                        name -> WORDS.stream().noneMatch(word -> word.topics().contains(name)))
                .containsExactly("log-ins", "files", "history", "search", "start");
    }

    /** A word that no sheet says is explained for nothing. */
    @Test
    void every_word_is_used_by_the_sheets() throws IOException {
        String sheets = said();
        List<String> unused = WORDS.stream()
                .flatMap(word -> Stream.of(word.word().split("[,:] ")))
                .filter(word -> !Pattern.compile("\\b" + Pattern.quote(word.toLowerCase(Locale.ROOT)) + "(s|es)?\\b")
                        .matcher(sheets)
                        .find())
                .toList();
        assertThat(unused).isEmpty();
    }

    /** The words of the templates and of the sentences that are put together in code, in lower case. */
    private static String said() throws IOException {
        StringBuilder all = new StringBuilder();
        for (Path file : files(Path.of("templates"), ".peb")) {
            if (!file.startsWith(Path.of("templates/help"))) {
                all.append(Files.readString(file)).append('\n');
            }
        }
        for (Path file : files(Path.of("src/main/java/weekwright"), ".java")) {
            if (!file.startsWith(Path.of("src/main/java/weekwright/web/help"))) {
                LITERAL.matcher(Files.readString(file))
                        .results()
                        .forEach(found -> all.append(found.group(1)).append('\n'));
            }
        }
        return all.toString().toLowerCase(Locale.ROOT);
    }

    private static List<Path> files(Path under, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(file -> file.toString().endsWith(ending)).collect(Collectors.toList());
        }
    }

    @Test
    void a_helper_finds_the_words_of_the_own_sheets_alone_and_links_to_no_other() {
        Document page = SERVER.as("noor").get("/help/words").page();
        assertThat(page.select("dl.words dt").eachText())
                .contains("company", "shot", "wait")
                .doesNotContain("reserve", "pledge", "runway", "deposit");
        for (String to : page.select("main dl a").eachAttr("href")) {
            assertThat(SERVER.as("noor").get(to).status()).as(to).isEqualTo(200);
        }
    }
}
