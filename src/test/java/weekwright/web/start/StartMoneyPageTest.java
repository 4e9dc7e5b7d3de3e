package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class StartMoneyPageTest {
    private final ServerFixture server = ServerFixture.small();

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void levels_tax_and_wet_days_are_kept() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply saved = ilse.form(ilse.get("/start/money"))
                .with("level1", "Beam")
                .with("level1_amount", "12,50")
                .with("level1_supporters", "20")
                .with("put_by", "15")
                .with("winter", "9")
                .with("summer", "3")
                .send();
        assertThat(saved.to()).isEqualTo("/ahead");
        assertThat(server.db().read(PledgeLevelStore.TABLE::values))
                .extracting(level -> level.id() + " " + level.amount().minor())
                .containsExactly("plank 500", "beam 1250");
        Settings settings = server.db().read(SettingsStore::get);
        assertThat(settings.putByPercent().text()).isEqualTo("15");
        assertThat(settings.weather().lost().list())
                .containsExactly("0.3", "0.3", "0.3", "0.1", "0.1", "0.1", "0.1", "0.1", "0.1", "0.3", "0.3", "0.3");
        assertThat(ilse.form(ilse.get("/start/money")).value("winter")).isEqualTo("9");
    }

    @Test
    void what_is_wrong_is_told_at_its_field() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/start/money"))
                .with("level1", "Beam")
                .with("level2_amount", "3")
                .with("put_by", "120")
                .with("winter", "31")
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write what a supporter of this level pays",
                        "has no name; write what the level is called",
                        "\"120\" is not 0 to 100; write a percent",
                        "\"31\" is not 0 to 30; write days of a month");
        assertThat(refused.page().select("#level1").val()).isEqualTo("Beam");
        assertThat(refused.page().select("[autofocus]").eachAttr("id")).containsExactly("level1_amount");
        assertThat(refused.page().select("[role=alert] a").eachAttr("href"))
                .containsExactly("#level1_amount", "#level2", "#put_by", "#winter");
        assertThat(refused.page().select("#winter").attr("aria-describedby")).startsWith("winter-error");
    }

    @Test
    void twelve_shares_of_the_crews_own_stay_where_the_days_shown_are_left_as_they_are() {
        try (ServerFixture sample = ServerFixture.sample()) {
            Visitor ilse = sample.as("ilse");
            var before = sample.db().read(SettingsStore::get).weather();
            assertThat(ilse.form(ilse.get("/start/money")).send().to()).isEqualTo("/ahead");
            assertThat(sample.db().read(SettingsStore::get).weather()).isEqualTo(before);
        }
    }
}
