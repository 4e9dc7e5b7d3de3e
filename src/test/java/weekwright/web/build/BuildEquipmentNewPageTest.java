package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildEquipmentNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void equipment_is_added_under_an_id_of_its_own() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/equipment/new"))
                .with("quantity", "0")
                .send();
        assertThat(refused.troubles()).containsExactly("\"0\" is under 1; write 1 to 10000");
        Visitor.Reply more = ilse.form(refused)
                .with("quantity", "2")
                .with("back_likely", "5")
                .with("hazards", "woodm", "dust")
                .send();
        assertThat(more.troubles()).containsExactly("is missing; write what it is called");
        assertThat(more.page().select("input[name=hazards][checked]").eachAttr("value"))
                .containsExactly("woodm", "dust");
        Visitor.Reply saved =
                ilse.follow(ilse.form(more).with("name", "Small planer").send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo(
                        "Small planer is listed. Down from is missing, so the days until it is back count for nothing; write"
                                + " the day from which it is down.");
        assertThat(saved.page().select("tbody th a").attr("href")).isEqualTo("/build/equipment/planer/edit");
    }
}
