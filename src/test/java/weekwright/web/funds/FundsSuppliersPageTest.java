package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsSuppliersPageTest {
    private static final ServerFixture SERVER = ServerFixture.sample();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_two_of_the_sample_stand_there_and_names_without_a_number_are_offered_once() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/suppliers");
        assertThat(page.page().select("main tbody th").eachText())
                .containsExactly("the builders' yard", "the ridge sawmill");
        assertThat(page.page().select("main td a[href^=tel:]").eachAttr("href"))
                .containsExactly("tel:0555010027", "tel:0555010014");
        assertThat(page.page().select(".missing a").eachText())
                .contains("the lime kiln", "the river foundry")
                .doesNotContain("the ridge sawmill", "the builders' yard")
                .doesNotHaveDuplicates();
        assertThat(page.page().select(".missing a:contains(the lime kiln)").attr("href"))
                .isEqualTo("/funds/suppliers/new?name=the+lime+kiln");
    }

    @Test
    void an_empty_list_says_what_belongs_there_and_why() {
        try (ServerFixture small = ServerFixture.small()) {
            assertThat(small.as("noor").get("/funds/suppliers").status()).isEqualTo(403);
            assertThat(small.as("ilse")
                            .get("/funds/suppliers")
                            .page()
                            .select(".empty-sheet p")
                            .get(0)
                            .text())
                    .isEqualTo(
                            "With a telephone number here, the purchase list can be rung through from top to bottom.");
        }
    }
}
