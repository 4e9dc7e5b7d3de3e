package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;
import weekwright.web.Routes;
import weekwright.web.kit.PageName;

class CrewMarksPageTest {
    private static final Path TEMPLATES = Path.of("templates");
    private static final Pattern MACRO = Pattern.compile("(?s)\\{% macro (\\w+)\\(.*?\\{% endmacro %}");

    private static final ServerFixture SERVER = ServerFixture.smallWithTemplatesOnDisk();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static Document sheet(String of) {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/marks" + of);
        assertThat(page.status()).isEqualTo(200);
        return page.page();
    }

    @Test
    void it_stands_only_where_the_templates_are_read_from_disk() {
        assertThat(sheet("").title()).isEqualTo("All marks and fields · The weir");
        assertThat(SERVER.as("noor").get("/crew/marks").status()).isEqualTo(403);
        try (ServerFixture packed = ServerFixture.small()) {
            assertThat(packed.as("ilse").get("/crew/marks").status()).isEqualTo(404);
        }
    }

    /** A mark that is forgotten here is looked at by nobody: each is shown, or its set of fields is listed with a page that has it. */
    @Test
    void every_macro_of_the_parts_stands_on_it() throws IOException {
        Map<String, String> macros = new HashMap<>();
        for (Path file : files(TEMPLATES.resolve("parts"))) {
            Matcher found = MACRO.matcher(Files.readString(file));
            while (found.find()) {
                macros.put(found.group(1), found.group());
            }
        }
        assertThat(macros).containsKeys("ruleHead", "textField", "taskFields");
        List<String> standing = new ArrayList<>();
        called(Files.readString(TEMPLATES.resolve("crew/crew-marks.peb")), macros, standing);
        assertThat(standing).contains("ruleHead", "textField", "underField").doesNotContain("taskFields");
        Routes routes = new Routes(SERVER.app());
        for (var one : sheet("").select("[aria-labelledby=sets] li")) {
            String set = one.ownText();
            String at = one.selectFirst(".quiet").text();
            String text = at.equals("/public")
                    ? Files.readString(TEMPLATES.resolve("site/list.peb"))
                    : Files.readString(TEMPLATES.resolve(PageName.of(at).template() + ".peb"));
            assertThat(routes.pages().stream().map(Routes.Line::path).toList().contains(at) || at.equals("/public"))
                    .as(at)
                    .isTrue();
            assertThat(text).as(at).contains(set + "(");
            standing.add(set);
            called(macros.get(set), macros, standing);
        }
        assertThat(standing).containsAll(macros.keySet());
    }

    /** A macro that no page asks for is no part of the program. */
    @Test
    void every_macro_of_the_parts_is_used_by_another_page() throws IOException {
        StringBuilder pages = new StringBuilder();
        Map<String, Integer> macros = new HashMap<>();
        for (Path file : files(TEMPLATES)) {
            String text = Files.readString(file);
            if (!file.endsWith("crew-marks.peb")) {
                pages.append(text);
            }
            if (file.toString().contains("parts")) {
                MACRO.matcher(text).results().map(found -> found.group(1)).forEach(name -> macros.put(name, 0));
            }
        }
        assertThat(macros.keySet().stream()
                        .filter(name -> uses(name, pages.toString()) < 2)
                        .toList())
                .isEmpty();
    }

    @Test
    void it_shows_what_was_refused_what_is_long_what_is_empty_and_every_word_for_safety() {
        Document sheet = sheet("?on=night");
        assertThat(sheet.select(".marks").hasClass("on-night")).isTrue();
        assertThat(sheet("?on=%22x").select(".marks").attr("class")).isEqualTo("marks");
        assertThat(sheet.select("[aria-invalid=true]")).hasSize(3);
        assertThat(sheet.select(".trouble[role=alert] li")).hasSize(4);
        assertThat(sheet.select("#off").hasAttr("disabled")).isTrue();
        assertThat(sheet.select("option[selected]").eachText())
                .containsExactly("oak", "a tree that was felled (not in this list)");
        assertThat(sheet.select(".safety").eachText())
                .containsExactly("safe", "close", "at risk", "open", "bank", "out");
        assertThat(sheet.select(".empty-sheet h2").text()).isEqualTo("Nothing written yet");
        assertThat(sheet.select("figure.drawing svg")).hasSizeGreaterThan(9);
        List<String> ids = sheet.select("[id]").eachAttr("id");
        assertThat(ids).doesNotHaveDuplicates();
    }

    private static void called(String text, Map<String, String> macros, List<String> standing) {
        for (Map.Entry<String, String> macro : macros.entrySet()) {
            if (!standing.contains(macro.getKey()) && uses(macro.getKey(), text) > 0) {
                standing.add(macro.getKey());
                called(macro.getValue(), macros, standing);
            }
        }
    }

    private static long uses(String macro, String text) {
        return Pattern.compile("\\b" + macro + "\\(")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .count();
    }

    private static List<Path> files(Path under) throws IOException {
        try (Stream<Path> all = Files.walk(under)) {
            return all.filter(file -> file.toString().endsWith(".peb")).toList();
        }
    }
}
