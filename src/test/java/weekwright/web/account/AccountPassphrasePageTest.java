package weekwright.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** OWASP ASVS 5.0.0, 6.2.2 and 6.2.3: the old one is asked; 7.4.3: the other sessions end. */
class AccountPassphrasePageTest {
    private static final String OLD = "oak pegs and tallow";
    private static final String NEW = "three wet felt hats";

    private static Visitor.Reply change(Visitor visitor, String old) {
        return visitor.form(visitor.get("/account/passphrase"))
                .with("old", old)
                .with("passphrase", NEW)
                .with("again", NEW)
                .send();
    }

    @Test
    @Requirement({"6.2.2", "6.2.3", "7.4.3", "7.5.1"})
    void a_new_passphrase_needs_the_old_one_and_ends_every_other_session() {
        try (ServerFixture server = ServerFixture.small()) {
            server.giveLogIn("ilse", OLD);
            Visitor here = server.loggedIn("ilse", OLD);
            Visitor there = server.loggedIn("ilse", OLD);
            Visitor.Reply wrong = change(here, "");
            assertThat(wrong.status()).isEqualTo(422);
            assertThat(wrong.troubles()).containsExactly("is not your passphrase; type the one you log in with now");
            assertThat(there.get("/week").status()).isEqualTo(200);
            String before = here.cookie("session");
            Visitor.Reply changed = change(here, OLD);
            assertThat(changed.to()).isEqualTo("/account");
            assertThat(here.cookie("session")).isNotEqualTo(before);
            assertThat(here.follow(changed).page().select(".flash").text())
                    .isEqualTo("The new passphrase holds. Every other device of yours is logged out.");
            assertThat(there.get("/week").status()).isEqualTo(303);
            Visitor other = server.stranger();
            assertThat(other.form(other.get("/account/log-in"))
                            .with("name", "ilse")
                            .with("passphrase", OLD)
                            .send()
                            .status())
                    .isEqualTo(401);
        }
    }

    @Test
    void as_long_as_nobody_has_a_log_in_it_leads_to_the_first_one() {
        try (ServerFixture server = ServerFixture.small()) {
            assertThat(server.as("ilse").get("/account/passphrase").to()).isEqualTo("/account/start");
        }
    }
}
