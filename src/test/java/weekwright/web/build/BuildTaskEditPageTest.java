package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTaskEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_ring_of_links_is_refused_with_the_ring_written_out() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/weir.1/edit");
        Visitor.Reply refused = ilse.form(page).with("after.0", "gate.2").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("Dig the footing → Set the sill stones → Lime cures → Hang the gate → Dig the footing"
                        + " is a ring: each waits for the one before it; take one of these links out");
        assertThat(refused.page().select("[id=after.0] option[selected]").val()).isEqualTo("gate.2");
    }

    @Test
    void a_task_is_changed_and_its_links_stay_as_they_were_shown() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/build/tasks/gate.2/edit"))
                .with("title", "Hang and trim the gate")
                .with("wait_likely.0", "2")
                .send());
        assertThat(saved.page().select("h1").text()).isEqualTo("Hang and trim the gate");
        assertThat(saved.page()
                        .select("section[aria-labelledby=links-head] tbody tr")
                        .eachText())
                .anyMatch(row -> row.startsWith("Lime cures then 2 days"))
                .hasSize(3);
    }
}
