package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.files.KeptFiles;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** Receipts first, books later; and receipts sent with a row. */
class FundsReceiptsPageTest {
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
    private static final byte[] PDF = "%PDF-1.7 a bill".getBytes(StandardCharsets.US_ASCII);

    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void start() {
        server = ServerFixture.small();
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private List<String> files() {
        return new KeptFiles(server.app().folder().receipts()).names();
    }

    private List<LedgerEntry> withReceipt() {
        return server.db()
                .read(read -> LedgerEntryStore.TABLE.values(read).stream()
                        .filter(entry -> !entry.receipt().isEmpty())
                        .toList());
    }

    @Test
    void several_come_at_once_and_wait_under_names_of_our_own() {
        Visitor.Reply empty = ilse.get("/funds/receipts");
        assertThat(empty.text()).contains("No receipt waits.");
        Visitor.Reply after = ilse.follow(ilse.form(empty)
                .attach("receipt", "../../etc/passwd.jpg", JPEG)
                .attach("receipt", "bill.exe", PDF)
                .send());
        assertThat(after.page().select(".flash p").text())
                .isEqualTo("Two receipts are kept. Type in what was paid whenever there is time.");
        assertThat(files()).containsExactly("2026-11-25-1.jpg", "2026-11-25-1.pdf");
        assertThat(after.page().select(".receipts img").eachAttr("src")).containsExactly("/receipts/2026-11-25-1.jpg");
        Visitor.Reply picture = ilse.get("/receipts/2026-11-25-1.jpg");
        assertThat(picture.header("content-type")).startsWith("image/jpeg");
        assertThat(picture.header("x-content-type-options")).isEqualTo("nosniff");
        Visitor.Reply bill = ilse.get("/receipts/2026-11-25-1.pdf");
        assertThat(bill.header("content-type")).startsWith("application/pdf");
        assertThat(bill.header("content-disposition")).isEqualTo("attachment; filename=\"receipt.pdf\"");
    }

    @Test
    void what_cannot_be_kept_is_told_file_by_file_and_nothing_is() {
        byte[] large = Arrays.copyOf(JPEG, (int) KeptFiles.MOST_BYTES + 1);
        Visitor.Reply refused = ilse.form(ilse.get("/funds/receipts"))
                .attach("receipt", "good.jpg", JPEG)
                .attach("receipt", "large.jpg", large)
                .attach("receipt", "nothing.png", new byte[0])
                .attach("receipt", "page.jpg", "<html><script>alert(1)</script>".getBytes(StandardCharsets.UTF_8))
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"large.jpg\" is larger than 25 MB; photograph it once more in a smaller size."
                        + " \"nothing.png\" is empty; choose the picture once more."
                        + " \"page.jpg\" is no JPEG, PNG, WebP or PDF inside; save it as one of these");
        assertThat(files()).isEmpty();
        Visitor.Reply none = ilse.form(ilse.get("/funds/receipts")).send();
        assertThat(none.troubles()).containsExactly("is missing; choose or take a picture");
    }

    @Test
    void a_repeated_post_keeps_no_second_file() {
        Visitor.Form form = ilse.form(ilse.get("/funds/receipts")).attach("receipt", "a.jpg", JPEG);
        assertThat(form.send().status()).isEqualTo(303);
        assertThat(form.send().status()).isEqualTo(303);
        assertThat(files()).hasSize(1);
    }

    @Test
    void a_receipt_that_waited_is_typed_in_and_waits_no_more() {
        ilse.form(ilse.get("/funds/receipts")).attach("receipt", "a.jpg", JPEG).send();
        Visitor.Reply page = ilse.get("/funds/costs/new?receipt=2026-11-25-1.jpg");
        assertThat(page.page().select(".receipt a").attr("href")).isEqualTo("/receipts/2026-11-25-1.jpg");
        Visitor.Reply refused = ilse.form(page).with("amount", "").send();
        assertThat(refused.troubles()).containsExactly("is missing; it has to be given");
        assertThat(ilse.form(refused).value("waiting")).isEqualTo("2026-11-25-1.jpg");
        Visitor.Reply saved =
                ilse.follow(ilse.form(refused).with("amount", "12.40").send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("\u20ac12.40 paid on 25 November are in the books.");
        assertThat(withReceipt()).extracting(LedgerEntry::receipt).containsExactly("2026-11-25-1.jpg");
        assertThat(ilse.get("/funds/receipts").page().select(".receipts li")).isEmpty();
    }

    @Test
    void a_file_sent_with_a_row_that_is_refused_is_kept_and_goes_on_with_the_form() {
        Visitor.Reply refused = ilse.form(ilse.get("/funds/costs/new"))
                .with("amount", "twelve")
                .with("payee", "Sawyer")
                .attach("receipt", "a.jpg", JPEG)
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(ilse.form(refused).value("payee")).isEqualTo("Sawyer");
        assertThat(ilse.form(refused).value("waiting")).isEqualTo("2026-11-25-1.jpg");
        ilse.form(refused).with("amount", "12").send();
        assertThat(withReceipt()).extracting(LedgerEntry::receipt).containsExactly("2026-11-25-1.jpg");
        assertThat(files()).hasSize(1);
    }

    @Test
    void a_receipt_that_is_no_picture_is_told_with_all_other_faults() {
        Visitor.Reply refused = ilse.form(ilse.get("/funds/entries/new"))
                .with("amount", "x")
                .with("kind", "other-cost")
                .attach("receipt", "a.txt", "just words, nothing else".getBytes(StandardCharsets.UTF_8))
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "\"x\" is not an amount of money; write 12.50",
                        "\"a.txt\" is no JPEG, PNG, WebP or PDF inside; save it as one of these");
        assertThat(files()).isEmpty();
    }

    @Test
    void hours_and_a_cost_with_its_receipt_are_logged_in_one_form() {
        Visitor.Reply page = ilse.get("/log");
        Visitor.Reply saved = ilse.form(page, "form[data-log]")
                .with("hours", "2")
                .with("cost", "8.20")
                .attach("receipt", "bolts.jpg", JPEG)
                .send();
        assertThat(saved.status()).isEqualTo(303);
        assertThat(withReceipt()).extracting(LedgerEntry::receipt).containsExactly("2026-11-25-1.jpg");
        Visitor.Reply missing = ilse.form(page, "form[data-log]")
                .with("answer", "another-answer-key-0001")
                .with("hours", "2")
                .attach("receipt", "bolts.jpg", JPEG)
                .send();
        assertThat(missing.troubles())
                .containsExactly("is missing; write what the receipt tells, or keep it under Receipts");
    }

    @Test
    void one_is_thrown_away_only_by_somebody_who_is_sure() {
        ilse.form(ilse.get("/funds/receipts")).attach("receipt", "a.jpg", JPEG).send();
        Visitor.Reply page = ilse.get("/funds/receipts");
        Visitor.Reply refused = ilse.form(page, ".receipts form").press("throw");
        assertThat(refused.troubles())
                .containsExactly("\"2026-11-25-1.jpg\" cannot be brought back; tick that you are sure");
        ilse.form(page, ".receipts form").with("sure", "yes").press("throw");
        assertThat(files()).isEmpty();
        Visitor.Reply gone = ilse.form(page, ".receipts form")
                .with("answer", "another-answer-key-0002")
                .with("sure", "yes")
                .press("throw");
        assertThat(gone.troubles())
                .containsExactly(
                        "\"2026-11-25-1.jpg\" does not wait any more; look whether it is in the books already");
    }

    @Test
    void no_address_leads_out_of_the_folder_and_helpers_see_none() {
        for (String path :
                List.of("/receipts/..%2Fbuild.db", "/receipts/%2e%2e", "/receipts/.hidden", "/receipts/none.jpg")) {
            assertThat(ilse.get(path).status()).as(path).isIn(400, 404);
        }
        ilse.form(ilse.get("/funds/receipts")).attach("receipt", "a.jpg", JPEG).send();
        assertThat(server.as("noor").get("/receipts/2026-11-25-1.jpg").status()).isEqualTo(403);
    }
}
