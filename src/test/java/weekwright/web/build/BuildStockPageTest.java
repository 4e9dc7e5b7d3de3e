package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class BuildStockPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_empty_yard_says_what_it_is_for() {
        try (ServerFixture empty = ServerFixture.small()) {
            assertThat(empty.as("ilse")
                            .get("/build/stock")
                            .page()
                            .select(".empty-sheet h2")
                            .text())
                    .isEqualTo("Nothing lies in the yard yet");
        }
    }

    @Test
    void the_yard_lists_what_lies_there_and_when_it_is_ready() {
        SERVER.db().write("test", write -> {
            StockItemStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            StockItem.class,
                            "id",
                            "yard.1",
                            "item",
                            "Larch planks",
                            "quantity",
                            "1.5",
                            "unit",
                            "m3",
                            "place",
                            "barn",
                            "since",
                            "2026-10-01",
                            "ready_likely",
                            "90"));
            return null;
        });
        SERVER.db().write("test", write -> {
            StockItemStore.TABLE.insert(
                    write, SmallProject.of(StockItem.class, "id", "yard.2", "item", "Wet oak", "moisture", "wet"));
            return null;
        });
        Visitor.Reply page = SERVER.as("ilse").get("/build/stock");
        assertThat(page.page().select("tbody tr").eachText())
                .containsExactly("Larch planks 1.5 m3 barn about 30 December", "Wet oak wet wet, not said when dry");
        assertThat(page.page().select("td[data-label=Ready] a").eachAttr("href"))
                .containsExactly("/build/stock/yard.2/edit#dry_species");
        Visitor.Reply sheet = SERVER.as("ilse").get("/build/stock/yard.2/edit");
        assertThat(sheet.page().select("details:has(#dry_species)").hasAttr("open"))
                .isTrue();
    }
}
