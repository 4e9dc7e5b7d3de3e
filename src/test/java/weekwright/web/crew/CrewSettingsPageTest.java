package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.SettingsStore;
import weekwright.history.Labels;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewSettingsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void every_key_of_every_table_is_there_with_a_sentence() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/settings");
        List<String> keys = new ArrayList<>();
        for (var table : List.of(
                SettingsStore.PROJECT,
                SettingsStore.PUBLISHING,
                SettingsStore.WEATHER,
                SettingsStore.ORDERS,
                SettingsStore.MONEY,
                SettingsStore.EMERGENCY,
                SettingsStore.MODEL,
                SettingsStore.BUILD_LOG)) {
            table.shape().names().forEach(key -> keys.add(table.name() + "-" + key));
        }
        assertThat(page.page().select("section.part input[type=text]").eachAttr("id"))
                .containsExactlyElementsOf(keys);
        assertThat(page.page().select("section.part .hint").eachText())
                .doesNotContain("")
                .hasSameSizeAs(keys);
    }

    @Test
    void a_table_is_saved_and_what_is_wrong_is_told_at_its_field() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/crew/settings");
        Visitor.Reply refused = ilse.form(page, "form:has(button[value=publishing])")
                .with("weekday", "someday")
                .with("early_days", "-1")
                .press("publishing");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[id=publishing-weekday]").val()).isEqualTo("someday");
        assertThat(refused.troubles())
                .containsExactly(
                        "\"-1\" is under 0; write 0 to 365",
                        "\"someday\" is not a day of the week; write one of monday, sunday, saturday");
        Visitor.Reply saved = ilse.follow(ilse.form(refused, "form:has(button[value=publishing])")
                .with("weekday", "Thursday")
                .with("early_days", "2")
                .press("publishing"));
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Settings kept: Publishing.");
        assertThat(SERVER.db().read(SettingsStore::get).earlyDays()).isEqualTo(2);
    }

    @Test
    void notes_are_set_with_the_quotation_marks_chosen_here() {
        Visitor ilse = SERVER.as("ilse");
        String text = "She said \"the 'old' race\".";
        String note = ilse.form(ilse.get("/notes/new"))
                .with("title", "Said")
                .with("text", text)
                .send()
                .to();
        assertThat(ilse.get(note).page().select("article > p").last().text()).isEqualTo(text);
        Visitor.Reply kept = ilse.form(ilse.get("/crew/settings"), "form:has(button[value=project])")
                .with("quotes", "German")
                .press("project");
        assertThat(kept.troubles()).isEmpty();
        assertThat(ilse.follow(kept).page().select(".flash p").text()).isEqualTo("Settings kept: The project.");
        assertThat(ilse.get(note).page().select("article > p").last().text()).isEqualTo("She said „the ‚old‘ race“.");
        assertThat(ilse.form(ilse.get(note + "/edit")).value("text").strip()).isEqualTo(text);
    }

    @Test
    void the_currency_is_not_changed_under_the_amounts() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/settings"), "form:has(button[value=project])")
                .with("currency", "JPY")
                .press("project");
        assertThat(refused.troubles())
                .containsExactly("\"JPY\" is not EUR, in which all amounts here stand; export the project, change it"
                        + " there, and import it again");
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(SERVER.as("noor").get("/crew/settings").status()).isEqualTo(403);
    }

    @Test
    void the_labels_are_those_by_which_the_history_calls_the_keys() {
        try (ServerFixture server = ServerFixture.small()) {
            for (var field : server.as("ilse").get("/crew/settings").page().select(".field label")) {
                String[] names = field.attr("for").split("-", 2);
                assertThat(field.text()).isEqualTo(Labels.of(names[0], names[1]));
            }
        }
    }

    @Test
    void the_first_day_is_not_moved_ahead_of_today() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/settings"), "form:has(button[value=project])")
                .with("started", "2026-11-26")
                .press("project");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"26 November 2026\" is after today; write today or the day it began");
    }
}
