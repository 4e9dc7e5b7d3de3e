package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewMemberEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_person_is_changed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/crew/members/bram/edit");
        assertThat(ilse.form(page).value("fri")).isEqualTo("6");
        Visitor.Reply refused = ilse.form(page)
                .with("from", "2026-12-01")
                .with("to", "2026-11-30")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"30 November 2026\" is before from 1 December 2026; write 1 December 2026 or"
                        + " later, or change from");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("from", "")
                .with("to", "")
                .with("fri", "4:30")
                .with("not_for", "hot", "lift")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Saved: Bram.");
        assertThat(saved.page().select(".people tbody tr").get(1).text())
                .contains("kept off hot work and lifting and rigging");
    }

    @Test
    void somebody_who_is_not_there_is_said() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/members/otto/edit");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.text()).contains("There is nobody otto in the crew.");
    }

    @Test
    void somebody_of_whom_something_is_on_record_is_not_removed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused =
                ilse.form(ilse.get("/crew/members/bram/edit"), "form.act").press("remove");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .singleElement()
                .asString()
                .startsWith("\"Bram\" is named by ")
                .endsWith("; set the last day under Until instead, so that these stay on record");
    }

    @Test
    void somebody_entered_by_mistake_is_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/crew/members/new")).with("name", "Wim").send());
        Visitor.Reply gone = ilse.follow(
                ilse.form(ilse.get("/crew/members/wim/edit"), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("Wim is not of the crew any more.");
        assertThat(ilse.get("/crew/members/wim/edit").status()).isEqualTo(404);
    }
}
