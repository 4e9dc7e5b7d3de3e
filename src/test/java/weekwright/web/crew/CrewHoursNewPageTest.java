package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewHoursNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void other_hours_are_refused_then_kept() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused =
                ilse.form(ilse.get("/crew/hours/new")).with("mon", "-2").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly("crew", "mon");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("crew", "bram")
                .with("from", "2027-04-01")
                .with("to", "2027-09-30")
                .with("mon", "9,5")
                .with("tue", "9:30")
                .send());
        assertThat(saved.page().select("section:has(#hours-head) tbody tr").text())
                .isEqualTo("from 1 Apr 2027 to 30 Sep 2027 Bram, 19 hours a week Mon 9½, Tue 9½");
    }
}
