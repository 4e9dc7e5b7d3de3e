package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsYearsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_year_says_what_is_in_it_and_what_is_missing_and_gives_its_folder() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/years");
        assertThat(page.text())
                .contains("A tax year begins on 1 January. Each has one folder for the accountant.")
                .contains("2026 1 January 2026 to 31 December 2026 €621.00 income after €0.00 fees, €86.20 costs, so"
                        + " far.")
                .contains("Ask a licensed accountant or your tax office.");
        assertThat(page.page().select(".missing li").eachText())
                .containsExactly(
                        "Two months are not closed", "Two pay-outs have no gross and fee", "One cost has no receipt");
        Visitor.Reply zip = ilse.get("/funds/years/2026/folder.zip");
        assertThat(zip.status()).isEqualTo(200);
        assertThat(zip.header("content-type")).startsWith("application/zip");
        assertThat(zip.header("content-disposition")).isEqualTo("attachment; filename=\"year-2026.zip\"");
        assertThat(zip.header("x-content-type-options")).isEqualTo("nosniff");
        assertThat(zip.body()).startsWith("PK").contains("year-2026/entries.csv");
    }

    @Test
    void years_without_books_and_helpers_get_none() {
        Visitor ilse = SERVER.as("ilse");
        assertThat(ilse.get("/funds/years/2025/folder.zip").status()).isEqualTo(404);
        assertThat(ilse.get("/funds/years/2027/folder.zip").text()).contains("The books have the year 2026.");
        assertThat(ilse.get("/funds/years/last/folder.zip").status()).isEqualTo(404);
        assertThat(SERVER.as("noor").get("/funds/years").status()).isEqualTo(403);
        assertThat(SERVER.as("noor").get("/funds/years/2026/folder.zip").status())
                .isEqualTo(403);
    }
}
