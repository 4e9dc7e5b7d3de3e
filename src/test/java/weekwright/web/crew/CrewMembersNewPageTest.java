package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewMembersNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_person_is_added() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/members/new"))
                .with("name", "Bram")
                .with("mon", "25")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"25\" is over 24; write 0 to 24",
                        "\"Bram\" is the name of somebody else here; add a second name");
        Visitor.Reply twice = ilse.form(refused).with("mon", "8").send();
        assertThat(twice.troubles()).containsExactly("\"Bram\" is the name of somebody else here; add a second name");
        Visitor.Reply saved =
                ilse.follow(ilse.form(twice).with("name", "Pia Loft").send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Pia Loft is one of the crew now.");
        assertThat(ilse.get("/crew/members/pia/edit").status()).isEqualTo(200);
    }

    @Test
    void a_helper_adds_nobody() {
        assertThat(SERVER.as("noor").get("/crew/members/new").status()).isEqualTo(403);
    }
}
