package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStockValuesPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_lies_in_the_yard_is_summed_and_what_has_no_worth_is_counted() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/stock/new"))
                .with("item", "Old oak")
                .with("value", "420")
                .with("moisture", "dry")
                .with("meant_for", "the splice")
                .send());
        ilse.follow(ilse.form(ilse.get("/build/stock/new"))
                .with("item", "Ash poles")
                .send());
        Visitor.Reply page = ilse.get("/build/stock/values");
        assertThat(page.page().select("section:has(#part-0) tbody th").eachText())
                .containsExactly("Old oak", "Ash poles", "Together");
        assertThat(page.page().select("section:has(#part-0) .remark").text()).isEqualTo("1 without a worth");
        assertThat(page.page().select("section:has(#part-0) tr.sum").text()).contains("420.00");
        assertThat(ilse.get("/build/stock").text()).contains("dry, for the splice");
    }
}
