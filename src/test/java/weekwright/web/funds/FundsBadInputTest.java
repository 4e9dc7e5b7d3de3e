package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.FAR;
import static weekwright.testkit.BadInput.MISSING;
import static weekwright.testkit.BadInput.day;
import static weekwright.testkit.BadInput.forged;
import static weekwright.testkit.BadInput.money;
import static weekwright.testkit.BadInput.number;
import static weekwright.testkit.BadInput.text;
import static weekwright.testkit.BadInput.typed;
import static weekwright.testkit.BadInput.under;
import static weekwright.testkit.BadInput.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BadInput;
import weekwright.testkit.BadInput.Sent;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/**
 * Every field of every form of the money side against what people and machines send: the whole sentence, what was typed
 * still there, nothing saved; and each form with all its faults at once.
 */
class FundsBadInputTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final String FORM = "main form.form[method=post], main form.supporters";
    private static Visitor ilse;
    private static BadInput forms;

    @BeforeAll
    static void come() {
        ilse = SERVER.as("ilse");
        forms = new BadInput(ilse, FORM);
    }

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static List<Sent> booked(String remedy) {
        List<Sent> table = new ArrayList<>(day("date"));
        table.add(typed("date", "", MISSING));
        table.add(typed(
                "date",
                "1066-10-14",
                "\"14 October 1066\" is before the books open; write a day from 1 September 2026 on"));
        table.add(typed("date", "2026-11-26", "\"26 November 2026\" is after today, 25 November 2026; " + remedy));
        return table;
    }

    private static List<Sent> belongsTo() {
        return List.of(
                typed("stage", "roof", "\"roof\" is no stage of this project; choose one of the list"),
                typed("task", "roof.1", "\"roof.1\" is no task of this project; choose one of the list"),
                typed("task", "a b", "\"a b\" is not an id; use at most 40 letters, digits, - _ and . only"),
                forged("once", "maybe", "", "\"maybe\" is neither yes nor empty; write yes, or leave it empty"),
                forged("pay", "1", "", "\"pay\" is not a field of this form; load the page again and fill it in"));
    }

    private static final String KINDS =
            "payout, other-income, material, equipment, wages, regular, other-cost, drawings,"
                    + " own-money, loan, tax, refund, transfer, counted";

    @Test
    void an_entry_of_the_books() {
        forms.refused(
                SERVER,
                "/funds/entries/new",
                Map.of("amount", "12", "kind", "refund", "date", "2026-11-20"),
                money("amount"),
                List.of(
                        typed("amount", "", MISSING),
                        typed("amount", "0", "\"0\" is nothing; write what was paid or came in"),
                        typed("amount", "-0", "\"0\" is nothing; write what was paid or came in")),
                under("amount", "-12,50", "it without the sign, and choose whether it comes in or goes out"),
                money("gross"),
                under("gross", "-1", "0 or more"),
                money("fee"),
                under("fee", "-1", "0 or more"),
                booked("enter it once it is so"),
                text("payee"),
                text("account"),
                belongsTo(),
                number("foreign_amount"),
                under("foreign_amount", "-1", "0 or more"),
                number("rate"),
                under("rate", "-1", "0 or more"),
                List.of(
                        typed(
                                "foreign_amount",
                                "14",
                                "is missing beside the foreign amount; write its three letters, such as USD"),
                        typed(
                                "rate",
                                "1.1",
                                "is missing beside the rate; write its three letters, such as USD | is missing beside"
                                        + " the rate; write what was paid in it, or leave out the rest of it"),
                        typed(
                                "foreign_currency",
                                "USD",
                                "is missing beside the foreign currency; write what was paid in it, or leave out the"
                                        + " rest of it")),
                List.of(
                        forged("kind", "", "", MISSING),
                        typed("kind", "gift", "\"gift\" is not a known word here; write one of " + KINDS),
                        forged("way", "", "", MISSING),
                        forged("way", "up", "", "\"up\" is neither in nor out; choose one of the two"),
                        typed(
                                "material",
                                "mat.9",
                                "\"mat.9\" is no material line of this project; choose one of the list")));
        forms.refused(
                SERVER,
                "/funds/entries/new",
                Map.of("amount", "12", "kind", "refund", "foreign_amount", "14"),
                List.of(
                        typed(
                                "foreign_currency",
                                "EURO",
                                "\"EURO\" is not a currency of ISO 4217; write its three letters, such as EUR"),
                        typed("foreign_currency", "usd", "\"usd\" is not a currency of ISO 4217; write USD"),
                        typed(
                                "foreign_currency",
                                "XXX",
                                "\"XXX\" is not a currency of ISO 4217; write its three letters, such as EUR"),
                        typed(
                                "foreign_currency",
                                "EUR",
                                "\"EUR\" is the project's own currency; leave out what was paid in another")));
        assertThat(forms.atOnce(
                        "/funds/entries/new",
                        Map.of(
                                "amount",
                                "1e5",
                                "date",
                                "2026-11-26",
                                "kind",
                                "",
                                "gross",
                                "-1",
                                "fee",
                                "x",
                                "rate",
                                "0",
                                "foreign_amount",
                                "0",
                                "payee",
                                "a".repeat(201))))
                .containsExactly(
                        "\"1e5\" is not an amount of money; write 12.50",
                        MISSING,
                        "\"-1\" is under 0; write 0 or more",
                        "\"x\" is not an amount of money; write 12.50",
                        CUT + " is too long; write at most 200 characters",
                        "\"26 November 2026\" is after today, 25 November 2026; enter it once it is so",
                        "is missing beside the foreign amount; write its three letters, such as USD",
                        "\"0\" is nothing; write more than 0, or leave it empty",
                        "\"0\" is nothing; write more than 0, or leave it empty");
    }

    @Test
    void a_cost() {
        forms.refused(
                SERVER,
                "/funds/costs/new",
                Map.of("amount", "12"),
                money("amount"),
                List.of(
                        typed("amount", "", MISSING),
                        typed("amount", "-0", "\"0.00\" is no cost; write what was paid, more than nothing"),
                        typed("amount", "-5", "\"-5.00\" is no cost; write what was paid, more than nothing")),
                booked("enter it once it is paid"),
                text("payee"),
                text("account"),
                belongsTo(),
                List.of(
                        forged("kind", "", "material", MISSING),
                        typed("kind", "payout", "\"payout\" is no kind of cost; choose one of the list"),
                        typed("kind", "gift", "\"gift\" is not a known word here; write one of " + KINDS)));
        assertThat(forms.atOnce(
                        "/funds/costs/new", Map.of("amount", "", "date", "2026-11-26", "note", "a".repeat(2001))))
                .containsExactly(
                        MISSING,
                        CUT + " is too long; write at most 2000 characters",
                        "\"26 November 2026\" is after today, 25 November 2026; enter it once it is paid");
    }

    @Test
    void a_pledge_level() {
        forms.refused(
                SERVER,
                "/funds/levels/new",
                Map.of("amount", "12", "name", "Sill"),
                text("name"),
                List.of(
                        typed("name", "", "is missing; write what it is called"),
                        typed("name", "\u200B", "is missing; write what it is called"),
                        typed("name", "plank", "\"plank\" is the name of another level; choose another name")),
                money("amount"),
                under("amount", "-5", "0 to 100000000"),
                List.of(
                        typed("amount", "", MISSING),
                        typed("amount", "0", "\"0.00\" is no pledge; write what a supporter pays, more than nothing"),
                        typed("amount", "100000001", "\"100000001\" is over 100000000; write 0 to 100000000")),
                money("fee_fixed"),
                under("fee_fixed", "-1", "0 to 100000000"),
                number("fee_percent"),
                under("fee_percent", "-5", "0 to 100"),
                List.of(typed("fee_percent", "150", "\"150\" is over 100; write 0 to 100")),
                number("declined"),
                under("declined", "-5", "0 to 100"),
                List.of(typed("declined", "100.5", "\"100.5\" is over 100; write 0 to 100")),
                whole("payout_days"),
                under("payout_days", "-1", "0 to 366"),
                List.of(
                        typed("payout_days", "367", "\"367\" is over 366; write 0 to 366"),
                        forged("charged", "", "", MISSING),
                        forged(
                                "charged",
                                "year",
                                "",
                                "\"year\" is not a known word here; write one of month, episode")));
        assertThat(forms.atOnce("/funds/levels/new", Map.of("name", "", "amount", "0", "fee_percent", "101")))
                .containsExactly(
                        "\"101\" is over 100; write 0 to 100",
                        "is missing; write what it is called",
                        "\"0.00\" is no pledge; write what a supporter pays, more than nothing");
    }

    @Test
    void what_comes_again() {
        forms.refused(
                SERVER,
                "/funds/regular/new",
                Map.of("amount", "12", "name", "Rent", "from", ""),
                text("name"),
                List.of(
                        typed("name", "", "is missing; write what it is for"),
                        typed("name", "\u200B", "is missing; write what it is for")),
                money("amount"),
                under("amount", "-12", "it without the sign, and choose whether it comes in or goes out"),
                List.of(
                        typed("amount", "", MISSING),
                        typed("amount", "0", "\"0\" is nothing; write what it costs or brings each time")),
                number("spread"),
                under("spread", "-5", "0 to 1000"),
                List.of(typed("spread", "1001", "\"1001\" is over 1000; write 0 to 1000")),
                day("from"),
                List.of(typed("from", "1066-10-14", "\"14 October 1066\"" + FAR)),
                day("to"),
                List.of(
                        typed("to", "2999-01-01", "\"1 January 2999\"" + FAR),
                        forged("every", "", "month", MISSING),
                        typed(
                                "every",
                                "moon",
                                "\"moon\" is not a known word here; write one of month, week, year, episode"),
                        forged("way", "", "", MISSING),
                        forged("way", "up", "", "\"up\" is neither in nor out; choose one of the two")));
        assertThat(forms.atOnce(
                        "/funds/regular/new",
                        Map.of("name", "", "amount", "x", "spread", "-5", "from", "2026-11-25", "to", "2026-11-01")))
                .containsExactly(
                        "\"x\" is not an amount of money; write 12.50",
                        "\"-5\" is under 0; write 0 to 1000",
                        "is missing; write what it is for",
                        "\"1 November 2026\" is before from 25 November 2026; write 25 November 2026 or later, or"
                                + " change from");
    }

    @Test
    void a_supplier() {
        String number = " is not a telephone number; write at least three digits, with spaces, +, ( ), - and / alone"
                + " between them";
        forms.refused(
                SERVER,
                "/funds/suppliers/new",
                Map.of("name", "The sawyer", "telephone", "0555 0100 14"),
                text("name"),
                List.of(
                        typed("name", "", "is missing; write the name as the materials have it"),
                        typed("telephone", "12", "\"12\"" + number),
                        typed("telephone", "+ ( ) - /", "\"+ ( ) - /\"" + number),
                        typed("telephone", "0555 x14", "\"0555 x14\"" + number),
                        typed("telephone", "٠٥٥٥", "\"٠٥٥٥\"" + number),
                        typed(
                                "telephone",
                                "5".repeat(41),
                                "\"" + "5".repeat(41) + "\" is too long; write at most 40 characters"),
                        typed(
                                "email",
                                "a b@c",
                                "\"a b@c\" is not an address for mail; write one such as yard@mill.example")));
    }

    @Test
    void a_counted_balance() {
        forms.refused(
                SERVER,
                "/funds/balance",
                Map.of("amount", "12", "date", "2026-11-20"),
                money("amount"),
                List.of(typed("amount", "", MISSING)),
                booked("write the day it was counted"),
                text("account"));
        assertThat(forms.atOnce("/funds/balance", Map.of("amount", "5 €", "date", "2026-08-31")))
                .containsExactly(
                        "\"5 €\" is not an amount of money; write 12.50",
                        "\"31 August 2026\" is before the books open; write a day from 1 September 2026 on");
    }

    @Test
    void a_month_of_supporters() {
        forms.refused(
                SERVER,
                "/funds/supporters?month=2026-11",
                Map.of(),
                whole("start.plank"),
                under("start.plank", "-1", "0 to 1000000"),
                List.of(
                        typed("start.plank", "", MISSING),
                        typed("start.plank", "1000001", "\"1000001\" is over 1000000; write 0 to 1000000")),
                whole("joined.plank"),
                under("joined.plank", "-1", "0 to 1000000"),
                whole("left.plank"),
                under("left.plank", "-1", "0 to 1000000"),
                List.of(
                        typed(
                                "left.plank",
                                "75",
                                "\"75\" is more than the 74 who were there or joined; write 74 or less"),
                        typed("month", "", MISSING),
                        typed("month", "11/2026", "\"11/2026\" is not a month; write year-month, such as 2026-03"),
                        typed("month", "2026-12", "\"December 2026\" has not begun; count a month up to November 2026"),
                        typed(
                                "month",
                                "1066-10",
                                "\"October 1066\" is before the first month, September 2026; count that month or a"
                                        + " later one"),
                        forged(
                                "start.beam",
                                "4",
                                "",
                                "\"start.beam\" is not a field of this form; load the page again and fill it in")));
        assertThat(forms.atOnce(
                        "/funds/supporters?month=2026-11",
                        Map.of("month", "2026-12", "start.plank", "1e3", "joined.plank", "-2", "left.plank", "x")))
                .containsExactly(
                        "\"1e3\" is not a whole number; write digits only, such as 3",
                        "\"-2\" is under 0; write 0 to 1000000",
                        "\"x\" is not a whole number; write digits only, such as 3",
                        "\"December 2026\" has not begun; count a month up to November 2026");
    }
}
