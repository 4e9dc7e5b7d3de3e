package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsPurchasesPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_is_to_be_ordered_stands_by_supplier_until_it_is_ordered() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/purchases");
        assertThat(page.page().select("main th a").eachText()).contains("Oak boards", "Flat iron");
        ilse.follow(ilse.form(ilse.get("/build/materials/mat.1"), "form:has(button[value=order])")
                .with("ordered", "2026-11-02")
                .press("order"));
        assertThat(ilse.get("/funds/purchases").page().select("main th a").eachText())
                .contains("Flat iron")
                .doesNotContain("Oak boards");
        assertThat(SERVER.as("noor").get("/funds/purchases").status()).isEqualTo(403);
    }

    @Test
    void the_telephone_stands_beside_the_supplier_whatever_the_case_of_its_name() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/funds/suppliers/new"))
                .with("name", "IRON yard")
                .with("telephone", "+55 (555) 0100/16")
                .send());
        Visitor.Reply page = ilse.get("/funds/purchases");
        assertThat(page.page()
                        .select(".purchase:has(h2:contains(Iron yard)) .rule-head a")
                        .outerHtml())
                .isEqualTo("<a class=\"remark\" href=\"tel:+55555010016\">+55 (555) 0100/16</a>");
    }
}
