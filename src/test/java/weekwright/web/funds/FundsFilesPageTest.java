package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsFilesPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_file_that_waits_is_listed_until_it_is_thrown_away() {
        Visitor ilse = SERVER.as("ilse");
        assertThat(ilse.get("/funds/files").text()).contains("No file was read yet");
        ilse.follow(ilse.form(ilse.get("/funds/files/new"))
                .with("text", "day,amount\n2026-11-03,-12.50")
                .send());
        Visitor.Reply page = ilse.get("/funds/files");
        assertThat(page.page().select("tbody tr").text()).startsWith("pasted rows Wed 25 Nov");
        Visitor.Form again = ilse.form(page, "form.act");
        Visitor.Reply gone = ilse.follow(ilse.form(page, "form.act").press("throw"));
        assertThat(gone.page().select(".flash p").text())
                .isEqualTo("The file is thrown away; nothing of it is in the books.");
        assertThat(gone.text()).contains("No file was read yet");
        Visitor.Reply twice = again.with("answer", "another-key-0123456789").press("throw");
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.troubles()).containsExactly("This file does not wait any more; look whether it is entered");
    }

    @Test
    void a_helper_reads_none() {
        assertThat(SERVER.as("noor").get("/funds/files").status()).isEqualTo(403);
    }
}
