package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static weekwright.testkit.BadInput.CUT;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Money;
import weekwright.db.Folder;
import weekwright.files.ExportProject;
import weekwright.files.backup.MakeBackup;
import weekwright.files.backup.RestoreBackup;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.PlainProject;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsFileRowsPageTest {
    @TempDir
    private Path temp;

    private final ServerFixture server = ServerFixture.small();
    private final Visitor ilse = server.as("ilse");

    @AfterEach
    void close() {
        server.close();
    }

    private Visitor.Reply read(String text, String source) {
        Visitor.Reply page = FundsFilePageTest.pasted(ilse, text);
        return ilse.follow(ilse.form(page).with("name", source).send());
    }

    private List<LedgerEntry> books() {
        return server.db().read(LedgerEntryStore.TABLE::values);
    }

    @Test
    void rows_go_into_the_books_as_one_change_and_are_taken_back_as_one() {
        Visitor.Reply page = read(
                "Date,Name,Note,Amount\n2026-11-03,SAWMILL 02,bill 7,-1234.50\n2026-11-04,\"=1+1\",,5.00\n"
                        + "2026-11-05,SAWMILL 02,bill 8,-10.00\n",
                "The bank");
        assertThat(page.text())
                .contains("Three rows can go into the books.")
                .contains("SAWMILL 02 2 rows, −€1,244.50")
                .contains("=1+1 1 row, €5.00");
        assertThat(books()).hasSize(3);
        Visitor.Reply saved = ilse.follow(ilse.form(page)
                .with("kind.0", "material")
                .with("stage.0", "gate")
                .with("payee.0", "Sawmill upstream")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Three rows of pasted rows are in the books.");
        assertThat(saved.page().select("tbody tr").text())
                .isEqualTo("pasted rows The bank Wed 25 Nov 3 to 5 November 3 0");
        LedgerEntry first = books().get(3);
        assertThat(first.amount()).isEqualTo(new Money(-123450));
        assertThat(first.kind()).isEqualTo(LedgerEntry.Kind.MATERIAL);
        assertThat(first.stage().orElseThrow().value()).isEqualTo("gate");
        assertThat(first.payee()).isEqualTo("Sawmill upstream");
        assertThat(first.note()).isEqualTo("bill 7\nIn the file: SAWMILL 02");
        assertThat(books().get(4).payee()).isEqualTo("=1+1");
        assertThat(books().stream().map(one -> one.id().value()).distinct()).hasSize(6);
        Visitor.Reply sheet = ilse.get("/funds/books.csv");
        assertThat(sheet.header("content-disposition")).isEqualTo("attachment; filename=\"books-2026-11-25.csv\"");
        assertThat(sheet.body()).startsWith("\uFEFFid,date,amount,kind,");
        assertThat(sheet.body().lines().filter(line -> line.contains("1+1")))
                .containsExactly(books().get(4).id() + ",2026-11-04,5.00,other-income,,,,,,,,'=1+1,,,,,");
        assertThat(sheet.body()).contains(",2026-11-03,-1234.50,material,");
        assertThat(server.as("noor").get("/funds/books.csv").status()).isEqualTo(403);
        Visitor.Reply back = ilse.follow(ilse.form(saved, ".flash form").send());
        assertThat(back.page().select(".flash p").text()).startsWith("Taken back: ");
        assertThat(books()).hasSize(3);
        assertThat(back.text()).contains("No file was read yet");
    }

    @Test
    void what_the_books_have_is_marked_and_not_entered_unless_it_is_chosen() {
        String file = "Date,Name,Amount\n2026-11-03,Nails,-5.00\n2026-11-03,Nails,-5.00\n2026-11-04,Oil,-7.00\n";
        OakMill.addLedger(
                server.db(), "id", "n1", "date", "2026-11-03", "amount", "-5", "kind", "other-cost", "payee", "nails");
        OakMill.addLedger(
                server.db(), "id", "n2", "date", "2026-11-04", "amount", "-7", "kind", "regular", "payee", "Grease");
        Visitor.Reply page = read(file, "The bank");
        assertThat(page.text())
                .contains("Three rows can go into the books; two seem to be there already and are not ticked.");
        assertThat(page.page().select("small.known").eachText())
                .containsExactly("in the books already", "same day and amount as “Grease”");
        assertThat(page.page().select("input[name=take][checked]").eachAttr("value"))
                .containsExactly("3");
        ilse.follow(ilse.form(page).with("take", "3", "4").send());
        assertThat(books()).hasSize(7);
        Visitor.Reply again = ilse.get(ilse.form(FundsFilePageTest.pasted(ilse, file))
                .with("name", "The bank, again")
                .send()
                .to());
        assertThat(again.page().select("input[name=take][checked]")).isEmpty();
        Visitor.Reply none = ilse.form(again).without("take").send();
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.troubles()).containsExactly("No row is chosen; tick those that are to go into the books");
        assertThat(books()).hasSize(7);
    }

    @Test
    void the_same_name_is_booked_as_it_was_before() {
        ilse.follow(ilse.form(read("Date,Name,Amount\n2026-11-03,SAWMILL 02,-5.00\n", "The bank"))
                .with("kind.0", "material")
                .with("stage.0", "gate")
                .with("payee.0", "Sawmill upstream")
                .send());
        Visitor.Reply mapped = ilse.follow(ilse.form(ilse.get("/funds/files/new"))
                .with("text", "Date,Name,Amount\n2026-11-10,SAWMILL 02,-6.00\n2026-11-10,SAWMILL 02,6.00\n")
                .with(
                        "source",
                        ilse.get("/funds/files/new")
                                .page()
                                .select("#source option")
                                .get(1)
                                .val())
                .send());
        assertThat(ilse.form(mapped).value("name")).isEqualTo("The bank");
        Visitor.Form form = ilse.form(ilse.follow(ilse.form(mapped).send()));
        assertThat(List.of(form.value("kind.0"), form.value("stage.0"), form.value("payee.0")))
                .containsExactly("material", "gate", "Sawmill upstream");
        assertThat(List.of(form.value("kind.1"), form.value("stage.1"), form.value("payee.1")))
                .containsExactly("other-income", "", "SAWMILL 02");
    }

    @Test
    void rows_that_cannot_go_in_are_told_and_have_to_be_left_out_by_choice() {
        Visitor.Reply page = read(
                "Date,Name,Amount\n2026-11-03,Nails,-5.00\n2026-08-31,Old,-5.00\n2026-11-26,Early,-5.00\n"
                        + "2026-11-31,Never,-5.00\n",
                "The bank");
        assertThat(page.page().select(".unread li").eachText())
                .containsExactly(
                        "Line 5: \"2026-11-31\" is no day as year, month, day",
                        "Line 3: \"31 August 2026\" is before the books open",
                        "Line 4: \"26 November 2026\" is after today, 25 November 2026");
        Visitor.Reply refused = ilse.form(page)
                .with("kind.0", "counted")
                .with("stage.0", "roof")
                .with("payee.0", "a".repeat(201))
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        CUT + " is too long; write at most 200 characters",
                        "Three rows cannot go in; tick that they are left out, or change how the file is read");
        assertThat(ilse.form(refused).value("payee.0")).isEqualTo("a".repeat(201));
        Visitor.Reply rules = ilse.form(refused)
                .with("kind.0", "counted")
                .with("stage.0", "roof")
                .with("payee.0", "Nails")
                .with("leave", "yes")
                .send();
        assertThat(rules.troubles())
                .containsExactly(
                        "pasted rows line 2, column kind: \"3 November 2026\" is a movement, not a counted balance;"
                                + " choose another kind. pasted rows line 2, column stage: \"roof\" is no stage of this"
                                + " project; choose one of the list");
        assertThat(books()).hasSize(3);
        Visitor.Reply saved = ilse.follow(
                ilse.form(rules).with("kind.0", "regular").with("stage.0", "").send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("One row of pasted rows is in the books, three are left out.");
    }

    @Test
    void of_very_many_rows_that_cannot_go_in_two_hundred_are_told_and_the_others_counted() {
        Visitor.Reply page =
                read("Date,Name,Amount\n2026-11-03,Nails,-5.00\n" + "2026-08-31,Old,-5.00\n".repeat(203), "Bank");
        assertThat(page.page().select(".unread li").eachText())
                .hasSize(201)
                .startsWith("Line 3: \"31 August 2026\" is before the books open")
                .endsWith("Line 202: \"31 August 2026\" is before the books open", "and 3 more");
        assertThat(ilse.form(page).send().troubles())
                .containsExactly("203 rows cannot go in; tick that they are left out, or change how the file is read");
    }

    @Test
    void the_balance_of_the_file_is_held_against_the_books() {
        // the books of the small project: 4,000.00 at first, then 303.60, 317.40 and -86.20 by 17 November
        String file = "Date,Name,Amount,Balance\n2026-11-20,Nails,-5.00,4535.00\n2026-11-21,Oil,-4.80,%s\n";
        assertThat(read(String.format(file, "4525.00"), "The bank").text())
                .contains("The file ends with €4,525.00 on 21 November, and so would the books with the ticked"
                        + " rows.");
        assertThat(read(String.format(file, "4500.00"), "Another").text())
                .contains("The file ends with €4,500.00 on 21 November; with the ticked rows the books would have"
                        + " €4,525.00, €25.00 more.");
    }

    @Test
    void a_pay_out_keeps_gross_and_fee_and_a_file_entered_meanwhile_is_told() {
        Visitor.Reply page = read("Date,Gross,Fees,Net\n2026-11-05,100.00,8.00,92.00\n", "Pay-outs");
        Visitor.Form form = ilse.form(page).with("kind.0", "payout").with("payee.0", "plank");
        ilse.follow(form.send());
        LedgerEntry entry = books().get(3);
        assertThat(entry.gross()).contains(new Money(10000));
        assertThat(entry.fee()).contains(new Money(800));
        assertThat(entry.payee()).isEqualTo("plank");
        Visitor.Reply late = form.with("answer", "another-key-0123456789").send();
        assertThat(late.status()).isEqualTo(404);
        assertThat(late.text())
                .contains("This file does not wait any more: it is entered, thrown away, or was forgotten when the"
                        + " program stopped. Send it again where it is still wanted.");
    }

    private static final String PEOPLE = "Date,Supporter,E-mail,Street,Message,Gross,Fee,Net\n"
            + "2026-11-05,Quillwort Ninefinger,quill@ninefinger.example,Reed Lane 4,For the Ninefinger"
            + " mill,5.00,0.40,4.60\n"
            + "2026-11-05,Sorrel Ninefinger,sorrel@ninefinger.example,Reed Lane 5,Ninefinger again,5.00,0.40,4.60\n"
            + "2026-11-06,Teasel Ninefinger,teasel@ninefinger.example,Reed Lane 6,,-5.00,-0.40,-4.60\n";

    /** Every byte of the project's folder, the store's journal among them. */
    private void nowhere(String when) throws IOException {
        try (Stream<Path> all = Files.walk(server.app().folder().path())) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                        .as(when + ": " + file.getFileName())
                        .doesNotContainIgnoringCase("ninefinger")
                        .doesNotContain("Reed Lane", "Quillwort");
            }
        }
    }

    @Test
    void no_name_no_address_and_no_message_of_a_supporter_is_ever_written_down() throws Exception {
        Visitor.Reply sent = ilse.follow(ilse.form(ilse.get("/funds/files/new"))
                .attach("file", "november.csv", PEOPLE.getBytes(StandardCharsets.UTF_8))
                .send());
        assertThat(sent.page().select("#people").hasAttr("checked")).isTrue();
        nowhere("sent");
        assertThat(ilse.get("/funds/files").text()).contains("november.csv");
        Visitor.Reply rows = ilse.follow(ilse.form(sent)
                .with("name", "Pay-outs")
                .with("kind_in", "payout")
                .send());
        nowhere("read");
        assertThat(rows.page().select(".file-name legend").eachText())
                .containsExactly("what comes in 2 rows, €9.20", "what goes out 1 row, −€4.60");
        assertThat(rows.text()).doesNotContain("Quillwort").contains("name left out");
        Visitor.Reply refused =
                ilse.form(rows).with("payee.0", "Quillwort Ninefinger").send();
        assertThat(refused.troubles())
                .containsExactly("\"Quillwort Ninefinger\" is no pledge level; choose one, or leave it empty: of"
                        + " supporters the books keep no names");
        nowhere("refused");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("payee.0", "plank")
                .with("kind.1", "payout")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Three rows of november.csv are in the books.");
        assertThat(books().subList(3, 6))
                .extracting(LedgerEntry::payee, LedgerEntry::note)
                .containsExactly(tuple("plank", ""), tuple("plank", ""), tuple("", ""));
        nowhere("entered");
        Visitor.Reply again = ilse.follow(ilse.form(ilse.get("/funds/files/new"))
                .with("text", PEOPLE)
                .with("source", "outs")
                .send());
        Visitor.Reply known = ilse.follow(ilse.form(again).send());
        assertThat(known.page().select("small.known").eachText())
                .containsExactly("in the books already", "in the books already", "in the books already");
        ilse.follow(ilse.form(saved, ".flash form").send());
        assertThat(books()).hasSize(3);
        nowhere("taken back");
        ExportProject.into(server.db(), server.app().folder(), temp.resolve("files"));
        MakeBackup.into(server.db(), server.app().folder(), temp.resolve("kept.zip"), PlainProject.CLOCK);
        RestoreBackup.into(temp.resolve("kept.zip"), new Folder(temp.resolve("back")));
        for (Path place : List.of(temp.resolve("files"), temp.resolve("back"))) {
            try (Stream<Path> all = Files.walk(place)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1))
                            .as(file.toString())
                            .doesNotContainIgnoringCase("ninefinger");
                }
            }
        }
    }

    @Test
    void a_supporter_who_pays_to_the_bank_is_not_named_in_the_books_either() throws IOException {
        Visitor.Reply rows = read(
                "Date,Name,Note,Amount\n2026-11-05,Quillwort Ninefinger,For the Ninefinger mill,5.00\n", "The bank");
        // the name that the file gave stands in the field still: it is left out, not refused
        assertThat(ilse.form(rows).value("payee.0")).isEqualTo("Quillwort Ninefinger");
        ilse.follow(ilse.form(rows).with("kind.0", "payout").send());
        assertThat(books().get(3).payee()).isEmpty();
        assertThat(books().get(3).note()).isEmpty();
        nowhere("entered");
    }
}
