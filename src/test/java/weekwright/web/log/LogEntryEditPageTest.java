package weekwright.web.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class LogEntryEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_entry_is_changed_and_what_is_wrong_is_told() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/log/entries/4/edit");
        assertThat(page.text()).startsWith("Change an entry 7 hours on 9 November, Set the sill stones");
        Visitor.Reply refused = ilse.form(page).with("hours", "25").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("\"25\" is over 24; write 0.01 to 24");
        assertThat(refused.page().select("#hours").val()).isEqualTo("25");
        Visitor.Reply saved = ilse.follow(ilse.form(refused).with("hours", "6½").send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The entry is saved.");
        assertThat(ilse.form(ilse.get("/log/entries/4/edit")).value("hours")).isEqualTo("6.5");
    }

    @Test
    void of_two_who_change_an_entry_the_second_sees_both() {
        Visitor ilse = SERVER.as("ilse");
        Visitor bram = SERVER.as("bram");
        Visitor.Form first = ilse.form(ilse.get("/log/entries/5/edit"));
        Visitor.Form second = bram.form(bram.get("/log/entries/5/edit"));
        first.with("hours", "5").send();
        Visitor.Reply both = second.with("hours", "4").send();
        assertThat(both.status()).isEqualTo(409);
    }

    @Test
    @Requirement({"8.2.2"})
    void a_helper_changes_own_hours_only() {
        Visitor noor = SERVER.as("noor");
        Visitor.Reply others = noor.get("/log/entries/4/edit");
        assertThat(others.status()).isEqualTo(403);
        assertThat(others.text()).contains("These are somebody else's hours. The crew can change them.");
        assertThat(noor.get("/log/entries/99/edit").status()).isEqualTo(404);
    }
}
