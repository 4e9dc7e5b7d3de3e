package weekwright.web.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class AccountPageTest {
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.small();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void the_crew_is_shown_to_choose_from() {
        Visitor.Reply page = server.stranger().get("/account");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("input[name=who]").eachAttr("value")).containsExactly("ilse", "bram", "noor");
        assertThat(page.page().select("nav")).isEmpty();
    }

    @Test
    @Requirement({"7.6.2"})
    void a_person_is_chosen_once_for_a_browser_and_goes_on_to_where_they_wanted() {
        Visitor visitor = server.stranger();
        Visitor.Reply chosen = visitor.form(visitor.get("/account?to=/css/base.css"))
                .with("who", "bram")
                .send();
        assertThat(chosen.to()).isEqualTo("/css/base.css");
        assertThat(visitor.cookie("who")).isEqualTo("bram");
        Visitor.Reply again = visitor.get("/account");
        assertThat(again.page().select("input[checked]").val()).isEqualTo("bram");
        assertThat(again.page().select(".flash").text()).isEqualTo("This browser writes down what is done as Bram.");
        assertThat(again.page().select("nav.sheets li").eachText())
                .containsExactly("Ahead", "Week", "Log", "Build", "Episodes", "Funds", "Notes");
    }

    @Test
    void nobody_chosen_and_somebody_else_are_refused() {
        Visitor visitor = server.stranger();
        Visitor.Reply nobody = visitor.form(visitor.get("/account")).send();
        assertThat(nobody.status()).isEqualTo(422);
        assertThat(nobody.troubles()).containsExactly("is missing; choose one of the crew");
        Visitor.Reply other =
                visitor.form(visitor.get("/account")).with("who", "greta").send();
        assertThat(other.status()).isEqualTo(422);
        assertThat(other.troubles()).containsExactly("\"greta\" is not one of those here; choose one of the list");
    }

    @Test
    @Requirement({"3.7.2"})
    void an_address_elsewhere_is_not_gone_on_to() {
        for (String to : new String[] {"//evil.example", "/\\evil.example", "https:evil.example", "/a\r\nX: 1", ""}) {
            Visitor visitor = server.stranger();
            Visitor.Reply chosen = visitor.form(visitor.get("/account"))
                    .with("who", "ilse")
                    .with("to", to)
                    .send();
            assertThat(chosen.to()).as(to).isEqualTo("/ahead");
        }
    }
}
