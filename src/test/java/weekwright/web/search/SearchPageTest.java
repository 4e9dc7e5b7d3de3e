package weekwright.web.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class SearchPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static Visitor.Reply search(Visitor visitor, String words) {
        return visitor.get("/search?words=" + URLEncoder.encode(words, StandardCharsets.UTF_8));
    }

    @Test
    void things_are_found_by_kind_with_the_words_marked() {
        Visitor.Reply page = search(SERVER.as("ilse"), "oak boa");
        assertThat(page.page().select("main section h2").eachText()).containsExactly("Materials");
        assertThat(page.page().select("main section li a").eachText()).containsExactly("Oak boards");
        assertThat(page.page().select("main section li a").attr("href")).isEqualTo("/build/materials/mat.1");
        assertThat(page.page().select("mark").eachText()).containsExactly("Oak", "boards");
        Visitor.Reply episode = search(SERVER.as("ilse"), "SILL");
        assertThat(episode.page().select("main section li a").eachAttr("href")).contains("/episodes/ep.11");
    }

    @Test
    void accents_do_not_matter_and_what_changed_is_found_by_its_new_name_alone() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/equipment/new"))
                .with("name", "Ch\u00e8vre \u00e0 trois pieds")
                .send());
        assertThat(search(ilse, "chevre").page().select("main section li a").eachText())
                .containsExactly("Ch\u00e8vre \u00e0 trois pieds");
        String address =
                search(ilse, "chevre").page().select("main section li a").attr("href");
        ilse.follow(ilse.form(ilse.get(address), "form.form")
                .with("name", "Shear legs")
                .send());
        assertThat(search(ilse, "chevre").text()).contains("Nothing has all of these words.");
        assertThat(search(ilse, "shear").page().select("main section li a").eachText())
                .containsExactly("Shear legs");
        ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(search(ilse, "shear").text()).contains("Nothing has all of these words.");
    }

    @Test
    void around_the_words_of_a_note_stand_no_signs_of_its_markdown() {
        Visitor ilse = SERVER.as("ilse");
        ilse.form(ilse.get("/notes/new"), "form:has(#text)")
                .with("title", "Hours of a week")
                .with(
                        "text",
                        "## Hours\n\n| What | Hours |\n| --- | ---: |\n| [Set the sill stones](task:weir.2) | 4 |\n"
                                + "| **Together** | **4** |\n\n- [x] wedged, *peeled* and gudgeoned")
                .send();
        assertThat(search(ilse, "together")
                        .page()
                        .select("main section li:has(a[href^=/notes/])")
                        .text())
                .isEqualTo("Hours of a week Hours What Hours Set the sill stones 4 Together 4 wedged, peeled…");
        assertThat(search(ilse, "gudgeoned")
                        .page()
                        .select("main section li:has(a[href^=/notes/])")
                        .text())
                .endsWith("4 Together 4 wedged, peeled and gudgeoned");
    }

    @Test
    void a_helper_finds_tasks_and_stages_alone() {
        assertThat(search(SERVER.as("noor"), "boards")
                        .page()
                        .select("main section h2")
                        .eachText())
                .isSubsetOf("Tasks", "Stages");
        assertThat(search(SERVER.as("noor"), "sawmill").text()).contains("Nothing has all of these words.");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"",
                "oak\"",
                "oak OR",
                "NEAR(oak, 2)",
                "title:oak",
                "-oak",
                "*",
                "^oak",
                "oak*",
                "(",
                "\u0000oak",
                "'; DROP TABLE tasks; --",
                "\ud83e\udeb5",
                "%",
                "a AND NOT b"
            })
    @Requirement({"1.2.4"})
    void signs_are_no_language_of_their_own(String words) {
        assertThat(search(SERVER.as("ilse"), words).status()).isEqualTo(200);
    }

    @Test
    void ten_thousand_letters_are_answered() {
        assertThat(search(SERVER.as("ilse"), "oak ".repeat(1_500)).status()).isIn(200, 414, 431);
    }

    @Test
    void without_words_it_says_where_it_looks() {
        assertThat(SERVER.as("ilse")
                        .get("/search")
                        .page()
                        .select("main p.quiet")
                        .text())
                .startsWith("In titles and texts of tasks, stages, build notes,");
    }
}
