package weekwright.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.account.Entrance;
import weekwright.base.Id;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Numbers in brackets are those of OWASP ASVS 5.0.0: [6.4.1, 6.5.1 to 6.5.4] for all of it. */
class AccountStartPageTest {
    private static final String ILSES = "oak pegs and tallow";

    private final SettableClock clock = new SettableClock(ServerFixture.CLOCK);
    private ServerFixture server;

    @BeforeEach
    void start() {
        server = ServerFixture.under(clock, SmallProject::fill);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Visitor.Reply set(Visitor visitor, String name, String code, String passphrase) {
        return visitor.form(visitor.get("/account/start"))
                .with("name", name)
                .with("code", code)
                .with("passphrase", passphrase)
                .with("again", passphrase)
                .send();
    }

    @Test
    @Requirement({"6.4.1", "6.5.1", "6.5.2"})
    void the_consoles_code_makes_the_first_log_in_once() {
        String code = server.app().entrance().openFirstRun();
        assertThat(code).matches("([a-hjkmnp-z2-9]{7}-){3}[a-hjkmnp-z2-9]{7}");
        Visitor ilse = server.stranger();
        assertThat(set(ilse, "ilse", "wrong", ILSES).troubles())
                .containsExactly("Name and code do not belong together, or the code was used or is too old.");
        assertThat(set(ilse, "ilse", code.toUpperCase(Locale.ROOT), ILSES).to()).isEqualTo("/ahead");
        assertThat(ilse.get("/week").status()).isEqualTo(200);
        assertThat(set(server.stranger(), "bram", code, "three wet felt hats").status())
                .isEqualTo(401);
    }

    @Test
    @Requirement({"6.5.4"})
    void the_consoles_code_is_good_for_half_an_hour_and_for_the_crew_alone() {
        String code = server.app().entrance().openFirstRun();
        assertThat(set(server.stranger(), "noor", code, ILSES).troubles())
                .containsExactly("The first log-in belongs to somebody with access crew.");
        clock.step(Duration.ofMinutes(30));
        assertThat(set(server.stranger(), "ilse", code, ILSES).status()).isEqualTo(401);
    }

    @Test
    @Requirement({"6.5.3", "6.5.4", "2.3.1"})
    void a_start_code_is_for_one_person_once_and_for_seven_days() {
        server.giveLogIn("ilse", ILSES);
        String code = server.db().write("ilse", write -> Entrance.giveCode(write, new Id("noor")));
        assertThat(set(server.stranger(), "bram", code, "three wet felt hats").status())
                .isEqualTo(401);
        Visitor noor = server.stranger();
        assertThat(set(noor, "noor", code, "three wet felt hats").to()).isEqualTo("/week");
        assertThat(noor.get("/week").status()).isEqualTo(200);
        assertThat(set(server.stranger(), "noor", code, "four dry felt hats").status())
                .isEqualTo(401);
        String other = server.db().write("ilse", write -> Entrance.giveCode(write, new Id("bram")));
        clock.step(Duration.ofDays(7));
        assertThat(set(server.stranger(), "bram", other, "three wet felt hats").status())
                .isEqualTo(401);
    }

    @Test
    void a_weak_passphrase_is_refused_before_the_code_is_tried_and_is_not_shown_again() {
        server.giveLogIn("ilse", ILSES);
        Visitor visitor = server.stranger();
        Visitor.Reply refused = visitor.form(visitor.get("/account/start"))
                .with("name", "noor")
                .with("code", "x")
                .with("passphrase", "short")
                .with("again", "other")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is too short; take 15 characters or more: four or five words that nobody would expect together",
                        "is not the same as above; type the passphrase twice");
        assertThat(refused.body()).doesNotContain("\"short\"", "\"other\"");
    }
}
