package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStockEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void rule_136_a_line_is_covered_from_the_yard_and_given_back() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/stock/new"))
                .with("item", "Old oak boards")
                .with("quantity", "10")
                .with("unit", "m")
                .send());
        Visitor.Reply page = ilse.get("/build/stock/yard.1/edit");
        assertThat(page.page().select("select[name=material] option").eachText())
                .containsExactly(
                        "Choose a line", "Plane the gate boards: Oak boards, 14 m", "Forge the straps: Flat iron, 6 m");
        Visitor.Reply covered = ilse.follow(ilse.form(page, "form:has(button[value=cover])")
                .with("material", "mat.1")
                .press("cover"));
        assertThat(covered.page().select(".flash p").text())
                .isEqualTo("Taken from the yard: Oak boards. \"Old oak boards\" has 10 m, and its lines take 14; take"
                        + " less, or buy the rest.");
        assertThat(ilse.get("/build/materials/mat.1").page().select(".lead").text())
                .isEqualTo("From stock.");
        Visitor.Reply refused =
                ilse.form(covered, "form:has(button[value=remove])").press("remove");
        assertThat(refused.troubles())
                .containsExactly("\"Old oak boards\" covers Oak boards; take that line off it first");
        Visitor.Reply back = ilse.follow(
                ilse.form(refused, "form:has(button[value=uncover])").press("uncover"));
        assertThat(back.page().select(".flash p").text()).isEqualTo("To come from elsewhere again: Oak boards.");
        Visitor.Reply gone =
                ilse.follow(ilse.form(back, "form:has(button[value=remove])").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("Off the yard's list: Old oak boards.");
    }

    @Test
    void a_line_that_is_ordered_is_not_taken_from_the_yard() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(
                ilse.form(ilse.get("/build/stock/new")).with("item", "Bar iron").send());
        String yard = ilse.get("/build/stock")
                .page()
                .select("a:containsOwn(Bar iron)")
                .attr("href");
        Visitor.Reply page = ilse.get(yard);
        ilse.follow(ilse.form(ilse.get("/build/materials/mat.2"), "form:has(button[value=order])")
                .with("ordered", "2026-11-20")
                .press("order"));
        Visitor.Reply refused = ilse.form(page, "form:has(button[value=cover])")
                .with("material", "mat.2")
                .press("cover");
        assertThat(refused.troubles())
                .containsExactly("\"Flat iron\" was ordered on 20 November 2026; call the order off on its own sheet"
                        + " first");
    }
}
