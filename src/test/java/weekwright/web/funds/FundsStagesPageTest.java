package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Money;
import weekwright.build.StageStore;
import weekwright.db.Stale;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class FundsStagesPageTest {
    private final ServerFixture server = ServerFixture.of(db -> {
        SmallProject.fill(db);
        db.write("test", write -> {
            set(write, MaterialStore.TABLE, 0, "ordered", Optional.of(LocalDate.of(2026, 11, 2)));
            set(write, StageStore.TABLE, 1, "rough_cost", Optional.of(new Money(50_000)));
            row(
                    write,
                    Material.class,
                    MaterialStore.TABLE,
                    "id",
                    "mat.3",
                    "task",
                    "gate.1",
                    "item",
                    "Pegs",
                    "quantity",
                    "7",
                    "waste",
                    "10",
                    "price_likely",
                    "0.85",
                    "ordered",
                    "2026-10-01",
                    "received",
                    "2026-10-08");
            row(
                    write,
                    Material.class,
                    MaterialStore.TABLE,
                    "id",
                    "mat.4",
                    "task",
                    "gate.1",
                    "item",
                    "Clay",
                    "source",
                    "given");
            paid(write, "p1", "-90.30", "material", "task", "gate.1", "material", "mat.1", "payee", "Sawmill");
            paid(write, "p2", "-7.10", "material", "material", "mat.3");
            paid(write, "p3", "0.10", "refund", "material", "mat.3");
            paid(write, "p4", "-12", "other-cost", "task", "gate.3", "payee", "Hire");
            paid(write, "p5", "-3", "other-cost");
            return null;
        });
    });

    @AfterEach
    void close() {
        server.close();
    }

    private static <R extends Record> void set(
            Write write, Table<R> table, int index, String column, Optional<Object> value) {
        var old = table.list(write).get(index);
        try {
            table.update(write, old.row(), old.version(), table.shape().with(old.value(), column, value));
        } catch (Stale e) {
            throw new IllegalStateException(e);
        }
    }

    private static <R extends Record> void row(Write write, Class<R> type, Table<R> table, String... pairs) {
        table.insert(write, SmallProject.of(type, pairs));
    }

    private static void paid(Write write, String id, String amount, String kind, String... more) {
        List<String> pairs = new ArrayList<>(List.of("id", id, "date", "2026-11-03", "amount", amount, "kind", kind));
        pairs.addAll(List.of(more));
        row(write, LedgerEntry.class, LedgerEntryStore.TABLE, pairs.toArray(String[]::new));
    }

    /**
     * Worked by hand (rules 61 and 62): boards 14 x 21.50 = 301.00, ordered, 90.30 paid, so 210.70 committed; flat iron 6 x 9.00
     * = 54.00 not ordered; pegs 7 x 1.1 x 0.85 = 6.545, half up 6.55, came, 7.00 paid with the refund taken off; clay is given.
     */
    @Test
    void rule_61_and_62_each_line_says_what_is_committed_spent_and_left_and_every_figure_leads_to_its_rows() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply page = ilse.get("/funds/stages");
        assertThat(page.page().select("#gate tbody tr").eachText())
                .containsExactly(
                        "Oak boards €90.30 on 3 Nov, Sawmill €301.00 €210.70 €90.30 €0.00",
                        "Pegs €7.10 on 3 Nov −€0.10 on 3 Nov €6.55 €0.00 €7.00 €0.00",
                        "Clay €0.00 €0.00 €0.00 €0.00",
                        "Flat iron €54.00 €0.00 €0.00 €54.00",
                        "Not listed yet, roughly €500.00 €0.00 €0.00 €500.00",
                        "Paid beside the lines €12.00 on 3 Nov, Hire €0.00 €0.00 €12.00 €0.00");
        assertThat(page.page().select("#gate > p").text()).isEqualTo("It comes to €874, €12.45 over the estimate.");
        assertThat(page.page().select("main > table tbody tr").eachText())
                .containsExactly(
                        "Sluice gate €861.55 €210.70 €109.30 €554.00 €874.00",
                        "All stages €861.55 €210.70 €109.30 €554.00 €874.00");
        assertThat(page.page().select("#gate small a").attr("href")).isEqualTo("/funds/entries/4/edit");
        assertThat(ilse.get("/build/stages/gate").page().select("#cost tr").eachText())
                .startsWith(
                        "Estimate €861.55",
                        "Spent so far €109.30",
                        "Committed €210.70",
                        "Left to order €554.00",
                        "Comes to €874.00");
        assertThat(ilse.get("/build").text()).contains("€109");
        assertThat(ilse.get("/funds")
                        .page()
                        .select("section[aria-labelledby=stages-head] tbody tr")
                        .eachText())
                .containsExactly("Sluice gate €861.55 €210.70 €109.30 €554");
        assertThat(server.as("noor").get("/build/stages/gate").page().select("#cost"))
                .isEmpty();
        assertThat(server.as("noor").get("/funds/stages").status()).isEqualTo(403);
    }
}
