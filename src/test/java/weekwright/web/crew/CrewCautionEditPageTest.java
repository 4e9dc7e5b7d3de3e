package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewCautionEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_caution_is_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/cautions/new"))
                .with("hazard", "lift")
                .with("text", "Not alone.")
                .send());
        String address = ilse.get("/crew/safety")
                .page()
                .select("section:has(#cautions-head) li a")
                .attr("href");
        Visitor.Reply changed = ilse.follow(
                ilse.form(ilse.get(address), "form.form").with("for", "camera").send());
        assertThat(changed.page().select("section:has(#cautions-head) li").text())
                .endsWith("(camera): Not alone.");
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("The caution is removed.");
    }
}
