package weekwright.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;

class TemplatesTest {
    record View(String name, Optional<LocalDate> due, Form form) {}

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Templates templates = Templates.packed();

    private static Frame frame(String access, Optional<Frame.Flash> flash) {
        return new Frame(
                "Oak mill",
                "EUR",
                TODAY,
                "trial",
                access,
                Optional.of("Ilse"),
                "m1|ilse",
                7,
                "night",
                "token",
                "key",
                flash,
                Optional.of("An invented mill."),
                Optional.of(new Frame.Help("trial", "Trial")),
                List.of(new Frame.Cell("Seed", "1")),
                "/");
    }

    private Document page(Frame frame, View view) {
        return Jsoup.parse(templates.render("trial/trial", frame, view));
    }

    private Document page(View view) {
        return page(frame("crew", Optional.empty()), view);
    }

    private static Form form() {
        return Form.of(frame("crew", Optional.empty()));
    }

    @Test
    @Requirement({"1.2.1", "1.1.2"})
    void text_is_escaped_and_an_optional_is_unwrapped() {
        Document full = page(new View("<b>Oak & ash</b>", Optional.of(LocalDate.of(2026, 11, 27)), form()));
        assertThat(full.getElementById("name").html()).isEqualTo("&lt;b&gt;Oak &amp; ash&lt;/b&gt;");
        assertThat(full.getElementById("due").wholeText()).isEqualTo("Fri\u00a027\u00a0Nov");
        Document blank = page(new View("", Optional.empty(), form()));
        assertThat(blank.getElementById("due").text()).isEqualTo("never");
    }

    @Test
    void a_misspelt_name_fails_with_the_file_and_the_line() {
        View view = new View("", Optional.empty(), form());
        assertThatThrownBy(() -> templates.render("trial/misspelt", frame("crew", Optional.empty()), view))
                .hasMessageContaining("nmae")
                .hasMessageContaining("misspelt")
                .hasMessageContaining(":2)");
    }

    @Test
    void a_form_carries_its_keys_and_the_version_of_what_it_edits() {
        Form edit = new Form("token", "key", Optional.of(12L), Map.of(), Map.of());
        Document document = page(new View("", Optional.empty(), edit));
        assertThat(document.select("input[type=hidden]").eachAttr("name")).containsExactly("csrf", "answer", "version");
        assertThat(document.select("input[type=hidden]").eachAttr("value")).containsExactly("token", "key", "12");
        Document fresh = page(new View("", Optional.empty(), form()));
        assertThat(fresh.select("input[name=version]")).isEmpty();
    }

    @Test
    void a_refused_field_keeps_what_was_typed_and_says_what_is_wrong_to_eye_and_ear() {
        Form refused = new Form(
                "token", "key", Optional.empty(), Map.of("likely", List.of("3\"x")), Map.of("likely", "is not hours"));
        Document document = page(new View("", Optional.empty(), refused));
        Element field = document.getElementById("likely");
        assertThat(field.val()).isEqualTo("3\"x");
        assertThat(field.attr("aria-invalid")).isEqualTo("true");
        assertThat(field.attr("aria-describedby")).isEqualTo("likely-error likely-hint");
        assertThat(document.getElementById("likely-error").text()).isEqualTo("is not hours");
        assertThat(document.getElementById("likely-hint").text()).isEqualTo("as you think");
        assertThat(document.select("label[for=likely]").text()).isEqualTo("Likely");
        assertThat(document.select(".trouble[role=alert] a").attr("href")).isEqualTo("#likely");
        assertThat(document.select("[autofocus]").eachAttr("id")).containsExactly("likely");
    }

    @Test
    void where_no_field_is_wrong_by_itself_what_is_said_above_takes_the_focus() {
        Form refused =
                new Form("token", "key", Optional.empty(), Map.of(), Map.of("", "hours and days exclude each other"));
        Document document = page(new View("", Optional.empty(), refused));
        assertThat(document.select("[autofocus]")).hasSize(1);
        assertThat(document.select(".trouble[role=alert][tabindex=-1][autofocus]")
                        .text())
                .isEqualTo("Not saved yet. Nothing you typed is lost. hours and days exclude each other");
    }

    @Test
    void the_frame_shows_nav_sample_line_title_block_and_theme() {
        Document document = page(new View("", Optional.empty(), form()));
        assertThat(document.title()).isEqualTo("Trial · Oak mill");
        assertThat(document.select("html").attr("data-theme")).isEqualTo("night");
        assertThat(document.select("nav.sheets a").eachText())
                .containsExactly("Ahead", "Week", "Log", "Build", "Episodes", "Funds", "Notes");
        assertThat(document.select("nav.phone-foot > a").eachText()).containsExactly("Ahead", "Week", "Log", "Build");
        assertThat(document.select(".sample-notice").text()).isEqualTo("An invented mill.");
        assertThat(document.select(".title-block").text()).isEqualTo("Seed 1");
        assertThat(document.select("link[rel=stylesheet]").eachAttr("href"))
                .containsExactly("/css/base.css", "/css/trial.css");
    }

    @Test
    void the_public_is_shown_no_nav() {
        Document document = page(frame("public", Optional.empty()), new View("", Optional.empty(), form()));
        assertThat(document.select("nav")).isEmpty();
        assertThat(document.select(".project").attr("href")).isEqualTo("/ahead");
    }

    @Test
    void what_was_just_done_can_be_taken_back_by_a_form_with_keys_of_its_own() {
        Frame.Flash flash = new Frame.Flash(
                "Task deleted.", Optional.of(new Frame.Undo("/build/tasks/a", "Put it back", Map.of("do", "restore"))));
        Document document = page(frame("crew", Optional.of(flash)), new View("", Optional.empty(), form()));
        Element line = document.selectFirst(".flash");
        assertThat(line.select("p").text()).isEqualTo("Task deleted.");
        assertThat(line.select("form").attr("action")).isEqualTo("/build/tasks/a");
        assertThat(line.select("input").eachAttr("value")).containsExactly("token", "key-undo", "restore");
    }

    @Test
    void a_style_sheet_is_found_by_its_group_and_nothing_else_is() {
        assertThat(templates.css("base")).get().asString().contains("--madder").contains("@media print");
        assertThat(templates.css("trial")).contains(".trial { color: inherit; }\n");
        assertThat(templates.css("nothing")).isEmpty();
        assertThat(templates.css("../layout")).isEmpty();
        assertThat(templates.css("parts")).isEmpty();
    }

    /** A strict content policy allows no inline style, script or handler anywhere. */
    @Test
    @Requirement({"3.2.2"})
    void no_template_carries_inline_style_script_or_handler() throws Exception {
        try (Stream<Path> files = Files.walk(Path.of("templates"))) {
            List<Path> all = files.filter(p -> p.toString().endsWith(".peb")).toList();
            assertThat(all).isNotEmpty();
            for (Path file : all) {
                String text = Files.readString(file);
                assertThat(text)
                        .as(file.toString())
                        .doesNotContainPattern("(?i)\\sstyle\\s*=|<style|\\son[a-z]+\\s*=\\s*\"|javascript:");
                assertThat(text).as(file.toString()).doesNotContainPattern("(?i)<script(?![^>]*\\ssrc=)");
            }
        }
    }

    /** Who asks their device for no motion gets none (WCAG 2.2, 2.3.3): nothing moves but under a rule that can be taken back. */
    @Test
    void no_style_sheet_and_no_script_moves_anything() throws Exception {
        List<Path> all = new ArrayList<>();
        for (String folder : List.of("templates", "src/main/resources/static")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                files.filter(p -> p.toString().matches(".*\\.(css|js)")).forEach(all::add);
            }
        }
        assertThat(all).hasSizeGreaterThan(20);
        for (Path file : all) {
            String text = Files.readString(file)
                    .replaceAll("(?s)@media \\(prefers-reduced-motion: reduce\\) \\{\\s*\\*[^}]*}\\s*}", "");
            assertThat(text)
                    .as(file.toString())
                    .doesNotContainPattern("(?i)transition(-[a-z]+)?:|animation(-[a-z]+)?:|@keyframes|scroll-behavior|"
                            + "behavior: *[\"']smooth|\\.animate\\(");
        }
        assertThat(Files.readString(Path.of("templates/base.css")))
                .contains("@media (prefers-reduced-motion: reduce) {\n"
                        + "  *, ::before, ::after { transition: none !important; animation: none !important;"
                        + " scroll-behavior: auto !important; }");
    }
}
