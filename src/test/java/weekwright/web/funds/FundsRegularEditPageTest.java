package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsRegularEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void it_is_changed_and_comes_no_more() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/funds/regular/new"))
                .with("name", "Power")
                .with("amount", "70")
                .send());
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/funds/regular/r.1/edit"))
                .with("amount", "74")
                .with("every", "year")
                .send());
        assertThat(saved.page().select("tbody tr").text()).isEqualTo("Power −€74.00 every year from Wed 25 Nov");
        Visitor.Reply gone = ilse.follow(
                ilse.form(ilse.get("/funds/regular/r.1/edit"), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text())
                .isEqualTo("Power comes no more. What was booked of it stays in the books.");
        assertThat(ilse.get("/funds/regular/r.1/edit").status()).isEqualTo(404);
    }
}
