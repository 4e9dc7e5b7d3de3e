package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewLogInsPageTest {
    private static final String ILSES = "oak pegs and tallow";
    private static final String NOORS = "three wet felt hats";
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.small();
        server.giveLogIn("ilse", ILSES);
        server.giveLogIn("noor", NOORS);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    private static Visitor.Reply press(Visitor visitor, String who, String act) {
        return visitor.form(visitor.get("/crew/log-ins")).with("who", who).press(act);
    }

    @Test
    void a_start_code_is_shown_once_and_lets_its_person_in() {
        Visitor ilse = server.loggedIn("ilse", ILSES);
        String said =
                ilse.follow(press(ilse, "bram", "code")).page().select(".flash").text();
        assertThat(said)
                .matches("Start code of Bram: [a-z2-9-]{31}\\. Good once, for seven days, at /account/start\\. Write it"
                        + " down: it is not shown again\\.");
        String code = said.replaceFirst("Start code of Bram: ", "").substring(0, 31);
        assertThat(ilse.get("/crew/log-ins").body()).doesNotContain(code);
        Visitor bram = server.stranger();
        assertThat(bram.form(bram.get("/account/start"))
                        .with("name", "bram")
                        .with("code", code)
                        .with("passphrase", "a cart of dry moss")
                        .with("again", "a cart of dry moss")
                        .send()
                        .to())
                .isEqualTo("/ahead");
    }

    @Test
    @Requirement({"7.4.2", "7.4.5"})
    void a_log_in_that_is_ended_logs_its_person_out_at_once() {
        Visitor ilse = server.loggedIn("ilse", ILSES);
        Visitor noor = server.loggedIn("noor", NOORS);
        assertThat(noor.get("/week").status()).isEqualTo(200);
        assertThat(ilse.follow(press(ilse, "noor", "end"))
                        .page()
                        .select(".flash")
                        .text())
                .isEqualTo("Noor has no log-in any more.");
        assertThat(noor.get("/week").to()).isEqualTo("/account/log-in?to=/week");
        server.giveLogIn("noor", NOORS);
    }

    @Test
    void ones_own_log_in_and_a_helper_are_refused() {
        Visitor ilse = server.loggedIn("ilse", ILSES);
        assertThat(press(ilse, "ilse", "end").troubles())
                .containsExactly("this is your own log-in; change your passphrase on your own page");
        assertThat(server.loggedIn("noor", NOORS).get("/crew/log-ins").status()).isEqualTo(403);
    }

    @Test
    void the_address_of_somebodys_own_days_is_made_renewed_and_ended() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply made = ilse.follow(ilse.form(ilse.get("/crew/log-ins"), "tr:contains(Noor) form.own-days")
                    .press("week"));
            String said = made.page().select(".flash p").text();
            assertThat(said)
                    .matches("The own days of Noor: this server's address, then /come/[A-Za-z0-9_-]{43}\\. Send it to"
                            + " nobody else; it is not shown again, and one made earlier leads nowhere now\\.");
            String address = said.replaceAll(".*(/come/[A-Za-z0-9_-]{43}).*", "$1");
            assertThat(own.stranger().get(address).status()).isEqualTo(200);
            Visitor.Reply ended = ilse.follow(
                    ilse.form(made, "tr:contains(Noor) form.own-days").press("end-week"));
            assertThat(ended.page().select(".flash p").text())
                    .isEqualTo("The address of Noor's own days leads nowhere any more.");
            assertThat(own.stranger().get(address).status()).isEqualTo(404);
        }
    }
}
