package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewStoppedEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stopped_day_is_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/stopped/new"))
                .with("date", "2026-11-20")
                .with("reason", "ill")
                .with("crew", "bram")
                .send());
        String address = ilse.get("/crew/days")
                .page()
                .select("section:has(#stopped-head) tbody a")
                .attr("href");
        Visitor.Reply changed = ilse.follow(ilse.form(ilse.get(address), "form.form")
                .with("reason", "company")
                .with("note", "Nobody to hold the far end")
                .send());
        assertThat(changed.page().select("section:has(#stopped-head) tbody tr").text())
                .isEqualTo("Fri 20 Nov Bram, the whole day no second person. Nobody to hold the far end");
        Visitor.Reply gone =
                ilse.follow(ilse.form(ilse.get(address), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("The stopped day is removed.");
    }
}
