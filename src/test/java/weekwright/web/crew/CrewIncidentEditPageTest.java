package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewIncidentEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_incident_is_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/incidents/new"))
                .with("what", "Thumb and mallet")
                .send());
        String address = ilse.get("/crew/safety").page().select("tbody a").attr("href");
        Visitor.Reply changed = ilse.follow(ilse.form(ilse.get(address), "form.form")
                .with("hurt", "yes")
                .with("who", "Bram")
                .send());
        assertThat(changed.page()
                        .select("[aria-labelledby=incidents-head] tbody tr")
                        .text())
                .isEqualTo("Wed 25 Nov Thumb and mallet hurt Bram");
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("The incident is removed.");
    }
}
