package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewOffEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void days_off_are_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/off/new"))
                .with("from", "2027-03-01")
                .with("to", "2027-03-01")
                .send());
        String address = ilse.get("/crew/days")
                .page()
                .select("section:has(#off-head) tbody a")
                .attr("href");
        Visitor.Reply changed = ilse.follow(
                ilse.form(ilse.get(address), "form.form").with("hours", "4").send());
        assertThat(changed.page()
                        .select("section:has(#off-head) tbody tr")
                        .get(0)
                        .text())
                .isEqualTo("1 Mar 2027 Everybody, 4 hours a day");
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("The time off is removed.");
        assertThat(ilse.get(address).status()).isEqualTo(404);
    }
}
