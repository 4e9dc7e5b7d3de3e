package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class FundsOrdersPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_comes_again_says_before_which_day_it_can_be_stopped() {
        try (ServerFixture own = ServerFixture.of(db -> {
            SmallProject.fill(db);
            db.write("test", write -> {
                RegularItemStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                RegularItem.class,
                                "id",
                                "r.1",
                                "name",
                                "Rent",
                                "amount",
                                "-190",
                                "every",
                                "month",
                                "from",
                                "2026-09-20"));
                RegularItemStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                RegularItem.class, "id", "r.2", "name", "Music", "amount", "-12", "every", "episode"));
                return null;
            });
        })) {
            assertThat(own.as("ilse")
                            .get("/funds/orders")
                            .page()
                            .select("#thin tbody tr")
                            .eachText())
                    .containsExactly(
                            "Rent every month 20 Dec €190.00", "Music every published episode the next film €12.00");
        }
    }

    /** Worked by hand: 14 m at 21.50 = 301.00, of which 90.30 are paid; 210.70 need not be paid when it is called off. */
    @Test
    void an_order_out_says_its_day_what_is_next_and_what_calling_it_off_would_lose() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/materials/mat.1"), "form:has(button[value=order])")
                .with("ordered", "2026-11-02")
                .with("promised", "2026-11-23")
                .with("paid", "90.30")
                .press("order"));
        Visitor.Reply page = ilse.get("/funds/orders");
        assertThat(page.page()
                        .select("section[aria-labelledby=out-head] tbody tr td")
                        .eachText())
                .endsWith("Mon 23 Nov 2 days ago", "€210.70", "€90.30", "Ask where it is.");
        assertThat(page.page().select(".lead").text()).endsWith("one is on order, one of them late.");
        assertThat(page.page()
                        .select("#thin a[href=/build/materials/mat.1/cancel]")
                        .text())
                .isEqualTo("Oak boards");
        assertThat(page.page().select("#thin tr:has(a[href*=cancel]) td").eachText())
                .containsExactly("no day agreed; ask", "€210.70", "€90.30");
        assertThat(ilse.get("/funds/orders.csv").body())
                .contains("on order,Oak boards,14 m,", ",2026-11-23,210.70,90.30,,Ask where it is.");
        assertThat(SERVER.as("noor").get("/funds/orders").status()).isEqualTo(403);
    }
}
