package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewStoppedNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stopped_day_is_refused_then_kept() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/stopped/new"))
                .with("date", "2026-12-01")
                .with("reason", "weather")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"1 December 2026\" is after today, 25 November 2026; enter days off ahead under Crew,"
                                + " stopped days once they have been");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("date", "2026-11-24")
                .with("task", "weir.2")
                .with("hours", "3")
                .send());
        assertThat(saved.page().select("section:has(#stopped-head) tbody tr").text())
                .startsWith("Tue 24 Nov Everybody, 3 hours weather, ");
    }
}
