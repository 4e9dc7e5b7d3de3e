package weekwright.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.account.LogInStore;
import weekwright.base.Id;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;
import weekwright.web.Routes;

/** OWASP ASVS 5.0.0, 7.5.1. */
class AccountConfirmPageTest {
    private static final String ILSES = "oak pegs and tallow";
    private static final String AGAIN =
            "Your passphrase is right, and nothing was done yet: press the button once more. It"
                    + " is not asked again for ten minutes.";

    /** The pages whose buttons ask for it, with the fields and the button of one press. */
    private static final Map<String, List<String>> PRESSES = Map.of(
            "/crew/log-ins", List.of("bram", "code"),
            "/crew/calendars", List.of("bram", "renew"),
            "/crew/backups", List.of("", "make"),
            "/notes/public", List.of("", ""));

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

    private static Visitor.Reply press(Visitor visitor, String path) {
        List<String> press = PRESSES.get(path);
        Visitor.Form form = visitor.form(visitor.get(path));
        if (!press.get(0).isEmpty()) {
            form.with("who", press.get(0));
        }
        return press.get(1).isEmpty() ? form.send() : form.press(press.get(1));
    }

    private boolean bramHasACode() {
        return server.db()
                .<Boolean>read(read -> LogInStore.code(read, new Id("bram")).isPresent());
    }

    @Test
    void these_are_all_the_pages_that_ask_for_it() {
        assertThat(new Routes(server.app())
                        .pages().stream()
                                .filter(Routes.Line::confirmed)
                                .map(Routes.Line::path)
                                .toList())
                .containsExactlyInAnyOrderElementsOf(PRESSES.keySet());
    }

    @Test
    @Requirement({"7.5.1"})
    void what_opens_a_door_asks_for_the_passphrase_again_ten_minutes_after_it_was_typed() {
        server.giveLogIn("ilse", ILSES);
        for (String path : PRESSES.keySet()) {
            Visitor ilse = server.loggedIn("ilse", ILSES);
            clock.step(Duration.ofMinutes(10));
            Visitor.Reply asked = press(ilse, path);
            assertThat(asked.status()).as(path).isEqualTo(403);
            assertThat(asked.page().select("h1").text()).isEqualTo("Your passphrase once more");
            Visitor.Reply back =
                    ilse.follow(ilse.form(asked).with("passphrase", ILSES).send());
            assertThat(back.address()).contains(path);
            assertThat(back.troubles()).as(path).containsExactly(AGAIN);
            assertThat(press(ilse, path).status()).as(path).isEqualTo(303);
        }
    }

    @Test
    @Requirement({"7.5.1"})
    void nothing_is_done_before_it_was_typed_and_a_wrong_one_counts_in_the_throttle() {
        server.giveLogIn("ilse", ILSES);
        Visitor ilse = server.loggedIn("ilse", ILSES);
        clock.step(Duration.ofMinutes(10));
        Visitor.Reply asked = press(ilse, "/crew/log-ins");
        for (int i = 0; i < 5; i++) {
            asked = ilse.form(asked).with("passphrase", "wet felt hats").send();
            assertThat(asked.status()).isEqualTo(401);
            assertThat(asked.troubles()).containsExactly("This is not your passphrase. Type the one you log in with.");
        }
        asked = ilse.form(asked).with("passphrase", ILSES).send();
        assertThat(asked.status()).isEqualTo(429);
        assertThat(bramHasACode()).isFalse();
        clock.step(Duration.ofSeconds(1));
        Visitor.Reply back =
                ilse.follow(ilse.form(asked).with("passphrase", ILSES).send());
        assertThat(back.troubles()).containsExactly(AGAIN);
        assertThat(bramHasACode()).isFalse();
    }

    @Test
    void at_another_browser_and_after_a_clock_was_set_it_is_asked_all_the_same() {
        server.giveLogIn("ilse", ILSES);
        Visitor old = server.loggedIn("ilse", ILSES);
        clock.step(Duration.ofMinutes(10));
        Visitor fresh = server.loggedIn("ilse", ILSES);
        clock.set(Duration.ofMinutes(-30));
        assertThat(press(old, "/crew/log-ins").status()).isEqualTo(403);
        assertThat(press(fresh, "/crew/log-ins").status()).isEqualTo(303);
    }

    @Test
    void asked_for_by_itself_it_says_that_it_holds() {
        server.giveLogIn("ilse", ILSES);
        Visitor ilse = server.loggedIn("ilse", ILSES);
        Visitor.Reply done = ilse.form(ilse.get("/account/confirm"))
                .with("passphrase", ILSES)
                .send();
        assertThat(ilse.follow(done).page().select(".flash").text())
                .isEqualTo("Your passphrase is right. It is not asked again for ten minutes.");
    }

    @Test
    void as_long_as_nobody_has_a_log_in_nothing_is_asked() {
        Visitor ilse = server.as("ilse");
        assertThat(press(ilse, "/crew/backups").status()).isEqualTo(303);
        assertThat(ilse.get("/account/confirm").to()).isEqualTo("/account/start");
    }
}
