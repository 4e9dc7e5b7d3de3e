package weekwright.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.account.Codes;
import weekwright.account.Session;
import weekwright.account.SessionStore;
import weekwright.base.Id;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Numbers in brackets are those of OWASP ASVS 5.0.0. */
class AccountLogInPageTest {
    private static final String ILSES = "oak pegs and tallow";
    private static final String NOORS = "three wet felt hats";

    private final SettableClock clock = new SettableClock(ServerFixture.CLOCK);
    private ServerFixture server;

    @BeforeEach
    void start() {
        server = ServerFixture.under(clock, SmallProject::fill);
        server.giveLogIn("ilse", ILSES);
        server.giveLogIn("noor", NOORS);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Visitor.Reply tried(Visitor visitor, String name, String passphrase) {
        return visitor.form(visitor.get("/account/log-in"))
                .with("name", name)
                .with("passphrase", passphrase)
                .send();
    }

    @Test
    void who_is_not_logged_in_is_sent_to_log_in_and_then_on_to_where_they_wanted() {
        Visitor visitor = server.stranger();
        assertThat(visitor.get("/week").to()).isEqualTo("/account/log-in?to=/week");
        Visitor.Reply in = visitor.form(visitor.get("/account/log-in?to=/week"))
                .with("name", "Ilse")
                .with("passphrase", ILSES)
                .send();
        assertThat(in.status()).isEqualTo(303);
        assertThat(in.to()).isEqualTo("/week");
        assertThat(visitor.get("/week").status()).isEqualTo(200);
    }

    /** [3.3.1 to 3.3.4, 7.2.1 to 7.2.4, 11.5.1] */
    @Test
    @Requirement({"3.3.1", "3.3.2", "3.3.4", "7.2.1", "7.2.2", "7.2.3", "7.2.4", "11.5.1"})
    void the_session_is_a_new_secret_of_which_the_store_has_the_hash_alone() {
        Visitor visitor = server.stranger();
        visitor.setCookie("session", "planted");
        assertThat(visitor.get("/week").status()).isEqualTo(303);
        Visitor.Reply in = tried(visitor, "ilse", ILSES);
        assertThat(in.headers().get("set-cookie"))
                .anyMatch(cookie -> cookie.matches("session=[A-Za-z0-9_-]{43}; Path=/; Expires=[^;]+; Max-Age=2592000;"
                        + " HttpOnly; SameSite=Lax"));
        String token = visitor.cookie("session");
        assertThat(server.db()
                        .<Boolean>read(read ->
                                SessionStore.find(read, Codes.sha256(token)).isPresent()))
                .isTrue();
        assertThat(server.db()
                        .<Boolean>read(read -> SessionStore.find(read, token).isPresent()))
                .isFalse();
    }

    /** [6.3.8] */
    @Test
    @Requirement({"6.3.8"})
    void an_unknown_name_a_name_without_a_log_in_and_a_wrong_passphrase_get_the_same_answer() {
        for (String name : new String[] {"ilse", "bram", "greta", ""}) {
            Visitor.Reply refused = tried(server.stranger(), name, "not the right one");
            assertThat(refused.status()).as(name).isEqualTo(401);
            assertThat(refused.troubles()).containsExactly("Name and passphrase do not belong together.");
            assertThat(refused.body()).doesNotContain("not the right one");
        }
    }

    /** [6.1.1, 6.3.1] */
    @Test
    @Requirement({"6.1.1", "6.3.1"})
    void after_five_wrong_ones_the_next_waits_longer_and_longer_and_the_right_one_frees_the_name() {
        Visitor visitor = server.stranger();
        for (int i = 0; i < 5; i++) {
            assertThat(tried(visitor, "ilse", "wrong").status()).isEqualTo(401);
        }
        Visitor.Reply sixth = tried(visitor, "ilse", ILSES);
        assertThat(sixth.status()).isEqualTo(429);
        assertThat(sixth.header("Retry-After")).isEqualTo("1");
        assertThat(sixth.troubles()).containsExactly("Too many wrong tries from this device. Try again in 1 second.");
        clock.step(Duration.ofSeconds(1));
        assertThat(tried(visitor, "ilse", "wrong").status()).isEqualTo(401);
        assertThat(tried(visitor, "ilse", ILSES).header("Retry-After")).isEqualTo("2");
        assertThat(tried(visitor, "noor", NOORS).status()).isEqualTo(303);
        clock.step(Duration.ofSeconds(2));
        assertThat(tried(server.stranger(), "ilse", ILSES).status()).isEqualTo(303);
        assertThat(tried(server.stranger(), "ilse", "wrong").status()).isEqualTo(401);
        assertThat(tried(server.stranger(), "ilse", ILSES).status()).isEqualTo(303);
    }

    @Test
    @Requirement({"6.3.1"})
    void a_clock_that_is_set_forward_or_back_shortens_and_lengthens_no_wait() {
        for (int i = 0; i < 5; i++) {
            assertThat(tried(server.stranger(), "ilse", "wrong").status()).isEqualTo(401);
        }
        for (Duration wrong : List.of(Duration.ofDays(2), Duration.ofDays(-9))) {
            clock.set(wrong);
            assertThat(tried(server.stranger(), "ilse", ILSES).header("Retry-After"))
                    .isEqualTo("1");
        }
        clock.step(Duration.ofSeconds(1));
        assertThat(tried(server.stranger(), "ilse", ILSES).status()).isEqualTo(303);
    }

    @Test
    @Requirement({"6.3.1"})
    void twenty_wrong_ones_from_one_address_hold_every_name_up() {
        for (int i = 0; i < 20; i++) {
            assertThat(tried(server.stranger(), "name" + i, "wrong").status()).isEqualTo(401);
        }
        assertThat(tried(server.stranger(), "ilse", ILSES).status()).isEqualTo(429);
    }

    /** [7.3.1, 7.3.2]; fourteen and thirty days: common practice, no source. */
    @Test
    @Requirement({"7.3.1", "7.3.2", "7.1.1"})
    void a_session_ends_after_fourteen_days_unused_and_after_thirty_in_any_case() {
        Visitor idle = server.loggedIn("ilse", ILSES);
        Visitor daily = server.loggedIn("ilse", ILSES);
        for (int day = 0; day < 13; day++) {
            clock.step(Duration.ofDays(1));
            assertThat(daily.get("/week").status()).isEqualTo(200);
        }
        clock.step(Duration.ofHours(23));
        assertThat(daily.get("/week").status()).isEqualTo(200);
        clock.step(Duration.ofHours(1));
        assertThat(idle.get("/week").status()).isEqualTo(303);
        for (int day = 14; day < 29; day++) {
            clock.step(Duration.ofDays(1));
            assertThat(daily.get("/week").status()).isEqualTo(200);
        }
        clock.step(Duration.ofDays(1));
        assertThat(daily.get("/week").status()).isEqualTo(303);
    }

    @Test
    void a_clock_that_was_wrong_for_a_while_revives_no_session_and_ends_none_that_is_young() {
        Visitor ilse = server.loggedIn("ilse", ILSES);
        Visitor other = server.loggedIn("ilse", ILSES);
        clock.set(Duration.ofHours(-1));
        assertThat(ilse.get("/week").status()).isEqualTo(200);
        clock.set(Duration.ofDays(3 * 365));
        assertThat(ilse.get("/week").status()).isEqualTo(303);
        clock.set(Duration.ofDays(-3 * 365));
        assertThat(ilse.get("/week").to()).isEqualTo("/account/log-in?to=/week");
        assertThat(other.get("/week").status()).isEqualTo(200);
        assertThat(tried(server.stranger(), "ilse", ILSES).status()).isEqualTo(303);
    }

    @Test
    @Requirement({"7.4.1", "7.4.4", "7.5.2"})
    void the_devices_of_a_person_are_listed_and_each_can_be_logged_out_by_that_person_alone() {
        Visitor here = server.loggedIn("ilse", ILSES);
        Visitor phone = server.loggedIn("ilse", ILSES);
        Visitor noor = server.loggedIn("noor", NOORS);
        Visitor.Reply list = here.get("/account");
        List<String> marks = list.page().select("input[name=session]").eachAttr("value");
        assertThat(list.page().select("button[value=log-out]")).isNotEmpty();
        assertThat(marks).hasSize(1);
        assertThat(noor.form(noor.get("/account"))
                        .with("session", marks.get(0))
                        .with("do", "end")
                        .send()
                        .status())
                .isEqualTo(404);
        assertThat(phone.get("/week").status()).isEqualTo(200);
        assertThat(here.form(list, "form:has(input[name=session])").send().status())
                .isEqualTo(303);
        assertThat(phone.get("/week").status()).isEqualTo(303);
        assertThat(here.get("/week").status()).isEqualTo(200);
        assertThat(here.form(here.get("/account")).press("log-out").status()).isEqualTo(303);
        assertThat(here.get("/week").status()).isEqualTo(303);
    }

    @Test
    @Requirement({"14.3.1"})
    void logging_out_tells_the_browser_to_forget_what_it_keeps_but_what_is_to_be_kept() {
        Visitor ilse = server.loggedIn("ilse", ILSES);
        assertThat(ilse.form(ilse.get("/account"), "form[data-leave]")
                        .press("log-out")
                        .header("Clear-Site-Data"))
                .isEqualTo("\"cache\", \"storage\"");
        Visitor noor = server.loggedIn("noor", NOORS);
        assertThat(noor.form(noor.get("/account"), "form[data-leave]")
                        .with("keep", "yes")
                        .press("log-out")
                        .header("Clear-Site-Data"))
                .isEqualTo("\"cache\"");
        assertThat(tried(server.stranger(), "ilse", ILSES).headers()).doesNotContainKey("clear-site-data");
    }

    @Test
    @Requirement({"6.2.6", "6.2.7", "6.2.10", "6.4.2"})
    void a_passphrase_may_be_pasted_kept_by_the_browser_and_as_old_as_its_owner_likes() {
        for (String path : List.of("/account/log-in", "/account/start")) {
            var boxes = server.stranger().get(path).page().select("input[type=password]");
            assertThat(boxes).as(path).isNotEmpty();
            assertThat(boxes.eachAttr("autocomplete")).isSubsetOf("current-password", "new-password");
            assertThat(boxes.select("[onpaste], [maxlength]")).isEmpty();
        }
        clock.step(Duration.ofDays(3 * 365));
        assertThat(tried(server.stranger(), "ilse", ILSES).status()).isEqualTo(303);
    }

    @Test
    void the_cookie_that_only_names_a_person_opens_nothing_any_more() {
        assertThat(server.as("ilse").get("/week").to()).isEqualTo("/account/log-in?to=/week");
        assertThat(server.as("ilse").get("/account").to()).isEqualTo("/account/log-in");
    }

    @Test
    void what_was_typed_when_the_log_in_had_ended_comes_back_after_it_and_is_saved_then() {
        Visitor visitor = server.loggedIn("ilse", ILSES);
        Visitor.Form form = visitor.form(visitor.get("/build/stages/new")).with("name", "Eel ladder & \"weir\"");
        server.db().write("test", write -> {
            SessionStore.endAll(write, new Id("ilse"));
            return null;
        });
        Visitor.Reply ended = form.send();
        assertThat(ended.status()).isEqualTo(401);
        assertThat(ended.text())
                .contains("Your log-in has ended, so nothing was saved yet. What you typed comes back when you have"
                        + " logged in.");
        Visitor.Reply mistyped = visitor.form(ended)
                .with("name", "ilse")
                .with("passphrase", "wrong")
                .send();
        assertThat(mistyped.status()).isEqualTo(401);
        Visitor.Reply in = visitor.form(mistyped)
                .with("name", "ilse")
                .with("passphrase", ILSES)
                .send();
        assertThat(in.to()).startsWith("/build/stages/new?kept=");
        Visitor.Reply back = visitor.follow(in);
        assertThat(back.troubles())
                .containsExactly("Your log-in had ended. What you typed stands here; save it once more.");
        assertThat(visitor.form(back).value("name")).isEqualTo("Eel ladder & \"weir\"");
        assertThat(visitor.form(back).send().status()).isEqualTo(303);
        assertThat(visitor.get("/build").text()).contains("Eel ladder & \"weir\"");
    }

    @Test
    void what_one_person_typed_is_not_shown_to_another_and_what_is_forged_to_nobody() {
        Visitor visitor = server.loggedIn("ilse", ILSES);
        Visitor.Form form = visitor.form(visitor.get("/build/stages/new")).with("name", "Eel ladder");
        server.db().write("test", write -> {
            SessionStore.endAll(write, new Id("ilse"));
            return null;
        });
        Visitor.Reply ended = form.send();
        String kept = visitor.form(ended).value("kept");
        assertThat(visitor.form(ended)
                        .with("name", "noor")
                        .with("passphrase", NOORS)
                        .send()
                        .to())
                .isEqualTo("/week");
        assertThat(visitor.form(visitor.get("/account/log-in"))
                        .with("kept", kept.replace("Eel", "Owl"))
                        .with("name", "ilse")
                        .with("passphrase", ILSES)
                        .send()
                        .to())
                .isEqualTo("/ahead");
    }

    @Test
    @Requirement({"6.3.2"})
    void as_long_as_nobody_has_a_log_in_there_is_nothing_to_log_in_to() {
        try (ServerFixture open = ServerFixture.small()) {
            assertThat(open.stranger().get("/account/log-in").to()).isEqualTo("/account");
        }
    }

    @Test
    void a_stranger_learns_nothing_of_the_project_before_the_log_in() {
        String page = server.stranger().get("/account/log-in").body();
        assertThat(page).contains("weekwright").doesNotContain("The weir", "futures", "Forecast run");
    }

    @Test
    void what_an_open_page_asks_by_itself_keeps_no_session_alive() {
        Visitor ilse = server.loggedIn("ilse", ILSES);
        clock.step(Session.IDLE.minusHours(1));
        assertThat(ilse.get("/newer").status()).isEqualTo(200);
        clock.step(Duration.ofHours(2));
        assertThat(ilse.get("/ahead").to()).isEqualTo("/account/log-in?to=/ahead");
    }
}
