package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStageMaterialsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_take_off_of_a_stage_sums_its_lines_at_three_prices() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/tasks/gate.2/materials/new"))
                .with("item", "Oak beams")
                .with("dimensions", "6 x 150 x 200 mm x 4.20 m")
                .with("unit", "m3")
                .with("waste", "10")
                .with("price_low", "900")
                .with("price_likely", "1000")
                .with("price_high", "1200")
                .with("price_from", "the sawmill's list")
                .with("price_on", "2026-10-14")
                .send());
        Visitor.Reply page = ilse.get("/build/stages/gate/materials");
        // 14 m at 21.50, 6 m at 9, 0.756 m3 and a tenth at 900, 1000, 1200; worked by hand
        assertThat(page.page().select("section:has(#sums-head) tr.sum td").eachText())
                .satisfiesExactly(
                        count -> assertThat(count).isEqualTo("3"),
                        low -> assertThat(low).contains("1,103.44"),
                        likely -> assertThat(likely).contains("1,186.60"),
                        high -> assertThat(high).contains("1,352.92"));
        assertThat(page.page().select("small").eachText())
                .contains(
                        "6 × 150 × 200 mm × 4.20 m = 0.756 m³",
                        "with 10 % waste 0.8316 m3",
                        "the sawmill's list, 14 October");
    }

    @Test
    void a_stage_that_is_not_there_has_no_take_off() {
        assertThat(SERVER.as("ilse").get("/build/stages/none/materials").status())
                .isEqualTo(404);
    }
}
