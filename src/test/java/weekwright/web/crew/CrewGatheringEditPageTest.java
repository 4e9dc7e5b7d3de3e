package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewGatheringEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_gathering_is_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/gatherings/new"))
                .with("date", "2027-02-27")
                .with("hands", "6")
                .with("hours", "5")
                .send());
        String address = ilse.get("/crew/days")
                .page()
                .select("section:has(#gatherings-head) tbody a")
                .attr("href");
        Visitor.Reply changed = ilse.follow(
                ilse.form(ilse.get(address), "form.form").with("hands", "1").send());
        assertThat(changed.page()
                        .select("section:has(#gatherings-head) tbody tr")
                        .text())
                .isEqualTo("27 Feb 2027 1 helper, 5 hours each");
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("The gathering is removed.");
    }
}
