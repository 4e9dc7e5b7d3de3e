package weekwright.files.bank;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.funds.BankRow;
import weekwright.funds.BankSource;
import weekwright.funds.BankSource.DateOrder;
import weekwright.funds.BankSource.Decimals;
import weekwright.funds.BankSource.Divider;
import weekwright.funds.BankSource.Encoding;

/** Ways of writing dates and amounts: common practice of banks, no source. Letters against java.nio.charset's own encoders. */
class BankFilesTest {
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private static byte[] bytes(String text, Charset charset) {
        return text.getBytes(charset);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    private static List<String> said(Problems problems) {
        return problems.list().stream().map(Problem::sentence).toList();
    }

    // ---- letters

    @Test
    void letters_of_every_encoding_are_read_and_recognised() {
        String text = "Müller;−5 €\nBüro;7\n";
        String plain = "Müller;-5 €\nBüro;7\n";
        Map<Encoding, byte[]> files = new HashMap<>(Map.of(
                Encoding.UTF_8, bytes(text, StandardCharsets.UTF_8),
                Encoding.WINDOWS_1252, bytes(plain, WINDOWS),
                Encoding.UTF_16, bytes("\uFEFF" + text, StandardCharsets.UTF_16LE)));
        files.forEach((encoding, file) -> {
            Problems problems = new Problems();
            assertThat(BankLetters.guess(file)).isEqualTo(encoding);
            assertThat(BankLetters.read(file, encoding, problems))
                    .contains(encoding == Encoding.WINDOWS_1252 ? plain : text);
            assertThat(problems.list()).isEmpty();
        });
        for (byte[] sixteen : List.of(
                bytes("\uFEFF" + text, StandardCharsets.UTF_16BE),
                bytes(text, StandardCharsets.UTF_16BE),
                bytes(text, StandardCharsets.UTF_16LE))) {
            assertThat(BankLetters.guess(sixteen)).isEqualTo(Encoding.UTF_16);
            assertThat(BankLetters.read(sixteen, Encoding.UTF_16, new Problems()))
                    .contains(text);
        }
        assertThat(BankLetters.read(bytes("\uFEFFa", StandardCharsets.UTF_8), Encoding.UTF_8, new Problems()))
                .contains("a");
    }

    @Test
    void two_encodings_in_one_file_are_told_by_line() {
        byte[] mixed = joined(
                bytes("day;name\n", StandardCharsets.UTF_8),
                bytes("1;Müller\n", StandardCharsets.UTF_8),
                bytes("2;Büro\n", WINDOWS),
                bytes("3;Nails\n", StandardCharsets.UTF_8),
                bytes("4;Säge", WINDOWS));
        assertThat(BankLetters.guess(mixed)).isEqualTo(Encoding.BY_LINE);
        Problems utf8 = new Problems();
        assertThat(BankLetters.read(mixed, Encoding.UTF_8, utf8)).isEmpty();
        assertThat(said(utf8))
                .containsExactly("\"UTF-8\" does not read lines 3 and 5; choose Windows-1252, or each line for itself");
        Problems windows = new Problems();
        assertThat(BankLetters.read(mixed, Encoding.WINDOWS_1252, windows))
                .contains("day;name\n1;MÃ¼ller\n2;Büro\n3;Nails\n4;Säge");
        assertThat(said(windows)).containsExactly("line 2 look like UTF-8; look at the letters below");
        Problems byLine = new Problems();
        assertThat(BankLetters.read(mixed, Encoding.BY_LINE, byLine))
                .contains("day;name\n1;Müller\n2;Büro\n3;Nails\n4;Säge");
        assertThat(said(byLine))
                .containsExactly(
                        "Two encodings stand in this file: lines 3 and 5 read as Windows-1252, line 2 as UTF-8;"
                                + " look at the letters below");
        assertThat(byLine.hasFaults()).isFalse();
    }

    @Test
    void bytes_that_are_no_letters_are_told_with_their_lines() {
        Problems undefined = new Problems();
        byte[] bad = joined(bytes("a\nb", WINDOWS), new byte[] {(byte) 0x81});
        assertThat(BankLetters.read(bad, Encoding.WINDOWS_1252, undefined)).isEmpty();
        assertThat(said(undefined))
                .containsExactly("\"Windows-1252\" does not read line 2; choose another encoding, or mend the file");
        Problems control = new Problems();
        assertThat(BankLetters.read(bytes("a\nb\u0000", StandardCharsets.UTF_8), Encoding.UTF_8, control))
                .isEmpty();
        assertThat(said(control))
                .containsExactly("Line 2 has what is no text; download the file as CSV, and send that");
        Problems odd = new Problems();
        assertThat(BankLetters.read(bytes("abc", StandardCharsets.UTF_8), Encoding.UTF_16, odd))
                .isEmpty();
        assertThat(said(odd)).containsExactly("\"UTF-16\" does not read this file; choose another encoding");
        assertThat(BankLetters.told(List.of(1, 2, 3, 4, 5, 6, 7))).isEqualTo("lines 1, 2, 3, 4, 5 and 2 more");
        assertThat(BankLetters.told(List.of(1, 2, 3, 4, 5))).isEqualTo("lines 1, 2, 3, 4 and 5");
    }

    // ---- amounts

    private static Optional<Long> amount(String text, Decimals decimals) {
        return BankAmounts.read(text, decimals, 2).map(Money::minor);
    }

    @Test
    void an_amount_is_read_with_a_comma_or_a_point_but_never_with_both() {
        assertThat(amount("1.234,56", Decimals.COMMA)).contains(123456L);
        assertThat(amount("1.234,56", Decimals.POINT)).isEmpty();
        assertThat(amount("1,234.56", Decimals.POINT)).contains(123456L);
        assertThat(amount("1,234.56", Decimals.COMMA)).isEmpty();
        assertThat(amount("1.234", Decimals.COMMA)).contains(123400L);
        assertThat(amount("1.234", Decimals.POINT)).isEmpty();
        assertThat(amount("1,234", Decimals.POINT)).contains(123400L);
        assertThat(amount("12.345.678,90", Decimals.COMMA)).contains(1234567890L);
    }

    @Test
    void signs_marks_gaps_and_brackets_are_read() {
        Map.of(
                        "1.234,56-", -123456L,
                        "-1.234,56", -123456L,
                        "−12,50", -1250L,
                        "+12,50", 1250L,
                        "(12,50)", -1250L,
                        "1 234,56", 123456L,
                        "1'234,56", 123456L,
                        "12,50 EUR", 1250L,
                        "€ -12,50", -1250L,
                        "-€12,5", -1250L)
                .forEach((text, minor) ->
                        assertThat(amount(text, Decimals.COMMA)).as(text).contains(minor));
        assertThat(amount(",50", Decimals.COMMA)).contains(50L);
        assertThat(amount("1\u00a0234\u202f567,00", Decimals.COMMA)).contains(123456700L);
    }

    @Test
    void what_is_no_amount_is_none() {
        for (String text : List.of(
                "",
                "-",
                "x",
                "1e5",
                "NaN",
                "١٢",
                "--1",
                "-1-",
                "1.23,4.5",
                "12.34,00",
                "1.2345,00",
                "1,234,56",
                "1,005",
                "9999999999999",
                "=1+1",
                "0x10",
                "1 23,00")) {
            assertThat(amount(text, Decimals.COMMA)).as(text).isEmpty();
        }
        assertThat(BankAmounts.read("12,5", Decimals.COMMA, 0)).isEmpty();
        assertThat(BankAmounts.read("12,500", Decimals.COMMA, 0)).isEmpty();
        assertThat(BankAmounts.read("1.234", Decimals.POINT, 3)).contains(new Money(1234));
    }

    // ---- dates

    @Test
    void a_date_is_read_in_the_order_that_was_chosen() {
        LocalDate third = LocalDate.of(2026, 4, 3);
        assertThat(BankDates.read("03/04/2026", DateOrder.DMY)).contains(third);
        assertThat(BankDates.read("03/04/2026", DateOrder.MDY)).contains(LocalDate.of(2026, 3, 4));
        assertThat(BankDates.read("03/04/2026", DateOrder.YMD)).isEmpty();
        for (String text : List.of("2026-04-03", "2026/4/3", "20260403", "2026-04-03T10:11:12Z", "26-04-03")) {
            assertThat(BankDates.read(text, DateOrder.YMD)).as(text).contains(third);
        }
        for (String text :
                List.of("3.4.2026", "03.04.26", "03 Apr 2026", "3-April-2026", "03042026", "03.04.2026 10:11")) {
            assertThat(BankDates.read(text, DateOrder.DMY)).as(text).contains(third);
        }
        assertThat(BankDates.read("Apr 3, 2026", DateOrder.MDY)).contains(third);
        for (String text : List.of("", "31.02.2026", "29.02.2025", "0.1.2026", "1.13.2026", "today", "1.1.026", "3")) {
            assertThat(BankDates.read(text, DateOrder.DMY)).as(text).isEmpty();
        }
    }

    @Test
    void an_order_is_guessed_only_where_no_other_gives_other_days() {
        assertThat(BankGuess.order(List.of("03/04/2026", "13/04/2026"))).contains(DateOrder.DMY);
        assertThat(BankGuess.order(List.of("03/04/2026", "04/13/2026"))).contains(DateOrder.MDY);
        assertThat(BankGuess.order(List.of("03/04/2026", "05/06/2026"))).isEmpty();
        assertThat(BankGuess.order(List.of("03/03/2026", "04/04/2026"))).contains(DateOrder.DMY);
        assertThat(BankGuess.order(List.of("2026-04-03"))).contains(DateOrder.YMD);
        assertThat(BankGuess.order(List.of("03/04/26"))).isEmpty();
        assertThat(BankGuess.order(List.of("13/04/2026", "04/13/2026"))).isEmpty();
        assertThat(BankGuess.order(List.of("13/04/2026", "14/04/2026", "Total")))
                .contains(DateOrder.DMY);
        assertThat(BankGuess.order(List.of("13/04/2026", "a", "b"))).isEmpty();
        assertThat(BankGuess.order(List.of())).isEmpty();
        assertThat(BankGuess.twofold(List.of("13/04/2026", "03/04/2026")))
                .contains(new BankGuess.Twofold("03/04/2026", LocalDate.of(2026, 4, 3), LocalDate.of(2026, 3, 4)));
    }

    @Test
    void a_decimal_mark_is_guessed_only_where_the_other_gives_no_other_amounts() {
        assertThat(BankGuess.decimals(List.of("1.234,56", "7"), 2)).contains(Decimals.COMMA);
        assertThat(BankGuess.decimals(List.of("1,234.56", "7"), 2)).contains(Decimals.POINT);
        assertThat(BankGuess.decimals(List.of("1.234", "7"), 2)).contains(Decimals.COMMA);
        assertThat(BankGuess.decimals(List.of("1.234", "7"), 3)).isEmpty();
        assertThat(BankGuess.decimals(List.of("7", "12"), 2)).contains(Decimals.POINT);
        assertThat(BankGuess.decimals(List.of("1.234,56", "1,234.56"), 2)).isEmpty();
    }

    // ---- tables

    private static BankTable table(String text) {
        Problems problems = new Problems();
        Optional<BankTable> table = BankTable.of("x.csv", text, BankTable.guess(text), problems);
        assertThat(problems.list()).isEmpty();
        return table.orElseThrow();
    }

    private static BankSource source(String... texts) {
        Map<String, String> all = new HashMap<>(Map.of(
                "id",
                "x",
                "name",
                "x",
                "encoding",
                "utf-8",
                "divider",
                "comma",
                "skip",
                "0",
                "date_order",
                "ymd",
                "decimals",
                "point",
                "date",
                "1",
                "kind_in",
                "other-income"));
        all.put("kind_out", "other-cost");
        for (int i = 0; i < texts.length; i += 2) {
            all.put(texts[i], texts[i + 1]);
        }
        Problems problems = new Problems();
        BankSource source = Shape.of(BankSource.class)
                .parse(all, Reading.file(2), problems)
                .orElseThrow(() -> new AssertionError(said(problems)));
        return source;
    }

    /** Three places are a fraction in a currency of three digits (ISO 4217: KWD) and thousands in one of two. */
    @Test
    void an_amount_that_can_be_two_is_told_with_both() {
        assertThat(BankGuess.undecided(List.of("5", "1.234"), 3))
                .contains(new BankGuess.Undecided("1.234", "can be 1234.000 or 1.234"));
        assertThat(BankGuess.undecided(List.of("5", "1.234", "-1.234,50"), 2)).isEmpty();
        assertThat(BankGuess.undecided(List.of("5", "12"), 2)).isEmpty();
    }

    @Test
    void the_divider_is_the_one_that_parts_most_lines_alike() {
        assertThat(BankTable.guess("a;b;c\n1,5;2;3\n1,6;2;3")).isEqualTo(Divider.SEMICOLON);
        assertThat(BankTable.guess("a,b\n\"x; y; z\",2\n\"x; y; z\",3")).isEqualTo(Divider.COMMA);
        assertThat(BankTable.guess("a\tb\n1,5\t2\n1,5\t3")).isEqualTo(Divider.TAB);
        assertThat(BankTable.guess("a|b|c\n1|2|3")).isEqualTo(Divider.BAR);
        assertThat(BankTable.guess("")).isEqualTo(Divider.COMMA);
    }

    @Test
    void a_divider_between_quotation_marks_parts_nothing() {
        assertThat(BankTable.guess("1,\"Oak; ash; elm; lime\",5\n2,\"Nails; hoops; bolts; pins\",7\n"))
                .isEqualTo(Divider.COMMA);
        assertThat(BankTable.guess("1;\"Oak, ash, elm, lime\";5\n2;\"Nails, hoops, bolts, pins\";7\n"))
                .isEqualTo(Divider.SEMICOLON);
    }

    @Test
    void a_name_longer_than_the_books_hold_is_cut_and_ends_in_dots() {
        List<BankRow> rows = rows(
                "2026-11-03," + "a".repeat(200) + ",5\n2026-11-04," + "b".repeat(201) + ",5\n",
                source("payee", "2", "amount", "3"));
        assertThat(rows).extracting(BankRow::payee).containsExactly("a".repeat(200), "b".repeat(199) + "…");
    }

    @Test
    void a_quote_that_is_not_closed_is_told_with_the_line_it_opens_in() {
        Problems problems = new Problems();
        assertThat(BankTable.of("x.csv", "a;b\n1;\"open\n2;3\n", Divider.SEMICOLON, problems))
                .isEmpty();
        assertThat(problems.list().get(0).text())
                .isEqualTo("x.csv line 2: opens a quote that is never closed; close it");
    }

    @Test
    void a_quote_inside_a_cell_without_quotes_stays() {
        assertThat(table("2026-11-03;=LINK(\"x\");5\n2026-11-04;6\" nails;7\n").rows().stream()
                        .map(row -> row.cell(2)))
                .containsExactly("=LINK(\"x\")", "6\" nails");
    }

    @Test
    void columns_are_found_by_their_headings_below_lines_that_are_no_table() {
        String text = "Account of the weir\n\nBuchungstag;Valuta;Empfänger;Verwendungszweck;Betrag;Saldo\n"
                + "13.11.2026;13.11.2026;Sägewerk;Rechnung 7;-1.234,50;2.000,00\n"
                + "14.11.2026;14.11.2026;Nägel;;-5,00;1.995,00\n";
        assertThat(BankGuess.of(table(text), 2))
                .containsAllEntriesOf(Map.of(
                        "skip",
                        "2",
                        "date",
                        "1",
                        "payee",
                        "3",
                        "reference",
                        "4",
                        "amount",
                        "5",
                        "balance",
                        "6",
                        "date_order",
                        "dmy",
                        "decimals",
                        "comma"));
    }

    @Test
    void columns_without_headings_are_found_by_what_stands_in_them() {
        assertThat(BankGuess.of(table("2026-11-13,Nails,-5.00\n2026-11-14,Oak,-7.25\n"), 2))
                .containsAllEntriesOf(Map.of(
                        "skip",
                        "0",
                        "date",
                        "1",
                        "payee",
                        "2",
                        "amount",
                        "3",
                        "date_order",
                        "ymd",
                        "decimals",
                        "point"));
        assertThat(BankGuess.of(table("Date,Paid out,Paid in,Details\n2026-11-13,5.00,,Nails\n"), 2))
                .containsAllEntriesOf(Map.of("date", "1", "out", "2", "in", "3"))
                .doesNotContainKey("amount");
        assertThat(BankGuess.of(table("Date,Gross,Fees,Net\n2026-11-13,5.00,0.40,4.60\n"), 2))
                .containsAllEntriesOf(Map.of("date", "1", "gross", "2", "fee", "3", "amount", "4"));
    }

    // ---- bookings

    @Test
    void one_signed_column_two_columns_or_a_word_give_the_same_bookings() {
        List<BankRow> expected = List.of(
                new BankRow(
                        1,
                        LocalDate.of(2026, 11, 3),
                        new Money(-1250),
                        "Nails",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                new BankRow(
                        2,
                        LocalDate.of(2026, 11, 4),
                        new Money(500),
                        "Gift",
                        "",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        assertThat(rows("2026-11-03,Nails,-12.50\n2026-11-04,Gift,5\n", source("payee", "2", "amount", "3")))
                .isEqualTo(expected);
        assertThat(rows(
                        "2026-11-03,Nails,12.50,0.00\n2026-11-04,Gift,,5\n",
                        source("payee", "2", "out", "3", "in", "4")))
                .isEqualTo(expected);
        assertThat(rows("2026-11-03,Nails,-12.50,\n2026-11-04,Gift,,5\n", source("payee", "2", "out", "3", "in", "4")))
                .isEqualTo(expected);
        assertThat(rows(
                        "2026-11-03,Nails,12.50,DR\n2026-11-04,Gift,5,cr\n",
                        source("payee", "2", "amount", "3", "way", "4")))
                .isEqualTo(expected);
    }

    private static List<BankRow> rows(String text, BankSource source) {
        BankReading reading = BankReading.of(table(text), source, "EUR", 2);
        assertThat(reading.unread()).isEmpty();
        return reading.rows();
    }

    @Test
    void what_is_wrong_with_a_row_is_told_with_its_line_all_of_it_and_the_others_are_read() {
        String text = "2026-11-03,Nails,-12.50,EUR,\n2026-02-30,Oak,\"1.234,5\",USD,x\n,,,,\n2026-11-05,,,EUR,\n"
                + "2026-11-06,Line,0.00,,\n\"2026-11-07\",\"two\nlines\",5,eur,7\n";
        BankReading reading = BankReading.of(
                table(text), source("payee", "2", "amount", "3", "currency", "4", "balance", "5"), "EUR", 2);
        assertThat(reading.unread().stream().map(Problem::text).toList())
                .containsExactly(
                        " line 2, date: \"2026-02-30\" is no day as year, month, day",
                        " line 2, amount: \"1.234,5\" is no amount with a decimal point and at most 2 places",
                        " line 2, currency: \"USD\" is not the project's EUR; enter it by hand with the rate paid",
                        " line 2, balance: \"x\" is no amount with a decimal point and at most 2 places",
                        " line 4, amount: No amount stands there");
        assertThat(reading.unreadRows()).isEqualTo(2);
        assertThat(reading.empty()).containsExactly(3, 5);
        assertThat(reading.rows().stream().map(BankRow::line)).containsExactly(1, 6);
        assertThat(reading.rows().get(1).payee()).isEqualTo("two lines");
        BankReading both = BankReading.of(table("2026-11-03,1,2\n"), source("out", "2", "in", "3"), "EUR", 2);
        assertThat(both.unread().stream().map(Problem::sentence))
                .containsExactly("\"1\" goes out and 2 comes in at once");
        BankReading way = BankReading.of(table("2026-11-03,1,maybe\n"), source("amount", "2", "way", "3"), "EUR", 2);
        assertThat(way.unread().stream().map(Problem::sentence)).containsExactly("\"maybe\" says neither out nor in");
    }

    @Test
    void a_formula_in_a_name_stays_text_and_a_pay_out_keeps_gross_and_fee() {
        BankRow row = rows(
                        "2026-11-03,\"=HYPERLINK(\"\"x\"\")\",100.00,-8.00,92\n",
                        source("payee", "2", "gross", "3", "fee", "4", "amount", "5"))
                .get(0);
        assertThat(row.payee()).isEqualTo("=HYPERLINK(\"x\")");
        assertThat(row.gross()).contains(new Money(10000));
        assertThat(row.fee()).contains(new Money(800));
        assertThat(row.amount()).isEqualTo(new Money(9200));
    }
}
