package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.FAR;
import static weekwright.testkit.BadInput.MISSING;
import static weekwright.testkit.BadInput.day;
import static weekwright.testkit.BadInput.hours;
import static weekwright.testkit.BadInput.money;
import static weekwright.testkit.BadInput.number;
import static weekwright.testkit.BadInput.text;
import static weekwright.testkit.BadInput.typed;
import static weekwright.testkit.BadInput.under;
import static weekwright.testkit.BadInput.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BadInput;
import weekwright.testkit.BadInput.Sent;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** Every key of every table of settings against what people and machines send, and each table with all its faults at once. */
class SettingsBadInputTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final Visitor ILSE = SERVER.as("ilse");
    private static final String LONG = "a".repeat(201);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static BadInput table(String name) {
        return new BadInput(ILSE, "form:has(button[value=" + name + "])", name);
    }

    /** Refuses each, and asks that no key of the table was forgotten here. */
    @SafeVarargs
    private static void refused(String name, List<Sent>... tables) {
        Set<String> keys = new TreeSet<>();
        for (List<Sent> one : tables) {
            one.forEach(sent -> keys.add(sent.field()));
        }
        SettingsKeys.PARTS.stream()
                .filter(part -> part.name().equals(name))
                .forEach(part -> assertThat(keys).containsExactlyInAnyOrder(part.columns()));
        table(name).refused(SERVER, "/crew/settings", Map.of(), tables);
    }

    private static List<Sent> within(String field, String low, String under, String high, String over) {
        String write = "write " + low + " to " + high;
        return List.of(
                typed(field, under, "\"" + under + "\" is under " + low + "; " + write),
                typed(field, over, "\"" + over + "\" is over " + high + "; " + write));
    }

    private static List<Sent> far(String field) {
        return List.of(
                typed(field, "1066-10-14", "\"14 October 1066\"" + FAR),
                typed(field, "2999-01-01", "\"1 January" + " 2999\"" + FAR));
    }

    private static List<Sent> yes(String... fields) {
        List<Sent> all = new ArrayList<>();
        for (String field : fields) {
            for (String wrong : List.of("maybe", "YES", "1")) {
                all.add(typed(
                        field, wrong, "\"" + wrong + "\" is neither yes nor empty; write yes, or leave it empty"));
            }
        }
        return all;
    }

    @Test
    void the_project() {
        refused(
                "project",
                text("name"),
                List.of(typed("name", "", "is missing; write what is being built")),
                day("started"),
                List.of(
                        typed("started", "", MISSING),
                        typed(
                                "started",
                                "1066-10-14",
                                "\"14 October 1066\" is no likely start; write a day from 1900 to 2199"),
                        typed("currency", "", "is missing; write its three letters, such as EUR"),
                        typed(
                                "units",
                                "furlongs",
                                "\"furlongs\" is not a known word here; write one of metric, imperial"),
                        typed("zone", "", "is missing; write a place such as Europe/Berlin"),
                        typed(
                                "zone",
                                "Mars/Phobos",
                                "\"Mars/Phobos\" is not a known zone; write a place such as Europe/Berlin"),
                        typed(
                                "zone",
                                "+01:00",
                                "\"+01:00\" is an offset, which has no summer time; write a place such as"
                                        + " Europe/Berlin")),
                money("reserve"),
                under("reserve", "-5", "0 or more"),
                day("opening_date"),
                far("opening_date"),
                money("opening_cash"),
                whole("horizon_months"),
                within("horizon_months", "1", "0", "240", "241"),
                List.of(typed(
                        "quotes",
                        "curly",
                        "\"curly\" is not a known word here; write one of as-typed, english, german, french, swiss")));
        assertThat(table("project")
                        .atOnce(
                                "/crew/settings",
                                Map.of(
                                        "name",
                                        "",
                                        "started",
                                        "1.9.2026",
                                        "units",
                                        "ells",
                                        "zone",
                                        "+01:00",
                                        "reserve",
                                        "-5",
                                        "opening_date",
                                        "1066-10-14",
                                        "horizon_months",
                                        "0")))
                .containsExactly(
                        "\"1.9.2026\" is not a date; write year-month-day, such as 2026-03-05",
                        "\"ells\" is not a known word here; write one of metric, imperial",
                        "\"-5\" is under 0; write 0 or more",
                        "\"0\" is under 1; write 1 to 240",
                        "is missing; write what is being built",
                        "\"+01:00\" is an offset, which has no summer time; write a place such as Europe/Berlin",
                        "\"14 October 1066\"" + FAR);
    }

    @Test
    void publishing() {
        String weekdays = "monday, tuesday, wednesday, thursday, friday, saturday, sunday";
        List<Sent> rest = List.of(
                typed("weekday", "noday", "\"noday\" is not a day of the week; write one of monday, friday, sunday"),
                typed("time", "25:00", "\"25:00\" is not a time of day; write hours and minutes, such as 08:30"),
                typed("time", "5 pm", "\"5 pm\" is not a time of day; write hours and minutes, such as 08:30"),
                typed("edit_days", "xyz", "\"xyz\" is not a day of the week; write one of " + weekdays),
                typed(
                        "edit_days",
                        "monday monday",
                        "\"monday monday\" has the word monday twice; write each word once"),
                typed("edit_low", "30", "\"30\" is over the likely 24; write 24 or less"),
                typed("edit_high", "20", "\"20\" is under the likely 24; write 24 or more"),
                typed(
                        "target_minutes",
                        "20.55",
                        "\"20.55\" has more than one decimal place; write at most one, such as 12.5"),
                typed(
                        "skip",
                        "2026-02-30",
                        "\"2026-02-30\" is not a day of the calendar; write a day that exists, such as"
                                + " 2026-02-28"));
        refused(
                "publishing",
                rest,
                day("first"),
                far("first"),
                whole("every_weeks"),
                within("every_weeks", "1", "0", "52", "53"),
                number("target_minutes"),
                within("target_minutes", "1", "0.5", "1000", "1001"),
                whole("early_days"),
                within("early_days", "0", "-1", "365", "366"),
                whole("edit_window_days"),
                within("edit_window_days", "0", "-1", "365", "366"),
                text("shoot_until"),
                number("bank_floor"),
                within("bank_floor", "0", "-1", "52", "53"),
                hours("edit_low"),
                hours("edit_likely"),
                hours("edit_high"),
                whole("charges_a_month"),
                within("charges_a_month", "0", "-1", "31", "32"),
                number("empty_leaving"),
                within("empty_leaving", "0", "-0.1", "100", "101"));
        assertThat(table("publishing")
                        .atOnce(
                                "/crew/settings",
                                Map.of(
                                        "weekday",
                                        "xyz",
                                        "time",
                                        "noon",
                                        "every_weeks",
                                        "0",
                                        "bank_floor",
                                        "-1",
                                        "shoot_until",
                                        LONG,
                                        "edit_low",
                                        "30",
                                        "first",
                                        "2999-01-01")))
                .containsExactly(
                        "\"noon\" is not a time of day; write hours and minutes, such as 08:30",
                        "\"0\" is under 1; write 1 to 52",
                        CUT + " is too long; write at most 200 characters",
                        "\"-1\" is under 0; write 0 to 52",
                        "\"1 January 2999\"" + FAR,
                        "\"xyz\" is not a day of the week; write one of " + weekdays,
                        "\"30\" is over the likely 24; write 24 or less");
    }

    @Test
    void weather_orders_and_money() {
        refused(
                "weather",
                List.of(
                        typed("lost", "0.3 0.2", "\"2\" numbers stand there; write 12 shares, January first"),
                        typed("lost", "0 0 0 0 0 0 0 0 0 0 0 1.5", "\"1.5\" is not a share; write numbers from 0 to 1"),
                        typed(
                                "lost",
                                "0 0 0 0 0 0 0 0 0 0 0 -0.1",
                                "\"-0.1\" is not a share; write numbers from 0 to 1"),
                        typed(
                                "lost",
                                "0 0 0 0 0 0 0 0 0 0 0 30%",
                                "\"30%\" is not a share; write numbers from 0 to 1")),
                number("spell_days"),
                within("spell_days", "1", "0.5", "60", "61"));
        refused(
                "orders",
                whole("margin_days"),
                within("margin_days", "0", "-1", "365", "366"),
                money("small"),
                under("small", "-0.01", "0 or more"));
        refused(
                "money",
                number("put_by_percent"),
                within("put_by_percent", "0", "-1", "100", "100.5"),
                whole("tax_month"),
                within("tax_month", "1", "0", "12", "13"),
                List.of(
                        typed(
                                "year_starts",
                                "02-30",
                                "\"02-30\" is not a day of the year; write month-day, such as 04-15"),
                        typed(
                                "year_starts",
                                "6 April",
                                "\"6 April\" is not a day of the year; write month-day, such as 04-15")));
        assertThat(table("money")
                        .atOnce(
                                "/crew/settings",
                                Map.of("put_by_percent", "101", "tax_month", "May", "year_starts", "13-01")))
                .containsExactly(
                        "\"101\" is over 100; write 0 to 100",
                        "\"May\" is not a whole number; write digits only, such as 3",
                        "\"13-01\" is not a day of the year; write month-day, such as 04-15");
    }

    @Test
    void an_emergency() {
        refused(
                "emergency",
                text("number"),
                text("address"),
                text("way_in"),
                text("first_aider"),
                text("kit"),
                text("shut_offs"));
        assertThat(table("emergency").atOnce("/crew/settings", Map.of("number", LONG, "kit", LONG)))
                .containsExactly(
                        CUT + " is too long; write at most 200 characters",
                        CUT + " is too long; write at most 200 characters");
    }

    @Test
    void the_forecast() {
        refused(
                "model",
                number("prior_ratio"),
                within("prior_ratio", "0.1", "0.05", "10", "10.1"),
                number("effort_half_life"),
                within("effort_half_life", "0", "-1", "1200", "1201"),
                number("supporters_half_life"),
                within("supporters_half_life", "0", "-1", "1200", "1201"),
                number("joining_drift"),
                within("joining_drift", "0", "-0.1", "10", "11"),
                number("turnout"),
                within("turnout", "0", "-0.1", "10", "11"),
                number("found_share"),
                within("found_share", "0", "-0.1", "10", "11"),
                yes("editing_first"),
                number("camera_fixed"),
                within("camera_fixed", "0", "-1", "1000", "1001"),
                number("camera_operator"),
                within("camera_operator", "0", "-1", "1000", "1001"),
                yes("late_together"));
        assertThat(table("model")
                        .atOnce("/crew/settings", Map.of("prior_ratio", "0", "turnout", "x", "editing_first", "maybe")))
                .containsExactly(
                        "\"0\" is under 0.1; write 0.1 to 10",
                        "\"x\" is not a number; write 12 or 2.5",
                        "\"maybe\" is neither yes nor empty; write yes, or leave it empty");
    }

    @Test
    void the_public_build_log() {
        List<Sent> addresses = new ArrayList<>();
        for (String wrong :
                List.of("mill.example", "ftp://mill.example/", "https://mill.example/?a=1", "https://a b/")) {
            addresses.add(typed(
                    "address",
                    wrong,
                    "\"" + wrong + "\" is not the address of a site; write it whole, such as https://mill.example/log/,"
                            + " or leave it empty"));
        }
        refused(
                "build_log",
                yes("open", "stages", "landing", "episodes", "thanks", "drawing", "moved", "rung", "pledge"),
                addresses,
                List.of(
                        typed("lead", "a".repeat(501), CUT + " is too long; write at most 500 characters"),
                        BadInput.line("lead")));
        assertThat(table("build_log")
                        .atOnce("/crew/settings", Map.of("open", "perhaps", "address", "mill", "stages", "2")))
                .containsExactly(
                        "\"perhaps\" is neither yes nor empty; write yes, or leave it empty",
                        "\"2\" is neither yes nor empty; write yes, or leave it empty",
                        "\"mill\" is not the address of a site; write it whole, such as https://mill.example/log/, or"
                                + " leave it empty");
    }
}
