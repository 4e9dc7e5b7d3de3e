package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsSupplierEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void it_is_changed_and_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/funds/suppliers/new"))
                .with("name", "The sawyer")
                .with("telephone", "0555 0100 14")
                .send());
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/funds/suppliers/s.1/edit"))
                .with("telephone", "0555 0100 15")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Saved: The sawyer.");
        assertThat(saved.page().select("main tbody tr").text()).isEqualTo("The sawyer 0555 0100 15");
        Visitor.Reply gone = ilse.follow(
                ilse.form(ilse.get("/funds/suppliers/s.1/edit"), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text())
                .isEqualTo("The sawyer is removed. The materials keep the name.");
        assertThat(ilse.get("/funds/suppliers/s.1/edit").status()).isEqualTo(404);
    }
}
