package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsSuppliersNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_supplier_is_refused_with_all_faults_then_added_and_not_twice() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/funds/suppliers/new"))
                .with("name", "")
                .with("telephone", "ring 12")
                .with("email", "yard at mill")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write the name as the materials have it",
                        "\"ring 12\" is not a telephone number; write at least three digits, with spaces, +, ( ), -"
                                + " and / alone between them",
                        "\"yard at mill\" is not an address for mail; write one such as yard@mill.example");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("name", "The sawyer")
                .with("telephone", "+55 (0)555 0100-14")
                .with("email", "")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The sawyer is on the list.");
        assertThat(saved.page().select("main td a[href^=tel:]").attr("href")).isEqualTo("tel:+550555010014");
        Visitor.Reply twice = ilse.form(ilse.get("/funds/suppliers/new"))
                .with("name", "the SAWYER")
                .send();
        assertThat(twice.troubles())
                .containsExactly("\"the SAWYER\" stands already; change that one, or write another name");
    }

    @Test
    void a_name_that_was_chosen_on_the_list_stands_in_its_field() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds/suppliers/new?name=the+lime+kiln");
        assertThat(page.page().select("#name").val()).isEqualTo("the lime kiln");
        assertThat(page.page().select("#telephone").attr("type")).isEqualTo("tel");
    }
}
