package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.SettingsStore;
import weekwright.episodes.RollStore;
import weekwright.files.ExportProject;
import weekwright.forecast.ForecastJson;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.InputsBuilder;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeCreditsPageTest {
    private static final String NAME = "Quillwort Ninefinger";
    private ServerFixture server;
    private Visitor ilse;

    @TempDir
    private Path folder;

    @BeforeEach
    void open() {
        server = ServerFixture.sample();
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void givers_of_the_tasks_it_tells_are_gathered_with_the_day_of_the_gift() {
        Visitor.Reply page = ilse.get("/episodes/e54/credits");
        assertThat(page.page().select("section:has(#givers-head) li").eachText())
                .containsExactly("Coping of the leat: the parish given 12 September");
        assertThat(page.page().select("#text").text()).isEqualTo("Coping of the leat: the parish");
        assertThat(ilse.get("/episodes/e54")
                        .page()
                        .select("section:has(#credits-head) li")
                        .eachText())
                .containsExactly("Coping of the leat: the parish given 12 Sep");
        assertThat(ilse.get("/episodes/sb1/credits").text()).contains("None of the material of its tasks was given.");
    }

    private Visitor.Reply pasted() {
        return ilse.follow(ilse.form(ilse.get("/episodes/e54/credits"), "form.form")
                .with("names", NAME + "\nSomebody else")
                .send());
    }

    @Test
    void a_roll_is_pasted_changed_and_taken_away() {
        Visitor.Reply kept = pasted();
        assertThat(kept.page().select(".flash p").text()).isEqualTo("The roll is saved with the episode.");
        assertThat(kept.page().select("#names").text()).isEqualTo(NAME + "\nSomebody else");
        Visitor.Reply gone =
                ilse.follow(ilse.form(kept, "form.form").with("names", " ").send());
        assertThat(gone.page().select(".flash p").text()).isEqualTo("There is no roll any more.");
        assertThat(server.db().read(RollStore.TABLE::count)).isZero();
        Visitor.Reply refused = ilse.form(ilse.get("/episodes/e54/credits"), "form.form")
                .with("names", "x".repeat(20_001))
                .send();
        assertThat(refused.troubles())
                .containsExactly("is longer than 20000 characters; paste the names alone, a line each");
    }

    @Test
    void a_roll_is_in_no_file_no_public_page_no_feed_no_search_and_no_json() throws Exception {
        pasted();
        Path files = folder.resolve("files");
        ExportProject.into(server.db(), server.app().folder(), files);
        try (Stream<Path> all = Files.walk(files)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                        .as(file.toString())
                        .doesNotContain("Quillwort");
            }
        }
        for (String path : List.of(
                "/search?words=Quillwort", "/public", "/public/feed.xml", "/ahead", "/week", "/episodes", "/notes")) {
            assertThat(ilse.get(path).body().replace("value=\"Quillwort\"", ""))
                    .as(path)
                    .doesNotContain("Quillwort");
        }
        Visitor.Reply calendars = ilse.follow(ilse.form(ilse.get("/crew/calendars"), "form:has(input[name=who])")
                .press("renew"));
        List<String> feeds = Pattern.compile("/calendars/[^ ]+\\.ics")
                .matcher(calendars.page().select(".flash p").text())
                .results()
                .map(found -> found.group())
                .toList();
        assertThat(feeds).isNotEmpty();
        for (String feed : feeds) {
            assertThat(server.stranger().get(feed).body().replace("\r\n ", ""))
                    .as(feed)
                    .startsWith("BEGIN:VCALENDAR")
                    .doesNotContain("Quillwort");
        }
        var basis = server.db().read(read -> InputsBuilder.build(read, LocalDate.of(2026, 11, 25)));
        String json = new ForecastJson(server.db().read(SettingsStore::get).moneyDigits())
                .text(ForecastRun.run(basis, 10, 1, 1, done -> true).forecast());
        assertThat(json).doesNotContain("Quillwort");
        assertThat(ForecastJson.packed(basis.inputs())).isNotEmpty();
        assertThat(basis.inputs().toString()).doesNotContain("Quillwort");
    }
}
