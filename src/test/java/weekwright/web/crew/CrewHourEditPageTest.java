package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewHourEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void other_hours_are_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/hours/new"))
                .with("crew", "bram")
                .with("from", "2027-04-01")
                .with("fri", "3")
                .send());
        String address = ilse.get("/crew/days")
                .page()
                .select("section:has(#hours-head) tbody a")
                .attr("href");
        Visitor.Reply refused = ilse.form(ilse.get(address), "form.form")
                .with("to", "2027-03-01")
                .send();
        assertThat(refused.troubles())
                .containsExactly("\"1 March 2027\" is before from 1 April 2027; write 1 April 2027 or later, or"
                        + " change from");
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("The set of other hours is removed.");
    }
}
