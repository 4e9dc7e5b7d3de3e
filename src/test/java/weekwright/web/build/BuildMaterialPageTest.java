package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildMaterialPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_line_is_ordered_promised_and_received_in_part() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/materials/mat.1");
        assertThat(page.page().select("h1").text()).isEqualTo("Oak boards, 14 m");
        Visitor.Reply refused = ilse.form(page, "form:has(button[value=order])")
                .with("ordered", "2026-11-26")
                .with("paid", "9,999,999")
                .press("order");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("\"9,999,999\" is not an amount of money; write 12.50");
        Visitor.Reply future = ilse.form(refused, "form:has(button[value=order])")
                .with("paid", "90.30")
                .press("order");
        assertThat(future.troubles())
                .containsExactly("\"26 November 2026\" is after today, 25 November 2026; write the day it happened");
        Visitor.Reply ordered = ilse.follow(ilse.form(future, "form:has(button[value=order])")
                .with("ordered", "2026-11-20")
                .press("order"));
        assertThat(ordered.page().select(".flash p").text())
                .isEqualTo("Ordered on 20 November. €90.30 paid is in the books.");
        Visitor.Reply promised = ilse.follow(ilse.form(ordered, "form:has(button[value=promise])")
                .with("promised", "2026-12-11")
                .press("promise"));
        assertThat(promised.page().select(".lead").text())
                .isEqualTo("Ordered Fri 20 Nov, promised for 11 Dec, in 2 weeks.");
        Visitor.Reply part = ilse.follow(ilse.form(promised, "form:has(button[value=receive])")
                .with("part", "10")
                .with("paid", "150")
                .press("receive"));
        assertThat(part.page().select(".flash p").text())
                .isEqualTo("Received on 25 November. Still to come: 4 m. €150.00 paid is in the books.");
        assertThat(part.page().select("section[aria-labelledby=paid-head] td").eachText())
                .containsExactly("€90.30", "−€25.80", "€150.00");
        assertThat(ilse.get("/build/materials/mat.3").page().select("h1").text())
                .isEqualTo("Oak boards, 4 m");
    }

    @Test
    void a_helper_is_sent_away_from_money() {
        Visitor noor = SERVER.as("noor");
        assertThat(noor.get("/build/materials/mat.2").status()).isEqualTo(403);
    }
}
