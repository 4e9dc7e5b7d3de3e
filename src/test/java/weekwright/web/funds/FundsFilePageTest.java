package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsFilePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    static Visitor.Reply pasted(Visitor ilse, String text) {
        return ilse.follow(
                ilse.form(ilse.get("/funds/files/new")).with("text", text).send());
    }

    private static List<String> rows(Visitor.Reply page) {
        return page.page().select("tbody tr").eachText();
    }

    @Test
    void the_first_rows_are_shown_as_they_would_be_entered() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = pasted(
                ilse,
                "Buchungstag;Empfänger;Zweck;Betrag;Saldo\n13.11.2026;Sägewerk;Rechnung 7;-1.234,50;2.000,00\n"
                        + "14.11.2026;=1+1;;5,00;2.005,00\nTotal;;;;\n");
        assertThat(page.page().select(".lead").text())
                .isEqualTo("Two bookings are read, one row is not. These are the first as they would be entered.");
        assertThat(rows(page))
                .containsExactly(
                        "13 November Sägewerk Rechnung 7 −€1,234.50 €2,000.00", "14 November =1+1 €5.00 €2,005.00");
        assertThat(page.page().select(".unread li").eachText())
                .containsExactly("Line 4: \"Total\" is no day as day, month, year", "Line 4: No amount stands there");
        assertThat(page.page().select("#amount option[selected]").text()).isEqualTo("4: Betrag, such as -1.234,50");
    }

    @Test
    void a_date_that_can_be_two_days_is_asked_about() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = pasted(ilse, "Date,Name,Amount\n03/04/2026,Nails,-5.00\n05/06/2026,Oak,-6.00\n");
        assertThat(page.text())
                .contains("“03/04/2026” can be 3 April 2026 or 4 March 2026: choose the order of a date, nothing is"
                        + " guessed.");
        assertThat(page.page().select("tbody")).isEmpty();
        Visitor.Reply refused = ilse.form(page).with("name", "").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"03/04/2026\" can be 3 April 2026 or 4 March 2026; choose the order of a date",
                        "is missing; write whose files they are, such as The bank");
        Visitor.Reply shown = ilse.form(refused).with("date_order", "mdy").press("look");
        assertThat(shown.status()).isEqualTo(200);
        assertThat(rows(shown)).containsExactly("4 March Nails −€5.00", "6 May Oak −€6.00");
        assertThat(rows(ilse.form(shown).with("date_order", "dmy").press("look")))
                .containsExactly("3 April Nails −€5.00", "5 June Oak −€6.00");
    }

    @Test
    void what_stands_before_the_cents_is_asked_about_where_the_file_has_both() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = pasted(ilse, "2026-11-03;Nails;1.234,56\n2026-11-04;Oak;1,234.56\n");
        assertThat(page.text())
                .contains("“1.234,56” has a decimal comma, and \"1,234.56\" a decimal point: choose what stands before"
                        + " the cents, nothing is guessed.");
        Visitor.Reply refused = ilse.form(page).with("name", "The bank").send();
        assertThat(refused.troubles())
                .containsExactly(
                        "\"1.234,56\" has a decimal comma, and \"1,234.56\" a decimal point; choose what stands"
                                + " before the cents");
        Visitor.Reply shown = ilse.form(refused).with("decimals", "comma").press("look");
        assertThat(rows(shown)).containsExactly("3 November Nails €1,234.56");
        assertThat(shown.page().select(".unread li").eachText())
                .containsExactly("Line 2: \"1,234.56\" is no amount with a decimal comma and at most 2 places");
    }

    @Test
    void every_fault_of_the_columns_is_told_at_once() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = pasted(ilse, "2026-11-03,Nails,-5.00\n");
        Visitor.Reply refused = ilse.form(page)
                .with("name", "")
                .with("skip", "-1")
                .with("date", "201")
                .with("out", "3")
                .with("encoding", "ebcdic")
                .with("kind_out", "counted")
                .with("account", "a".repeat(201))
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        CUT + " is too long; write at most 200 characters",
                        "\"ebcdic\" is not a known word here; write one of utf-8, utf-16, windows-1252, by-line",
                        "\"-1\" is under 0; write 0 to 200",
                        "\"201\" is over 200; write 1 to 200",
                        "is missing; write whose files they are, such as The bank",
                        "is chosen beside a column of what goes out or comes in; choose the one column, or the two",
                        "\"counted\" is no movement; choose another kind");
        Visitor.Reply none = ilse.form(page)
                .with("name", "The bank")
                .with("date", "2")
                .with("amount", "3")
                .send();
        assertThat(none.troubles())
                .containsExactly("No row can be read like this; look at the columns and the order of a date");
        for (Map.Entry<String, String> half : Map.of("out", "in", "in", "out").entrySet()) {
            Visitor.Reply one = ilse.form(page)
                    .with("name", "The bank")
                    .with("amount", "")
                    .with(half.getKey(), "3")
                    .send();
            assertThat(one.troubles())
                    .containsExactly("is missing beside the other; choose both, or one column of the amount");
            assertThat(one.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly(half.getValue());
        }
        assertThat(ilse.form(page)
                        .with("name", "The bank")
                        .with("amount", "")
                        .with("way", "2")
                        .send()
                        .troubles())
                .containsExactly(
                        "is missing; choose the column of the amount, or the two of out and in",
                        "is chosen without an amount; choose the column of the amount, too");
    }

    @Test
    void two_encodings_are_told_by_line_and_the_columns_are_looked_for_again() {
        Visitor ilse = SERVER.as("ilse");
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes("2026-11-03;Müller;-5,00\n".getBytes(StandardCharsets.UTF_8));
        file.writeBytes("2026-11-04;Büro;-6,00\n".getBytes(Charset.forName("windows-1252")));
        Visitor.Reply page = ilse.follow(ilse.form(ilse.get("/funds/files/new"))
                .attach("file", "mixed.csv", file.toByteArray())
                .send());
        assertThat(page.text())
                .contains(
                        "Encoding: Two encodings stand in this file: line 2 read as Windows-1252, line 1 as UTF-8; look"
                                + " at the letters below.");
        assertThat(rows(page)).containsExactly("3 November Müller −€5.00", "4 November Büro −€6.00");
        Visitor.Reply wrong = ilse.form(page)
                .with("name", "The bank")
                .with("encoding", "utf-8")
                .send();
        assertThat(wrong.troubles())
                .containsExactly("\"UTF-8\" does not read line 2; choose Windows-1252, or each line for itself");
        Visitor.Reply commas = ilse.form(page).with("divider", "comma").press("guess");
        assertThat(commas.status()).isEqualTo(200);
        assertThat(commas.page().select("#amount option[selected]").text()).isEqualTo("2: 00");
        Visitor.Reply again = ilse.form(commas).with("divider", "semicolon").press("guess");
        assertThat(again.page().select("#amount option[selected]").text()).isEqualTo("3: -5,00");
    }

    @Test
    void a_file_that_cannot_be_taken_apart_is_told_with_its_line() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = pasted(ilse, "2026-11-03,Nails,-5.00\n2026-11-04,\"Oak,-6.00\n");
        assertThat(page.text()).contains("Pasted rows line 2: opens a quote that is never closed; close it.");
        Visitor.Reply refused = ilse.form(page).send();
        assertThat(refused.troubles())
                .contains("pasted rows line 2: opens a quote that is never closed; close it")
                .contains("is missing; write whose files they are, such as The bank");
    }

    @Test
    void a_file_that_is_gone_is_told() {
        Visitor.Reply gone = SERVER.as("ilse").get("/funds/files/nothing");
        assertThat(gone.status()).isEqualTo(404);
        assertThat(gone.text())
                .contains("This file does not wait any more: it is entered, thrown away, or was forgotten when the"
                        + " program stopped. Send it again where it is still wanted.");
    }
}
