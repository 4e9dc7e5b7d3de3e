package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewIncidentsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_incident_is_refused_then_written_down() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/incidents/new"))
                .with("date", "2026-11-26")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write what happened",
                        "\"26 November 2026\" is after today, 25 November 2026; write the day it happened");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("date", "2026-11-25")
                .with("what", "A stone slid off the barrow")
                .with("near_miss", "yes")
                .with("changed", "Side boards on the barrow")
                .send());
        assertThat(saved.page()
                        .select("[aria-labelledby=incidents-head] tbody tr")
                        .text())
                .isEqualTo("Wed 25 Nov A stone slid off the barrow near miss Side boards on the barrow");
    }
}
