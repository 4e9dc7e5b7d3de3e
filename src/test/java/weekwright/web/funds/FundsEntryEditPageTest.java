package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsEntryEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_entry_is_changed_and_taken_out() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/entries/3/edit");
        assertThat(ilse.form(page).value("amount")).isEqualTo("86.20");
        assertThat(ilse.form(page).value("way")).isEqualTo("out");
        Visitor.Reply refused = ilse.form(page).with("amount", "0").send();
        assertThat(refused.troubles()).containsExactly("\"0\" is nothing; write what was paid or came in");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("amount", "88.20")
                .with("payee", "Iron yard")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The entry is saved.");
        assertThat(saved.page().select("tbody tr").get(0).select("td.figure").text())
                .isEqualTo("−€88.20");
        Visitor.Reply out = ilse.follow(
                ilse.form(ilse.get("/funds/entries/3/edit"), "form.act").press("remove"));
        assertThat(out.page().select("tbody tr")).hasSize(2);
        assertThat(ilse.get("/funds/entries/3/edit").text()).contains("This entry is not in the books any more.");
    }
}
