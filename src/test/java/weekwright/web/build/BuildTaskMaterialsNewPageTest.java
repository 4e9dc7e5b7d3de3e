package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTaskMaterialsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_material_is_listed_with_little_and_refused_at_its_fields() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/gate.2/materials/new");
        assertThat(page.page().select("h1").text()).isEqualTo("A material for Hang the gate");
        assertThat(ilse.form(page).value("task")).isEqualTo("gate.2");
        Visitor.Reply refused = ilse.form(page)
                .with("item", "Strap hinges")
                .with("quantity", "0")
                .with("price_likely", "-4")
                .with("lead_low", "9")
                .with("deposit", "101")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"0\" is under 0.0001; write 0.0001 or more",
                        "\"-4\" is under 0; write 0 or more",
                        "\"101\" is over 100; write 0 to 100");
        Visitor.Reply more = ilse.form(refused)
                .with("quantity", "2")
                .with("price_likely", "48,50")
                .with("deposit", "")
                .send();
        assertThat(more.troubles())
                .containsExactly("is missing beside low or high; write the likely one, or leave out all");
        assertThat(more.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly("lead_likely");
        Visitor.Reply saved = ilse.follow(
                ilse.form(more).with("lead_low", "").with("unit", "pc").send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Strap hinges is listed.");
        assertThat(saved.page().select("ul.materials li").eachText())
                .anyMatch(line -> line.startsWith("Strap hinges, 2 pc not ordered yet"));
    }

    @Test
    void a_task_that_is_not_there_takes_no_material() {
        assertThat(SERVER.as("ilse").get("/build/tasks/none.1/materials/new").status())
                .isEqualTo(404);
    }
}
