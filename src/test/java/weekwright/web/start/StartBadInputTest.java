package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.MISSING;
import static weekwright.testkit.BadInput.day;
import static weekwright.testkit.BadInput.dayHours;
import static weekwright.testkit.BadInput.forged;
import static weekwright.testkit.BadInput.hours;
import static weekwright.testkit.BadInput.money;
import static weekwright.testkit.BadInput.number;
import static weekwright.testkit.BadInput.text;
import static weekwright.testkit.BadInput.typed;
import static weekwright.testkit.BadInput.under;
import static weekwright.testkit.BadInput.whole;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BadInput;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

/** The fields of the steps of the guided start against what people and machines send; the first with all faults at once. */
class StartBadInputTest {
    private static final String FORM = "main form.form[method=post]";
    private static final Map<String, String> GOOD = Map.of(
            "name", "The weir", "started", "2026-11-01", "crew", "Ilse", "currency", "EUR", "zone", "Europe/Berlin");

    @Test
    void a_new_project() {
        try (ServerFixture server = ServerFixture.empty()) {
            BadInput forms = new BadInput(server.stranger(), FORM);
            assertThat(forms.each(
                            "/start/new",
                            GOOD,
                            text("name"),
                            List.of(
                                    typed("name", "", "is missing; write what is being built"),
                                    typed("name", "\u200B", "is missing; write what is being built"),
                                    typed("started", "", MISSING),
                                    typed(
                                            "started",
                                            "1066-10-14",
                                            "\"14 October 1066\" is no likely start; write a day from 1900 to 2199")),
                            day("started"),
                            List.of(
                                    typed(
                                            "weekday",
                                            "caturday",
                                            "\"caturday\" is not a day of the week; write one of saturday, tuesday,"
                                                    + " thursday"),
                                    typed(
                                            "weekday",
                                            "a\nb",
                                            "\"a b\" has a line break or tab at character 2; write it on one line"),
                                    typed("crew", "", "names nobody; write at least one name"),
                                    typed(
                                            "crew",
                                            "a".repeat(201),
                                            CUT + " is no name; write at most 200 characters on one line"),
                                    typed("crew", "Ilse\nILSE", "\"ILSE\" stands there twice; add a second name"),
                                    typed(
                                            "crew",
                                            "Il\u0007se",
                                            "\"Il\u0007se\" is no name; write at most 200 characters on one line")),
                            dayHours("hours"),
                            List.of(
                                    typed("currency", "", "is missing; write its three letters, such as EUR"),
                                    typed("currency", "eur", "\"eur\" is not a currency of ISO 4217; write EUR"),
                                    typed(
                                            "currency",
                                            "XXX",
                                            "\"XXX\" is not a currency of ISO 4217; write its three letters, such as"
                                                    + " EUR"),
                                    typed(
                                            "currency",
                                            "BTC",
                                            "\"BTC\" is not a currency of ISO 4217; write its three letters, such as"
                                                    + " EUR"),
                                    typed("zone", "", "is missing; write a place such as Europe/Berlin"),
                                    typed(
                                            "zone",
                                            "Mars/Phobos",
                                            "\"Mars/Phobos\" is not a known zone; write a place such as Europe/Berlin"),
                                    typed(
                                            "zone",
                                            "EST",
                                            "\"EST\" is not a known zone; write a place such as Europe/Berlin"),
                                    typed(
                                            "zone",
                                            "+19:00",
                                            "\"+19:00\" is an offset, which has no summer time; write a place such as"
                                                    + " Europe/Berlin")),
                            money("cash"),
                            money("reserve"),
                            under("reserve", "-5", "0 or more")))
                    .isEmpty();
            assertThat(forms.atOnce(
                            "/start/new",
                            Map.of(
                                    "name",
                                    "",
                                    "started",
                                    "1.11.2026",
                                    "crew",
                                    "",
                                    "hours",
                                    "25",
                                    "currency",
                                    "eur",
                                    "cash",
                                    "x",
                                    "reserve",
                                    "-5",
                                    "zone",
                                    "+01:00")))
                    .containsExactly(
                            "\"1.11.2026\" is not a date; write year-month-day, such as 2026-03-05",
                            "\"x\" is not an amount of money; write 12.50",
                            "\"-5\" is under 0; write 0 or more",
                            "\"25\" is over 24; write 0 to 24",
                            "names nobody; write at least one name",
                            "is missing; write what is being built",
                            "\"eur\" is not a currency of ISO 4217; write EUR",
                            "\"+01:00\" is an offset, which has no summer time; write a place such as Europe/Berlin");
            assertThat(server.app().folder().isProject()).isFalse();
        }
    }

    @Test
    void what_supporters_pledge() {
        try (ServerFixture server = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            BadInput forms = new BadInput(server.as("ilse"), FORM);
            Map<String, String> good =
                    Map.of("level1", "Peg", "level1_amount", "3", "level2", "Beam", "level2_amount", "9");
            forms.refused(
                    server,
                    "/start/money",
                    good,
                    text("level1"),
                    List.of(
                            typed("level1", "", "has no name; write what the level is called"),
                            typed("level2", "peg", "\"peg\" is the name of another level; choose another name"),
                            typed("level3_amount", "5", "has no name; write what the level is called"),
                            typed("level3_supporters", "5", "has no name; write what the level is called")),
                    money("level1_amount"),
                    List.of(
                            typed("level1_amount", "", "is missing; write what a supporter of this level pays"),
                            typed(
                                    "level1_amount",
                                    "0",
                                    "\"0.00\" is no pledge; write what a supporter pays, more than nothing")),
                    under("level1_amount", "-3", "0 to 100000000"),
                    whole("level1_supporters"),
                    under("level1_supporters", "-1", "0 to 1000000"),
                    List.of(typed("level1_supporters", "1000001", "\"1000001\" is over 1000000; write 0 to 1000000")),
                    List.of(forged(
                            "charged",
                            "year",
                            "month",
                            "\"year\" is not a known word here; write one of month, episode")),
                    number("put_by"),
                    List.of(
                            typed("put_by", "-1", "\"-1\" is not 0 to 100; write a percent"),
                            typed("put_by", "100.5", "\"100.5\" is not 0 to 100; write a percent")),
                    whole("winter"),
                    List.of(
                            typed("winter", "-1", "\"-1\" is not 0 to 30; write days of a month"),
                            typed("winter", "31", "\"31\" is not 0 to 30; write days of a month")),
                    whole("summer"),
                    List.of(typed("summer", "31", "\"31\" is not 0 to 30; write days of a month")));
            assertThat(forms.atOnce(
                            "/start/money",
                            Map.of(
                                    "level1",
                                    "Peg",
                                    "level1_amount",
                                    "x",
                                    "level1_supporters",
                                    "-1",
                                    "level2_amount",
                                    "3",
                                    "put_by",
                                    "120",
                                    "winter",
                                    "1.5",
                                    "summer",
                                    "31")))
                    .containsExactly(
                            "\"x\" is not an amount of money; write 12.50",
                            "\"-1\" is under 0; write 0 to 1000000",
                            "has no name; write what the level is called",
                            "\"120\" is not 0 to 100; write a percent",
                            "\"1.5\" is not a whole number; write digits only, such as 3",
                            "\"31\" is not 0 to 30; write days of a month");
        }
    }

    @Test
    void what_is_built() {
        try (ServerFixture server = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            BadInput forms = new BadInput(server.as("ilse"), FORM);
            long version = server.db().version();
            assertThat(forms.each(
                            "/start/build",
                            Map.of("stage1", "Walls", "stage2", "Roof", "task1", "Dig"),
                            text("stage2"),
                            hours("stage1_hours"),
                            text("task1"),
                            hours("task1_hours"),
                            List.of(typed(
                                    "stage2", "walls", "\"walls\" is the name of another stage; choose another name"))))
                    .isEmpty();
            assertThat(server.db().version()).isEqualTo(version);
        }
    }
}
