package weekwright.files.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetCsvTest {
    private static List<String> cells(SheetCsv sheet) throws IOException {
        List<CSVRecord> rows =
                CSVFormat.RFC4180.parse(new StringReader(sheet.toString())).getRecords();
        return rows.get(1).toList();
    }

    /** The signs with which a spreadsheet begins a formula: OWASP's page on CSV injection, as other pages quote it. */
    @ParameterizedTest
    @ValueSource(
            strings = {"=1+1", "+49 30 1234", "-2+3", "@SUM(A1)", "\t=1+1", "\r=1+1", "\n=1+1", "＝1+1", "=\"a\",b"})
    void no_text_begins_a_formula(String payee) throws IOException {
        assertThat(cells(new SheetCsv("payee", "amount")
                        .text(payee)
                        .figure("-45.00")
                        .end()))
                .containsExactly("'" + payee, "-45.00");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a=1", "Nails", "'quoted", " =1", "Müller, \"Büro\"", ""})
    void other_text_stays_as_it_is(String payee) throws IOException {
        assertThat(cells(new SheetCsv("payee", "amount").text(payee).figure("1").end()))
                .containsExactly(payee, "1");
    }

    @Test
    void each_row_has_its_own_cells() {
        assertThat(new SheetCsv("a", "b")
                        .text("1")
                        .figure("2")
                        .end()
                        .text("3")
                        .figure("4")
                        .end()
                        .toString())
                .isEqualTo("\uFEFFa,b\r\n1,2\r\n3,4\r\n");
    }

    @Test
    void a_spreadsheet_sees_the_encoding() {
        assertThat(new SheetCsv("payee").text("Müller").end().toString()).isEqualTo("\uFEFFpayee\r\nMüller\r\n");
    }
}
