package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/**
 * Every field of every form of the money side against what people and machines send: the whole sentence, what was typed
 * still there, nothing saved; and each form with all its faults at once.
 */
class FundsBadInputTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final String FORM = "main form.form[method=post], main form.supporters";
    private static final String MISSING = "is missing; it has to be given";
    private static Visitor ilse;

    @BeforeAll
    static void come() {
        ilse = SERVER.as("ilse");
    }

    @AfterAll
    static void close() {
        SERVER.close();
    }

    /**
     * @param shown what stands in the field afterwards
     * @param said the sentences in the box above the form
     */
    private record Sent(String field, String text, String shown, String said) {}

    private static Sent typed(String field, String text, String said) {
        return new Sent(field, text, text, said);
    }

    /** A word that no button offers: none of them is pressed then, or the first. */
    private static Sent forged(String field, String text, String shown, String said) {
        return new Sent(field, text, shown, said);
    }

    @SafeVarargs
    private static void each(String path, Map<String, String> good, List<Sent>... tables) {
        long version = SERVER.db().version();
        List<String> wrong = new ArrayList<>();
        for (List<Sent> table : tables) {
            table.forEach(one -> wrong.addAll(wrong(path, good, one)));
        }
        assertThat(wrong).isEmpty();
        assertThat(SERVER.db().version()).isEqualTo(version);
    }

    private static List<String> wrong(String path, Map<String, String> good, Sent one) {
        Visitor.Reply reply = filled(path, good).with(one.field(), one.text()).send();
        String said = reply.status() + " " + String.join(" | ", reply.troubles());
        String shown = reply.status() == 422 ? ilse.form(reply, FORM).value(one.field()) : "";
        return said.equals("422 " + one.said()) && shown.equals(one.shown())
                ? List.of()
                : List.of(one.field() + " <" + one.text() + "> shows <" + shown + "> and says " + said);
    }

    private static List<String> atOnce(String path, Map<String, String> bad) {
        Visitor.Reply reply = filled(path, bad).send();
        assertThat(reply.status()).isEqualTo(422);
        Visitor.Form again = ilse.form(reply, FORM);
        Map<String, String> kept = new LinkedHashMap<>();
        bad.keySet().forEach(field -> kept.put(field, again.value(field)));
        assertThat(kept).isEqualTo(bad);
        return reply.troubles();
    }

    private static Visitor.Form filled(String path, Map<String, String> fields) {
        Visitor.Form form = ilse.form(ilse.get(path), FORM);
        fields.forEach(form::with);
        return form;
    }

    private static List<Sent> money(String field) {
        List<Sent> table = new ArrayList<>();
        for (String wrong : List.of(
                "NaN", "Infinity", "1e5", "1d", "0x1p3", "١٢", "1 000", "1'000", "5 €", "€5", "1.234,56", "--1")) {
            table.add(typed(field, wrong, "\"" + wrong + "\" is not an amount of money; write 12.50"));
        }
        table.add(typed(
                field, "1.234", "\"1.234\" can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point"));
        table.add(typed(
                field, "1,234", "\"1,234\" can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point"));
        table.add(typed(
                field, "1234,567", "\"1234,567\" has more decimal places than the currency; write at most 2 places"));
        table.add(typed(field, "9999999999999", "\"9999999999999\" is too large; write at most twelve digits"));
        table.add(typed(field, "1E+2147483647", "\"1E+2147483647\" is not an amount of money; write 12.50"));
        return table;
    }

    private static List<Sent> under(String field, String text, String write) {
        return List.of(typed(field, text, "\"" + text + "\" is under 0; write " + write));
    }

    private static List<Sent> number(String field) {
        return List.of(
                typed(field, "x", "\"x\" is not a number; write 12 or 2.5"),
                typed(field, "15 %", "\"15 %\" is not a number; write 12 or 2.5"),
                typed(field, "1.23456", "\"1.23456\" has more than four decimal places; write at most four"),
                typed(
                        field,
                        "1,234",
                        "\"1,234\" can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point"),
                typed(field, "9999999999999", "\"9999999999999\" is too large; write at most twelve digits"));
    }

    private static List<Sent> whole(String field) {
        List<Sent> table = new ArrayList<>();
        for (String wrong : List.of("x", "1.5", "1,234", "15 %", "1e3", "١٢")) {
            table.add(typed(field, wrong, "\"" + wrong + "\" is not a whole number; write digits only, such as 3"));
        }
        table.add(typed(field, "2147483647", "\"2147483647\" is too large; write at most nine digits"));
        return table;
    }

    private static List<Sent> text(String field) {
        String most = "a".repeat(59);
        return List.of(
                typed(field, "a".repeat(201), "\"" + most + "…\" is too long; write at most 200 letters"),
                line(field),
                typed(field, "a\u0007b", "\"a\u0007b\" has a character that is no text at letter 2; take it out"));
    }

    /** Browsers send no line break in such a field, and none is shown in it. */
    private static Sent line(String field) {
        return typed(field, "a\nb", "\"a b\" has a line break or tab at letter 2; write it on one line");
    }

    private static List<Sent> day(String field) {
        List<Sent> table = new ArrayList<>();
        for (String wrong : List.of("2026-02-29", "2026-13-01", "0000-00-00")) {
            table.add(typed(
                    field,
                    wrong,
                    "\"" + wrong + "\" is not a day of the calendar; write a day that exists, such as 2026-02-28"));
        }
        for (String wrong : List.of("29.2.2024", "02/03/2026", "2026-3-5", "+10000-01-01", "-0001-01-01")) {
            table.add(typed(field, wrong, "\"" + wrong + "\" is not a date; write year-month-day, such as 2026-03-05"));
        }
        return table;
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
        each(
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
        each(
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
                                "\"XXX\" is not a currency of ISO 4217; write its three letters, such as EUR")));
        assertThat(atOnce(
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
                        "\"" + "a".repeat(59) + "…\" is too long; write at most 200 letters",
                        "\"26 November 2026\" is after today, 25 November 2026; enter it once it is so",
                        "is missing beside the foreign amount; write its three letters, such as USD",
                        "\"0\" is nothing; write more than 0, or leave it empty",
                        "\"0\" is nothing; write more than 0, or leave it empty");
    }

    @Test
    void a_cost() {
        each(
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
        assertThat(atOnce("/funds/costs/new", Map.of("amount", "", "date", "2026-11-26", "note", "a".repeat(2001))))
                .containsExactly(
                        MISSING,
                        "\"" + "a".repeat(59) + "…\" is too long; write at most 2000 letters",
                        "\"26 November 2026\" is after today, 25 November 2026; enter it once it is paid");
    }

    @Test
    void a_pledge_level() {
        each(
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
        assertThat(atOnce("/funds/levels/new", Map.of("name", "", "amount", "0", "fee_percent", "101")))
                .containsExactly(
                        "\"101\" is over 100; write 0 to 100",
                        "is missing; write what it is called",
                        "\"0.00\" is no pledge; write what a supporter pays, more than nothing");
    }

    @Test
    void what_comes_again() {
        String far = " is too far from the start of the project, 2026-09-01; write a day from 1976-09-01 to 2086-09-01";
        each(
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
                List.of(typed("from", "1066-10-14", "\"1066-10-14\"" + far)),
                day("to"),
                List.of(
                        typed("to", "2999-01-01", "\"2999-01-01\"" + far),
                        forged("every", "", "month", MISSING),
                        typed(
                                "every",
                                "moon",
                                "\"moon\" is not a known word here; write one of month, week, year, episode"),
                        forged("way", "", "", MISSING),
                        forged("way", "up", "", "\"up\" is neither in nor out; choose one of the two")));
        assertThat(atOnce(
                        "/funds/regular/new",
                        Map.of("name", "", "amount", "x", "spread", "-5", "from", "2026-11-25", "to", "2026-11-01")))
                .containsExactly(
                        "\"x\" is not an amount of money; write 12.50",
                        "\"-5\" is under 0; write 0 to 1000",
                        "is missing; write what it is for",
                        "\"2026-11-01\" is before from 2026-11-25; write 2026-11-25 or later, or change from");
    }

    @Test
    void a_counted_balance() {
        each(
                "/funds/balance",
                Map.of("amount", "12", "date", "2026-11-20"),
                money("amount"),
                List.of(typed("amount", "", MISSING)),
                booked("write the day it was counted"),
                text("account"));
        assertThat(atOnce("/funds/balance", Map.of("amount", "5 €", "date", "2026-08-31")))
                .containsExactly(
                        "\"5 €\" is not an amount of money; write 12.50",
                        "\"31 August 2026\" is before the books open; write a day from 1 September 2026 on");
    }

    @Test
    void a_month_of_supporters() {
        each(
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
        assertThat(atOnce(
                        "/funds/supporters?month=2026-11",
                        Map.of("month", "2026-12", "start.plank", "1e3", "joined.plank", "-2", "left.plank", "x")))
                .containsExactly(
                        "\"1e3\" is not a whole number; write digits only, such as 3",
                        "\"-2\" is under 0; write 0 to 1000000",
                        "\"x\" is not a whole number; write digits only, such as 3",
                        "\"December 2026\" has not begun; count a month up to November 2026");
    }
}
