package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildMaterialCancelPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_order_is_called_off_with_what_came_back_and_what_is_lost() {
        Visitor ilse = SERVER.as("ilse");
        assertThat(ilse.get("/build/materials/mat.1/cancel")
                        .page()
                        .select(".lead")
                        .text())
                .isEqualTo("There is no order out for this line.");
        ilse.follow(ilse.form(ilse.get("/build/materials/mat.1"), "form:has(button[value=order])")
                .with("ordered", "2026-11-20")
                .with("paid", "90.30")
                .press("order"));
        Visitor.Reply page = ilse.get("/build/materials/mat.1/cancel");
        assertThat(page.page().select(".lead").text())
                .isEqualTo("No last day to call it off was agreed; ask the supplier. €90.30 is paid and lost, as far as"
                        + " nothing comes back.");
        Visitor.Reply refused = ilse.form(page, "form:has(button[value=cancel])")
                .with("back", "90.31")
                .press("cancel");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("more came back than the books have as paid for this line; enter the missing payment"
                        + " first, or write a smaller amount");
        Visitor.Reply done = ilse.follow(ilse.form(refused, "form:has(button[value=cancel])")
                .with("back", "40")
                .press("cancel"));
        assertThat(done.page().select(".flash p").text())
                .isEqualTo("The order is called off. €40.00 back is in the books. €50.30 is lost.");
        assertThat(done.page().select("form:has(button[value=order])")).hasSize(1);
        assertThat(SERVER.as("noor").get("/build/materials/mat.1/cancel").status())
                .isEqualTo(403);
    }
}
