package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsFilesNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static Visitor.Reply sent(String name, byte[] content) {
        Visitor ilse = SERVER.as("ilse");
        return ilse.form(ilse.get("/funds/files/new"))
                .attach("file", name, content)
                .send();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    @Test
    void a_file_or_pasted_rows_are_needed_and_not_both() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply none = ilse.form(ilse.get("/funds/files/new")).send();
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.troubles()).containsExactly("is missing; choose the file, or paste its rows");
        Visitor.Reply both = ilse.form(ilse.get("/funds/files/new"))
                .attach("file", "a.csv", ascii("x"))
                .with("text", "2026-11-03;5")
                .send();
        assertThat(both.troubles()).containsExactly("is more than one; send one file, or the pasted rows alone");
        assertThat(both.page().select("#text").val()).isEqualTo("2026-11-03;5");
        Visitor.Reply forged = ilse.form(ilse.get("/funds/files/new"))
                .with("text", "2026-11-03;5")
                .with("source", "gone")
                .send();
        assertThat(forged.troubles()).containsExactly("\"gone\" is not one of those here; choose one of the list");
    }

    @Test
    void forty_megabytes_and_five_and_one_byte_are_refused_in_words() {
        assertThat(sent("years.csv", new byte[40_000_000]).troubles())
                .containsExactly("\"years.csv\" is 40.0 MB, and at most 5 MB are read; download a shorter time, such as"
                        + " one year");
        assertThat(sent("year.csv", new byte[5_000_001]).status()).isEqualTo(422);
        byte[] most = new byte[5_000_000];
        Arrays.fill(most, (byte) '\n');
        assertThat(sent("year.csv", most).status()).isEqualTo(303);
        for (int bytes : new int[] {42_000_000, 62_000_000}) {
            Visitor.Reply huge = sent("huge.csv", new byte[bytes]);
            assertThat(huge.status()).isEqualTo(413);
            assertThat(huge.text())
                    .contains(
                            "What was sent is too large. Nothing of it was saved. Send a file of at most 40 MB, and at"
                                    + " most 160 MB at once; each page says what it reads.");
        }
    }

    @Test
    void what_is_no_text_is_told_by_what_it_is() {
        assertThat(sent("a.csv", new byte[0]).troubles()).containsExactly("\"a.csv\" is empty; download it once more");
        assertThat(sent("a.xlsx", ascii("PK\u0003\u0004rest")).troubles())
                .containsExactly(
                        "\"a.xlsx\" is a spreadsheet or an archive, not text; download it as CSV, and send that");
        assertThat(sent("..\\..\\a.pdf", ascii("%PDF-1.7")).troubles())
                .containsExactly("\"a.pdf\" is a PDF, not text; download it as CSV, and send that");
        assertThat(sent("/etc/a.png", ascii("\u0089PNG\r\n")).troubles())
                .containsExactly("\"a.png\" is a picture, not text; download it as CSV, and send that");
    }

    @Test
    void the_same_file_waits_once_for_each_time_it_was_sent() {
        Visitor.Reply first = sent("march.csv", ascii("2026-11-03,5"));
        Visitor.Reply second = sent("march.csv", ascii("2026-11-03,5"));
        assertThat(first.status()).isEqualTo(303);
        assertThat(second.to()).startsWith("/funds/files/").isNotEqualTo(first.to());
    }
}
