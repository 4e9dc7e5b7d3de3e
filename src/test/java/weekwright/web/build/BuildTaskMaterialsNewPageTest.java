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
    void dimensions_make_the_quantity_and_are_shown_with_the_line() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/gate.2/materials/new"))
                .with("item", "Oak beams")
                .with("dimensions", "6 x 150 x 200 mm x 4.20 m")
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing, and the dimensions can be read in several ways; write what is bought: m, m2,"
                                + " m3, ft, ft2, bf, kg, lb, pc");
        Visitor.Reply differs =
                ilse.form(refused).with("unit", "m3").with("quantity", "0.7").send();
        assertThat(differs.troubles())
                .containsExactly("\"0.7\" is not the 0.756 m3 that the dimensions make; leave it empty, or leave the"
                        + " dimensions empty");
        Visitor.Reply another = ilse.form(differs).with("unit", "kg").send();
        assertThat(another.troubles())
                .containsExactly("\"6 × 150 × 200 mm × 4.20 m\" makes an area, and kg is a"
                        + " weight; write length × width × height × density");
        Visitor.Reply saved = ilse.follow(ilse.form(another)
                .with("unit", "m3")
                .with("quantity", "")
                .with("waste", "12")
                .with("price_from", "the sawmill's list")
                .with("price_on", "2026-10-14")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("Oak beams is listed. 6 × 150 × 200 mm × 4.20 m = 0.756 m³, read as 6 pc × 150 mm × 200 mm"
                        + " × 4.20 m. Price likely is missing, so the line costs nothing; write what one costs.");
        String line = saved.page().select("a:containsOwn(Oak beams)").attr("href");
        Visitor.Reply sheet = ilse.get(line);
        assertThat(sheet.page().select("dl.facts").text())
                .contains(
                        "Dimensions 6 × 150 × 200 mm × 4.20 m = 0.756 m³",
                        "Read as 6 pc × 150 mm × 200 mm × 4.20 m",
                        "Price got the sawmill's list, 14 October",
                        "Waste 12 % on top: 0.8467 m3");
        Visitor.Reply changed = ilse.follow(ilse.form(ilse.get(line + "/edit"))
                .with("dimensions", "8 × 150 × 200 mm × 4.20 m")
                .send());
        assertThat(changed.page().select("h1").text()).isEqualTo("Oak beams, 1.008 m3");
        Visitor.Reply back = ilse.follow(ilse.form(changed, ".flash form").send());
        assertThat(back.page().select("h1").text()).isEqualTo("Oak beams, 0.756 m3");
        assertThat(back.page().select("dl.facts").text()).contains("Dimensions 6 × 150 × 200 mm × 4.20 m = 0.756 m³");
    }

    @Test
    void a_task_that_is_not_there_takes_no_material() {
        assertThat(SERVER.as("ilse").get("/build/tasks/none.1/materials/new").status())
                .isEqualTo(404);
    }

    @Test
    void where_it_comes_from_names_no_choice_twice() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/tasks/gate.1/materials/new");
        assertThat(page.page().select("#source option").eachText())
                .containsExactly("bought", "given", "salvaged", "our own");
    }
}
