package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStockNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_lies_in_the_yard_is_added() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/stock/new"))
                .with("quantity", "1.234")
                .with("since", "2026-02-30")
                .with("ready_likely", "30")
                .with("ready_high", "20")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly("quantity", "since");
        Visitor.Reply more = ilse.form(refused)
                .with("quantity", "1.2")
                .with("since", "2026-02-20")
                .send();
        assertThat(more.troubles())
                .containsExactly(
                        "is missing; write what lies there", "\"20\" is under the likely 30; write 30 or more");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("item", "Cleft oak")
                .with("unit", "m3")
                .with("ready_high", "40")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Cleft oak is on the yard's list.");
        assertThat(saved.page().select("tbody th").eachText()).containsExactly("Cleft oak");
    }

    /** The days are those of DryingTest, with their sources there. */
    @Test
    void wet_timber_gets_the_days_until_it_is_dry_from_species_thickness_and_the_day_of_stacking() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply empty = ilse.form(ilse.get("/build/stock/new")).press("dry");
        assertThat(empty.status()).isEqualTo(422);
        assertThat(empty.troubles())
                .containsExactly(
                        "is missing; it has to be given",
                        "is missing; choose the one that dries most like it, or write the days yourself",
                        "is missing; it has to be given");
        for (String[] wrong : new String[][] {
            {"7 in", "\"7 in\" is over 6 in, for which nothing is said here; write the days yourself"},
            {"0", "\"0\" is no thickness; write it with its unit, such as 50 mm or 2 in"},
            {"2 m3", "\"2 m3\" is not one length; write it with its unit, such as 150 mm or 6 in"}
        }) {
            assertThat(ilse.form(empty)
                            .with("since", "2026-09-01")
                            .with("dry_species", "white-oak")
                            .with("dry_thick", wrong[0])
                            .press("dry")
                            .troubles())
                    .containsExactly(wrong[1]);
        }
        Visitor.Reply filled = ilse.form(empty)
                .with("item", "Oak boards")
                .with("species", "oak")
                .with("since", "2026-09-01")
                .with("dry_thick", "25.4")
                .press("dry");
        assertThat(filled.page().select(".flash p").text())
                .isEqualTo(
                        "Filled in, not saved yet: stacked on 1 September 2026, white oak of that thickness is likely"
                                + " dry about 10 June 2027, at best 21 May 2027, at worst 30 June 2027.");
        Visitor.Form form = ilse.form(filled);
        assertThat(form.value("ready_low") + " " + form.value("ready_likely") + " " + form.value("ready_high"))
                .isEqualTo("262 282 302");
        assertThat(form.value("moisture")).isEqualTo("wet");
        Visitor.Reply saved = ilse.follow(form.send());
        assertThat(saved.page()
                        .select("tbody tr:contains(Oak boards) td[data-label=Ready]")
                        .text())
                .isEqualTo("about 10 June 2027, at best 21 May 2027, at worst 30 June 2027");
    }
}
