package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.FAR;
import static weekwright.testkit.BadInput.MISSING;
import static weekwright.testkit.BadInput.day;
import static weekwright.testkit.BadInput.dayHours;
import static weekwright.testkit.BadInput.forged;
import static weekwright.testkit.BadInput.hours;
import static weekwright.testkit.BadInput.lines;
import static weekwright.testkit.BadInput.money;
import static weekwright.testkit.BadInput.number;
import static weekwright.testkit.BadInput.text;
import static weekwright.testkit.BadInput.typed;
import static weekwright.testkit.BadInput.under;
import static weekwright.testkit.BadInput.whole;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BadInput;
import weekwright.testkit.ServerFixture;

/** Every field of every form of Crew against what people and machines send, and each form with all its faults at once. */
class CrewBadInputTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final BadInput FORMS = new BadInput(SERVER.as("ilse"), "main form.form[method=post]");
    private static final String CODES =
            "melt, lead, fell, stump, saw, belt, woodm, steam, dust, epoxy, solv, height, lift,"
                    + " jack, hand, space, hot, gas, elec, noise, lime, water, weath, line, dist, drone, cable,"
                    + " batt, lone, visit,"
                    + " fatig";
    private static final String LONG = "a".repeat(201);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static List<BadInput.Sent> far(String field) {
        return List.of(
                typed(field, "1066-10-14", "\"14 October 1066\"" + FAR),
                typed(field, "2999-01-01", "\"1 January" + " 2999\"" + FAR));
    }

    private static List<BadInput.Sent> stranger(String field) {
        return List.of(typed(field, "wil", "\"wil\" is nobody of the crew; choose one of the list"));
    }

    @Test
    void a_person() {
        FORMS.refused(
                SERVER,
                "/crew/members/new",
                Map.of("name", "Pia"),
                text("name"),
                List.of(
                        typed("name", "", "is missing; write what the person is called"),
                        typed("name", "\u200B", "is missing; write what the person is called"),
                        typed("name", "BRAM", "\"BRAM\" is the name of somebody else here; add a second name")),
                dayHours("mon"),
                dayHours("sun"),
                day("from"),
                far("from"),
                day("to"),
                List.of(typed("to", "1066-10-14", "\"14 October 1066\"" + FAR)),
                money("pay"),
                under("pay", "-1", "0 or more"),
                text("public_name"),
                List.of(
                        forged("access", "owner", "", "\"owner\" is not a known word here; write one of crew, helper"),
                        forged("not_for", "tar", "", "\"tar\" is not a known hazard; write one of " + CODES)));
        assertThat(FORMS.atOnce(
                        "/crew/members/new",
                        Map.of(
                                "name",
                                "Bram",
                                "tue",
                                "3h",
                                "pay",
                                "x",
                                "from",
                                "2026-11-25",
                                "to",
                                "2026-11-01",
                                "public_name",
                                LONG)))
                .containsExactly(
                        "\"3h\" is not hours; write 3.5 or 3:30",
                        "\"x\" is not an amount of money; write 12.50",
                        CUT + " is too long; write at most 200 characters",
                        "\"1 November 2026\" is before from 25 November 2026; write 25 November 2026 or later, or"
                                + " change from",
                        "\"Bram\" is the name of somebody else here; add a second name");
    }

    @Test
    void time_off() {
        Map<String, String> good = Map.of("crew", "ilse", "from", "2026-12-01", "to", "2026-12-04");
        FORMS.refused(
                SERVER,
                "/crew/off/new",
                good,
                stranger("crew"),
                day("from"),
                day("to"),
                dayHours("hours"),
                text("reason"),
                List.of(
                        typed("from", "", MISSING),
                        typed("to", "", MISSING),
                        typed(
                                "to",
                                "2026-11-30",
                                "\"30 November 2026\" is before from 1 December 2026; write 1 December 2026 or"
                                        + " later, or change from"),
                        typed(
                                "to",
                                "2032-01-01",
                                "\"1 January 2032\" is over five years after from 1 December 2026; write it in parts")));
        assertThat(FORMS.atOnce(
                        "/crew/off/new",
                        Map.of("from", "1.12.2026", "to", "2999-01-01", "hours", "25", "reason", LONG)))
                .containsExactly(
                        "\"1.12.2026\" is not a date; write year-month-day, such as 2026-03-05",
                        "\"25\" is over 24; write 0 to 24",
                        CUT + " is too long; write at most 200 characters",
                        "\"1 January 2999\"" + FAR);
    }

    @Test
    void other_hours() {
        FORMS.refused(
                SERVER,
                "/crew/hours/new",
                Map.of("crew", "bram", "mon", "4"),
                List.of(forged("crew", "", "", MISSING)),
                stranger("crew"),
                day("from"),
                far("from"),
                day("to"),
                List.of(
                        typed("to", "2999-01-01", "\"1 January 2999\"" + FAR),
                        typed(
                                "to",
                                "1066-10-14",
                                "\"14 October 1066\" is before from 25 November 2026; write 25 November 2026 or"
                                        + " later, or change from."
                                        + " \"14 October 1066\"" + FAR)),
                dayHours("mon"),
                dayHours("wed"));
        assertThat(FORMS.atOnce(
                        "/crew/hours/new", Map.of("from", "2026-12-04", "to", "2026-12-01", "mon", "x", "sat", "25")))
                .containsExactly(
                        MISSING,
                        "\"x\" is not hours; write 3.5 or 3:30",
                        "\"25\" is over 24; write 0 to 24",
                        "\"1 December 2026\" is before from 4 December 2026; write 4 December 2026 or later, or"
                                + " change from");
    }

    @Test
    void a_stopped_day() {
        String reasons = "ill, weather, material, machine, company, away, visitors, other";
        FORMS.refused(
                SERVER,
                "/crew/stopped/new",
                Map.of("date", "2026-11-24", "reason", "weather"),
                day("date"),
                List.of(
                        typed("date", "", MISSING),
                        typed(
                                "date",
                                "2026-11-26",
                                "\"26 November 2026\" is after today, 25 November 2026; enter days off ahead under"
                                        + " Crew,"
                                        + " stopped days once they have been"),
                        typed("date", "1066-10-14", "\"14 October 1066\"" + FAR),
                        forged("reason", "", "", MISSING),
                        typed("reason", "rain", "\"rain\" is not a known word here; write one of " + reasons),
                        typed("task", "roof.1", "\"roof.1\" is no task of this project; choose one of the list"),
                        typed(
                                "equipment",
                                "lathe",
                                "\"lathe\" is no equipment of this project; choose one of the list")),
                stranger("crew"),
                dayHours("hours"),
                lines("note", 2000));
        assertThat(FORMS.atOnce("/crew/stopped/new", Map.of("date", "2026-11-26", "reason", "", "hours", "-1")))
                .containsExactly(
                        "\"-1\" is less than nothing; write hours from 0 up",
                        MISSING,
                        "\"26 November 2026\" is after today, 25 November 2026; enter days off ahead under Crew,"
                                + " stopped"
                                + " days once they have been");
    }

    @Test
    void a_gathering() {
        FORMS.refused(
                SERVER,
                "/crew/gatherings/new",
                Map.of("date", "2026-12-12", "hands", "4", "hours", "5"),
                day("date"),
                far("date"),
                whole("hands"),
                List.of(
                        typed("date", "", MISSING),
                        typed("hands", "", MISSING),
                        typed("hands", "0", "\"0\" is under 1; write 1 to 1000"),
                        typed("hands", "1001", "\"1001\" is over 1000; write 1 to 1000"),
                        typed("hours", "", MISSING),
                        typed("hours", "0", "\"0\" is under 0.01; write 0.01 to 24"),
                        typed("hours", "25", "\"25\" is over 24; write 0.01 to 24"),
                        typed("hours", "-1", "\"-1\" is less than nothing; write hours from 0 up")),
                hours("hours"),
                number("come_share"),
                List.of(
                        typed("come_share", "1.5", "\"1.5\" is over 1; write 0 to 1"),
                        typed("come_share", "-0.5", "\"-0.5\" is under 0; write 0 to 1")),
                money("cost"),
                under("cost", "-1", "0 or more"),
                lines("note", 2000));
        assertThat(FORMS.atOnce(
                        "/crew/gatherings/new",
                        Map.of("date", "2999-01-01", "hands", "0", "hours", "25", "come_share", "2", "cost", "5 €")))
                .containsExactly(
                        "\"0\" is under 1; write 1 to 1000",
                        "\"25\" is over 24; write 0.01 to 24",
                        "\"2\" is over 1; write 0 to 1",
                        "\"5 €\" is not an amount of money; write 12.50",
                        "\"1 January 2999\"" + FAR);
    }

    @Test
    void an_incident() {
        FORMS.refused(
                SERVER,
                "/crew/incidents/new",
                Map.of("date", "2026-11-24", "what", "A plank slid off the trestles"),
                day("date"),
                text("who"),
                lines("what", 5000),
                lines("changed", 5000),
                List.of(
                        typed("date", "", MISSING),
                        typed(
                                "date",
                                "2026-11-26",
                                "\"26 November 2026\" is after today, 25 November 2026; write the day it happened"),
                        typed("date", "1066-10-14", "\"14 October 1066\"" + FAR),
                        typed("what", "", "is missing; write what happened"),
                        forged("hurt", "maybe", "", "\"maybe\" is neither yes nor empty; write yes, or leave it empty"),
                        forged(
                                "near_miss",
                                "maybe",
                                "",
                                "\"maybe\" is neither yes nor empty; write yes, or leave it empty")));
        assertThat(FORMS.atOnce("/crew/incidents/new", Map.of("date", "2026-11-26", "who", LONG, "what", "")))
                .containsExactly(
                        CUT + " is too long; write at most 200 characters",
                        "is missing; write what happened",
                        "\"26 November 2026\" is after today, 25 November 2026; write the day it happened");
    }

    @Test
    void a_caution() {
        FORMS.refused(
                SERVER,
                "/crew/cautions/new",
                Map.of("hazard", "lift", "for", "hands", "text", "Nobody stands under it."),
                lines("text", 500),
                List.of(
                        typed("text", "", "is missing; write the caution"),
                        forged("hazard", "", "", "is missing; choose the hazard that it is about"),
                        typed("hazard", "tar", "\"tar\" is not a known hazard; write one of " + CODES),
                        forged("for", "", "", MISSING),
                        forged("for", "dog", "", "\"dog\" is not a known word here; write one of hands, camera")));
        assertThat(FORMS.atOnce("/crew/cautions/new", Map.of("hazard", "", "text", "a".repeat(501))))
                .containsExactly(
                        CUT + " is too long; write at most 500 characters",
                        "is missing; choose the hazard that it is about");
    }
}
