package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class FundsLedgerPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_books_are_shown_newest_first_with_sums() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/ledger");
        assertThat(page.page().select(".lead").text()).isEqualTo("3 entries: €621.00 came in, €86.20 went out.");
        assertThat(page.page().select("tbody tr td.figure").eachText())
                .containsExactly("−€86.20", "€317.40", "€303.60");
    }

    @Test
    void kind_and_month_choose_among_them() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/ledger?kind=payout&month=2026-10");
        assertThat(page.page().select("tbody tr td.figure").eachText()).containsExactly("€303.60");
        assertThat(page.page().select("#kind option[selected]").text()).isEqualTo("pay-out of pledges");
        assertThat(ilse.get("/funds/ledger?kind=nonsense&page=99").text()).contains("No entry is like that.");
    }

    @Test
    void a_stage_chooses_its_own_entries() {
        try (ServerFixture books = many(2)) {
            Visitor ilse = books.as("ilse");
            Visitor.Reply page = ilse.get("/funds/ledger?stage=GATE");
            assertThat(page.page().select("tbody tr").eachText())
                    .containsExactly("4 Nov Nails 1 other cost Sluice gate −€1.00");
            assertThat(page.page().select("#stage option[selected]").eachText()).isEmpty();
            assertThat(ilse.get("/funds/ledger?stage=gate")
                            .page()
                            .select("#stage option[selected]")
                            .text())
                    .isEqualTo("Sluice gate");
        }
    }

    @Test
    void a_hundred_stand_on_a_page_and_a_page_past_the_last_is_the_last() {
        try (ServerFixture books = many(250)) {
            Visitor ilse = books.as("ilse");
            Visitor.Reply first = ilse.get("/funds/ledger?kind=other-cost");
            assertThat(first.page().select(".lead").text()).startsWith("251 entries: ");
            assertThat(first.page().select("tbody tr")).hasSize(100);
            assertThat(ways(first)).containsExactly("Older /funds/ledger?page=1&kind=other-cost");
            Visitor.Reply second = ilse.get("/funds/ledger?page=1&kind=other-cost");
            assertThat(second.page().select("tbody tr")).hasSize(100);
            assertThat(ways(second))
                    .containsExactly(
                            "Newer /funds/ledger?page=0&kind=other-cost", "Older /funds/ledger?page=2&kind=other-cost");
            Visitor.Reply last = ilse.get("/funds/ledger?page=9999&kind=other-cost");
            assertThat(last.page().select("tbody tr")).hasSize(51);
            assertThat(ways(last)).containsExactly("Newer /funds/ledger?page=1&kind=other-cost");
        }
    }

    private static List<String> ways(Visitor.Reply page) {
        return page.page().select("main > .buttons a").stream()
                .map(way -> way.text() + " " + way.attr("href"))
                .toList();
    }

    /** The small project with so many costs of 1.00 more, every second of them of the sluice gate. */
    private static ServerFixture many(int count) {
        return ServerFixture.of(db -> {
            SmallProject.fill(db);
            for (int i = 0; i < count; i++) {
                String stage = i % 2 == 0 ? "weir" : "gate";
                OakMill.addLedger(
                        db,
                        "id",
                        "n" + i,
                        "date",
                        "2026-11-04",
                        "amount",
                        "-1",
                        "kind",
                        "other-cost",
                        "payee",
                        "Nails " + i,
                        "stage",
                        stage);
            }
        });
    }

    @Test
    void a_helper_does_not_see_them() {
        assertThat(SERVER.as("noor").get("/funds/ledger").status()).isEqualTo(403);
    }
}
