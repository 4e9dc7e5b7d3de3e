package weekwright.files.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.base.Problem;
import weekwright.base.Problems;

/** Records with the physical lines on which they start, and the limits; the grammar is that of RFC 4180. */
class CsvTextTest {
    private final Problems problems = new Problems();

    private CsvText parsed(String text) {
        Optional<CsvText> parsed = CsvText.parse("links.csv", text, problems);
        assertThat(faults()).isEmpty();
        return parsed.orElseThrow();
    }

    private List<String> faults(String text) {
        assertThat(CsvText.parse("links.csv", text, problems)).isEmpty();
        return faults();
    }

    private List<String> faults() {
        return problems.list().stream().map(Problem::text).toList();
    }

    @Test
    void a_record_stands_on_the_line_on_which_it_starts_whatever_ends_the_lines_and_whatever_is_quoted() {
        CsvText text = parsed("a,b\r\n\"1\n2\r3\r\n4\",x\r\r\n\ny,\"he said \"\"cut\"\"\"\nlast,\"one\"");
        assertThat(text.header()).isEqualTo(new CsvText.Line(1, List.of("a", "b")));
        assertThat(text.records())
                .containsExactly(
                        new CsvText.Line(2, List.of("1\n2\r3\r\n4", "x")),
                        new CsvText.Line(8, List.of("y", "he said \"cut\"")),
                        new CsvText.Line(9, List.of("last", "one")));
    }

    @Test
    void the_last_line_may_end_as_any_other() {
        for (String end : List.of("", "\r", "\n", "\r\n")) {
            assertThat(parsed("a\rb" + end).records()).containsExactly(new CsvText.Line(2, List.of("b")));
        }
    }

    /** Where a semicolon stands and no comma, it divides. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"a;b|a/b", ";b|/b", "a;b,c|a;b/c", ",a;b|/a;b", "ab|ab"})
    void the_first_line_decides_what_divides(String first, String cells) {
        assertThat(parsed(first).header().cells()).containsExactly(cells.split("/"));
    }

    @Test
    void two_hundred_cells_are_read_and_one_more_is_not() {
        assertThat(parsed("a" + ",".repeat(199)).header().cells()).hasSize(200);
        assertThat(faults("a\nb" + ",".repeat(200)))
                .containsExactly("links.csv line 2: has more than 200 cells; look at the dividers");
    }

    @Test
    void a_million_characters_are_read_and_one_more_is_not() {
        assertThat(parsed("a\n" + "b".repeat(1_000_000)).records()).hasSize(1);
        assertThat(faults("a\n" + "b".repeat(1_000_001)))
                .containsExactly("links.csv line 2: is longer than 1000000 characters; shorten it");
    }

    @Test
    void two_hundred_thousand_records_are_read_and_one_more_is_not() {
        assertThat(parsed("a\n".repeat(200_000)).records()).hasSize(199_999);
        assertThat(faults("a\n".repeat(200_001)))
                .containsExactly("links.csv line 200001: is past the 200000 lines that are read; split the file");
    }

    @Test
    void a_quote_has_to_be_closed_at_the_end_of_its_cell() {
        assertThat(faults("a\n\"b\"\""))
                .containsExactly("links.csv line 2: opens a quote that is never closed; close it");
    }

    @Test
    void after_a_closing_quote_only_a_divider_or_the_end_may_stand() {
        assertThat(faults("a,b\n\"c\"d,e"))
                .containsExactly("links.csv line 2: has text after a closing quote; write a quote inside quotes twice");
    }

    @Test
    void another_programs_table_may_have_quotes_inside_a_cell() {
        assertThat(CsvText.parse("bank.csv", "day;12\" nails", ';', problems)
                        .orElseThrow()
                        .header()
                        .cells())
                .containsExactly("day", "12\" nails");
        assertThat(faults()).isEmpty();
    }
}
