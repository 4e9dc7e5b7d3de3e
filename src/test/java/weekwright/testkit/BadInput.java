package weekwright.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Forms against what people and machines send: the whole sentence, what was typed still there, the first wrong field with the
 * focus, nothing saved.
 */
public final class BadInput {
    public static final String MISSING = "is missing; it has to be given";

    /** A text of nothing but the letter a that is too long, as the sentence about it quotes it. */
    public static final String CUT = "\"" + "a".repeat(59) + "…\"";

    /** What is said of a day far from the start of {@link SmallProject}. */
    public static final String FAR =
            " is too far from the start of the project, 1 September 2026; write a day from 1 September 1976 to 1"
                    + " September 2086";

    private final Visitor visitor;
    private final String form;
    private final String act;

    /** @param form the form's selector */
    public BadInput(Visitor visitor, String form) {
        this(visitor, form, "");
    }

    /** @param act of the button that is pressed; empty for the form's only one */
    public BadInput(Visitor visitor, String form, String act) {
        this.visitor = visitor;
        this.form = form;
        this.act = act;
    }

    /**
     * One thing sent.
     *
     * @param shown what stands in the field afterwards
     * @param said the sentences in the box above the form
     */
    public record Sent(String field, String text, String shown, String said) {}

    public static Sent typed(String field, String text, String said) {
        return new Sent(field, text, text, said);
    }

    /** A word that no button offers: none of them is pressed then, or the first. */
    public static Sent forged(String field, String text, String shown, String said) {
        return new Sent(field, text, shown, said);
    }

    /**
     * Sends each beside what is right.
     *
     * @return those that were answered otherwise
     */
    @SafeVarargs
    public final List<String> each(String path, Map<String, String> good, List<Sent>... tables) {
        List<String> wrong = new ArrayList<>();
        for (List<Sent> table : tables) {
            table.forEach(one -> wrong.addAll(wrong(path, good, one)));
        }
        return wrong;
    }

    private List<String> wrong(String path, Map<String, String> good, Sent one) {
        Visitor.Reply reply = filled(path, good).with(one.field(), one.text()).send();
        String said = reply.status() + " " + String.join(" | ", reply.troubles());
        String shown = reply.status() == 422 ? visitor.form(reply, form).value(one.field()) : "";
        return said.equals("422 " + one.said()) && shown.equals(one.shown())
                ? List.of()
                : List.of(one.field() + " <" + one.text() + "> shows <" + shown + "> and says " + said);
    }

    /** Sends each beside what is right: each is refused as it says, and nothing is saved. */
    @SafeVarargs
    public final void refused(ServerFixture server, String path, Map<String, String> good, List<Sent>... tables) {
        long version = server.db().version();
        assertThat(each(path, good, tables)).isEmpty();
        assertThat(server.db().version()).isEqualTo(version);
    }

    /**
     * Sends a form with all its faults; what was typed must still stand there, and one field, a wrong one, must have the focus.
     *
     * @return the sentences
     */
    public List<String> atOnce(String path, Map<String, String> bad) {
        Visitor.Reply reply = filled(path, bad).send();
        assertThat(reply.status()).isEqualTo(422);
        Visitor.Form again = visitor.form(reply, form);
        Map<String, String> kept = new LinkedHashMap<>();
        bad.keySet().forEach(field -> kept.put(field, again.value(field)));
        assertThat(kept).isEqualTo(bad);
        assertThat(reply.page().select("main [autofocus]")).hasSize(1);
        assertThat(reply.page().select("main [autofocus]").attr("aria-invalid")).isEqualTo("true");
        return reply.troubles();
    }

    private Visitor.Form filled(String path, Map<String, String> fields) {
        Visitor.Form filled = visitor.form(visitor.get(path), form);
        fields.forEach(filled::with);
        return act.isEmpty() ? filled : filled.with("do", act);
    }

    public static List<Sent> money(String field) {
        List<Sent> table = new ArrayList<>();
        for (String wrong : List.of(
                "NaN", "Infinity", "1e5", "1d", "0x1p3", "١٢", "1 000", "1'000", "5 €", "€5", "1.234,56", "--1")) {
            table.add(typed(field, wrong, "\"" + wrong + "\" is not an amount of money; write 12.50"));
        }
        table.add(typed(field, "1.234", "\"1.234\" can be read as 1.234 or as 1234; write 1234, or 1.23"));
        table.add(typed(field, "1,234", "\"1,234\" can be read as 1.234 or as 1234; write 1234, or 1.23"));
        table.add(typed(
                field, "1234,567", "\"1234,567\" has more decimal places than the currency; write at most 2 places"));
        table.add(typed(field, "9999999999999", "\"9999999999999\" is too large; write at most twelve digits"));
        table.add(typed(field, "1E+2147483647", "\"1E+2147483647\" is not an amount of money; write 12.50"));
        return table;
    }

    public static List<Sent> under(String field, String text, String write) {
        return List.of(typed(field, text, "\"" + text + "\" is under 0; write " + write));
    }

    public static List<Sent> number(String field) {
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

    public static List<Sent> whole(String field) {
        List<Sent> table = new ArrayList<>();
        for (String wrong : List.of("x", "1.5", "1,234", "15 %", "1e3", "١٢")) {
            table.add(typed(field, wrong, "\"" + wrong + "\" is not a whole number; write digits only, such as 3"));
        }
        table.add(typed(field, "2147483647", "\"2147483647\" is too large; write at most nine digits"));
        return table;
    }

    public static List<Sent> text(String field) {
        return List.of(
                typed(field, "a".repeat(201), CUT + " is too long; write at most 200 characters"),
                line(field),
                typed(field, "a\u0007b", "\"a\u0007b\" has a character that is no text at character 2; take it out"));
    }

    /** Browsers send no line break in such a field, and none is shown in it. */
    public static Sent line(String field) {
        return typed(field, "a\nb", "\"a b\" has a line break or tab at character 2; write it on one line");
    }

    public static List<Sent> day(String field) {
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

    /** Hours in a box of a form. */
    public static List<Sent> hours(String field) {
        List<Sent> table = new ArrayList<>();
        for (String wrong : List.of("x", "3h30", "NaN", "1e5", "0x1p3", "١٢", "3.5 h", "1 000")) {
            table.add(typed(field, wrong, "\"" + wrong + "\" is not hours; write 3.5 or 3:30"));
        }
        table.add(typed(field, "3:75", "\"3:75\" has more than 59 minutes after the colon; write 3.5 or 3:30"));
        table.add(typed(
                field, "1,234", "\"1,234\" can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point"));
        return table;
    }

    /** Hours of a day. */
    public static List<Sent> dayHours(String field) {
        List<Sent> table = new ArrayList<>(hours(field));
        table.add(typed(field, "25", "\"25\" is over 24; write 0 to 24"));
        table.add(typed(field, "24:01", "\"24:01\" is over 24; write 0 to 24"));
        table.add(typed(field, "-1", "\"-1\" is less than nothing; write hours from 0 up"));
        return table;
    }

    /** A text of several lines. */
    public static List<Sent> lines(String field, int most) {
        return List.of(
                typed(field, "a".repeat(most + 1), CUT + " is too long; write at most " + most + " characters"),
                typed(field, "a\u0007b", "\"a\u0007b\" has a character that is no text at character 2; take it out"));
    }
}
