package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildGiftsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_gift_is_entered_in_one_step_and_lies_in_the_yard() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/gifts/new"))
                .with("item", "Larch boards")
                .send();
        assertThat(refused.troubles()).containsExactly("is missing; write who gave it");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("from", "the upper farm")
                .with("value", "140")
                .with("since", "2026-11-20")
                .with("place", "cart shed")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("Larch boards from the upper farm is in the register and on the yard's list.");
        assertThat(ilse.get("/build/stock").page().select("tbody th").eachText())
                .containsExactly("Larch boards");
    }
}
