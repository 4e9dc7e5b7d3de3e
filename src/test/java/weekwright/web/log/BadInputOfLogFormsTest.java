package weekwright.web.log;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.FAR;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntryStore;
import weekwright.build.StoppedStore;
import weekwright.build.WeekLineStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/**
 * What people and broken programs send to the forms of Log and of the week, and what they are told. The inputs are those
 * that readers of numbers, days and text are known to take or to break on; common practice, no source.
 */
class BadInputOfLogFormsTest {
    private static final String LONG = "a".repeat(10_000);

    private static final List<String> STRINGS = List.of(
            "\u200b",
            "0",
            "-1",
            "25",
            "1,234",
            "NaN",
            "1e5",
            "\u0661\u0662",
            "9".repeat(200),
            "5 \u20ac",
            "2026-02-29",
            "1066-10-14",
            "none",
            LONG,
            "a\u0001b",
            "\u202eabc",
            "<script>alert(1)</script>",
            "'; DROP TABLE hours; --");

    /** Boxes, buttons and fixed lists: a browser sends nothing but what they hold. */
    private static final Set<String> HELD = Set.of(
            "/log who",
            "/log as",
            "/log state",
            "/log filmed",
            "/log found_first",
            "/log after",
            "/log/entries/5/edit filmed",
            "/week/sheet done.0",
            "/week/sheet done.1",
            "/week/lines/new done",
            "/week/lines/1/edit done");

    /**
     * @param css of the form on its page
     * @param act its button; empty for the chief one
     * @param hours the field that is always wrong, so that nothing is saved
     */
    private record Sheet(String address, String css, String act, String hours) {}

    private static final Sheet LOG = new Sheet("/log", "form[data-log]", "", "hours");
    private static final Sheet NOTHING = new Sheet("/log", ".nothing form", "nothing", "hours");
    private static final Sheet AGAIN = new Sheet("/log/again", "main form[method=post]", "", "hours5");
    private static final Sheet ENTRY = new Sheet("/log/entries/5/edit", "main form[method=post]", "", "hours");
    private static final Sheet WALL = new Sheet("/week/sheet", "form.from-wall", "", "hours.0");
    private static final Sheet NEW_LINE = new Sheet("/week/lines/new", "main form[method=post]", "", "hours");
    private static final Sheet LINE = new Sheet("/week/lines/1/edit", "main form[method=post]", "", "hours");

    private final ServerFixture server =
            ServerFixture.of(SmallProject::fillWithWeekLine).drawn();
    private Visitor ilse;
    private int hours;
    private int stopped;
    private int lines;

    @BeforeEach
    void come() {
        ilse = server.as("ilse");
        hours = server.db().read(HoursEntryStore.TABLE::count);
        stopped = server.db().read(StoppedStore.TABLE::count);
        lines = server.db().read(WeekLineStore.TABLE::count);
    }

    @AfterEach
    void nothing_is_kept_and_stop() {
        try {
            assertThat(server.db().read(HoursEntryStore.TABLE::count)).isEqualTo(hours);
            assertThat(server.db().read(StoppedStore.TABLE::count)).isEqualTo(stopped);
            assertThat(server.db().read(WeekLineStore.TABLE::count)).isEqualTo(lines);
        } finally {
            server.close();
        }
    }

    /** The sentences of a form with these fields filled in; every one of them stands there still. */
    private List<String> said(Sheet sheet, String... fields) {
        Visitor.Form form = ilse.form(ilse.get(sheet.address()), sheet.css());
        for (int i = 0; i < fields.length; i += 2) {
            form.with(fields[i], fields[i + 1]);
        }
        Visitor.Reply refused = sheet.act().isEmpty() ? form.send() : form.press(sheet.act());
        assertThat(refused.status()).as("%s %s", sheet, List.of(fields)).isEqualTo(422);
        for (int i = 0; i < fields.length; i += 2) {
            assertThat(ilse.form(refused, sheet.css()).value(fields[i])).isEqualTo(fields[i + 1]);
        }
        return refused.troubles();
    }

    private static List<String> fields(Sheet sheet) {
        if (sheet.equals(LOG)) {
            return List.of(
                    "who",
                    "as",
                    "task",
                    "other",
                    "episode",
                    "pieces",
                    "spoiled",
                    "state",
                    "left",
                    "note",
                    "cost",
                    "payee",
                    "others",
                    "filmed",
                    "footage_minutes",
                    "date",
                    "found",
                    "found_hours",
                    "found_first",
                    "after",
                    "clock");
        }
        if (sheet.equals(NOTHING)) {
            return List.of("crew", "reason", "date", "note");
        }
        if (sheet.equals(ENTRY)) {
            return List.of(
                    "crew",
                    "date",
                    "as",
                    "task",
                    "episode",
                    "pieces",
                    "spoiled",
                    "people",
                    "filmed",
                    "footage_minutes",
                    "note");
        }
        if (sheet.equals(WALL)) {
            return List.of(
                    "date.0",
                    "crew.0",
                    "kind.0",
                    "what.0",
                    "text.0",
                    "planned.0",
                    "crew.1",
                    "what.1",
                    "hours.1",
                    "done.1");
        }
        return sheet.equals(AGAIN)
                ? List.of()
                : List.of("date", "crew", "kind", "task", "episode", "from", "to", "text", "done");
    }

    @Test
    void whatever_stands_in_a_field_of_a_refused_form_stands_there_still() {
        Map<String, String> lost = new HashMap<>();
        int key = 1;
        for (Sheet sheet : List.of(LOG, NOTHING, AGAIN, ENTRY, WALL, NEW_LINE, LINE)) {
            Visitor.Reply page = ilse.get(sheet.address());
            for (String field : fields(sheet)) {
                for (String text : STRINGS) {
                    Visitor.Form form = ilse.form(page, sheet.css())
                            .with(sheet.hours(), "3x")
                            .with(field, text)
                            .with("answer", "answer-number-" + key++);
                    Visitor.Reply reply = sheet.act().isEmpty() ? form.send() : form.press(sheet.act());
                    String place = sheet.address() + " " + field;
                    // a pressed task that is none of today's stands as another one
                    String shown = place.equals("/log task") ? "other" : field;
                    if (reply.status() != 422) {
                        lost.put(place, text + ": " + reply.status());
                    } else if (!HELD.contains(place)
                            && !ilse.form(reply, sheet.css()).value(shown).equals(text)) {
                        lost.put(place, text);
                    }
                }
            }
        }
        assertThat(lost).isEmpty();
    }

    @Test
    void hours_that_are_none_on_every_form() {
        for (Sheet sheet : List.of(LOG, NOTHING, AGAIN, ENTRY, WALL, NEW_LINE, LINE)) {
            List<String> more = sheet.equals(NOTHING) ? List.of("reason", "weather") : List.of();
            Map<String, String> sentences = Map.of(
                    "NaN",
                    "\"NaN\" is not hours; write 3.5 or 3:30",
                    "1e5",
                    "\"1e5\" is not hours; write 3.5 or 3:30",
                    "3h30",
                    "\"3h30\" is not hours; write 3.5 or 3:30",
                    "١٢",
                    "\"١٢\" is not hours; write 3.5 or 3:30",
                    "3:75",
                    "\"3:75\" has more than 59 minutes after the colon; write 3.5 or 3:30",
                    "1,234",
                    "\"1,234\" can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point",
                    "9".repeat(13),
                    "\"9999999999999\" is too large; write at most twelve digits",
                    "-1",
                    "\"-1\" is less than nothing; write hours from 0 up");
            sentences.forEach((text, sentence) -> {
                List<String> fields = new ArrayList<>(more);
                fields.addAll(List.of(sheet.hours(), text));
                assertThat(said(sheet, fields.toArray(String[]::new)))
                        .as("%s %s", sheet, text)
                        .containsExactly(sentence);
            });
        }
        for (Sheet sheet : List.of(LOG, AGAIN, ENTRY, WALL)) {
            assertThat(said(sheet, sheet.hours(), "0")).containsExactly("\"0\" is under 0.01; write 0.01 to 24");
            assertThat(said(sheet, sheet.hours(), "24.02")).containsExactly("\"24.02\" is over 24; write 0.01 to 24");
        }
        assertThat(said(NOTHING, "reason", "weather", "hours", "0"))
                .containsExactly("\"0\" is nothing lost; write the hours, or leave it empty for the day");
        assertThat(said(NEW_LINE, "hours", "25")).containsExactly("\"25\" is over 24; write 0 to 24");
        assertThat(said(ENTRY, "hours", "")).containsExactly("is missing; it has to be given");
    }

    @Test
    void days_that_are_none_or_too_far_or_still_to_come() {
        for (Sheet sheet : List.of(LOG, ENTRY)) {
            assertThat(said(sheet, "hours", "1", "date", "2026-02-29"))
                    .containsExactly("\"2026-02-29\" is not a day of the calendar; write a day that exists, such as"
                            + " 2026-02-28");
            assertThat(said(sheet, "hours", "1", "date", "29.2.2024"))
                    .containsExactly("\"29.2.2024\" is not a date; write year-month-day, such as 2026-03-05");
            assertThat(said(sheet, "hours", "1", "date", "1066-10-14"))
                    .containsExactly(
                            "\"14 October 1066\" is before the project began; write a day from 1 September 2026"
                                    + " on");
            assertThat(said(sheet, "hours", "1", "date", "2026-11-26"))
                    .containsExactly("\"26 November 2026\" is still to come; write 25 November 2026 or an earlier day");
            assertThat(said(sheet, "hours", "1", "date", "")).containsExactly("is missing; it has to be given");
        }
        assertThat(said(NOTHING, "reason", "weather", "date", "2026-11-26"))
                .containsExactly(
                        "\"26 November 2026\" is after today, 25 November 2026; enter days off ahead under Crew,"
                                + " stopped days once they have been");
        for (Sheet sheet : List.of(NEW_LINE, LINE)) {
            assertThat(said(sheet, "date", "1066-10-14")).containsExactly("\"14 October 1066\"" + FAR);
            assertThat(said(sheet, "from", "12:00", "to", "24:00"))
                    .containsExactly("\"24:00\" is not a time of day; write hours and minutes, such as 08:30");
            assertThat(said(sheet, "from", "12:00", "to", "11:59"))
                    .containsExactly("\"11:59\" is not after from 12:00; write a later time of the same day");
        }
    }

    @Test
    void counts_and_money_that_are_none() {
        for (Sheet sheet : List.of(LOG, ENTRY)) {
            assertThat(said(sheet, "hours", "1", "pieces", "1.5"))
                    .containsExactly("\"1.5\" is not a whole number; write digits only, such as 3");
            assertThat(said(sheet, "hours", "1", "spoiled", "-1"))
                    .containsExactly("\"-1\" is under 0; write 0 to 100000");
            assertThat(said(sheet, "hours", "1", "footage_minutes", "-1"))
                    .containsExactly("\"-1\" is under 0; write 0 to 100000");
            assertThat(said(sheet, "hours", "1", "pieces", "3"))
                    .containsExactly("\"Set the sill stones\" is not made in pieces; leave the pieces empty");
        }
        assertThat(said(ENTRY, "people", "0")).containsExactly("\"0\" is under 1; write 1 to 100");
        assertThat(said(LOG, "hours", "1", "others", "100"))
                .containsExactly("\"100\" is not 0 to 99; write how many there were");
        assertThat(said(LOG, "hours", "1", "cost", "12.345"))
                .containsExactly("\"12.345\" can be read as 12.345 or as 12345; write 12345, or 12.34");
        assertThat(said(LOG, "hours", "1", "cost", "0"))
                .containsExactly("\"0\" is no cost; write what was paid, more than nothing");
        assertThat(said(LOG, "hours", "1", "cost", "€5"))
                .containsExactly("\"€5\" is not an amount of money; write 12.50");
        assertThat(said(LOG, "hours", "1", "payee", "Ironmonger"))
                .containsExactly("is missing; write what was paid, or leave out to whom");
        assertThat(said(LOG, "hours", "1", "found", "Shore the bank", "found_hours", "100001"))
                .containsExactly("\"100001\" is over 100000; write 0 to 100000");
        assertThat(said(LOG, "hours", "1", "found", "Shore the bank", "found_hours", "0"))
                .containsExactly("\"0\" is no work; write the hours, or leave it empty if nobody knows yet");
    }

    @Test
    void texts_that_are_too_long_or_no_text() {
        for (Sheet sheet : List.of(LOG, ENTRY)) {
            assertThat(said(sheet, "hours", "1", "note", LONG))
                    .containsExactly(CUT + " is too long; write at most 2000 characters");
            assertThat(said(sheet, "hours", "1", "note", "a\u0001b"))
                    .containsExactly("\"a\u0001b\" has a character that is no text at character 2; take it out");
        }
        assertThat(said(LOG, "hours", "1", "cost", "5", "payee", LONG))
                .containsExactly(CUT + " is too long; write at most 200 characters");
        assertThat(said(LOG, "hours", "1", "found", LONG))
                .containsExactly(CUT + " is too long; write at most 200 characters");
        assertThat(said(NOTHING, "reason", "weather", "note", LONG))
                .containsExactly(CUT + " is too long; write at most 2000 characters");
        for (Sheet sheet : List.of(NEW_LINE, LINE)) {
            assertThat(said(sheet, "text", LONG)).containsExactly(CUT + " is too long; write at most 2000 characters");
        }
    }

    @Test
    void people_tasks_and_episodes_that_are_not_there() {
        assertThat(said(LOG, "hours", "1", "task", "other", "other", "none"))
                .containsExactly("\"none\" is no task of this project; choose one of the tasks");
        assertThat(said(LOG, "hours", "1", "task", "other", "other", "weir.3"))
                .containsExactly("\"Lime cures\" is a wait, which nobody works on; log the hours on a task of work");
        assertThat(said(LOG, "hours", "1", "as", "edit", "episode", "none"))
                .containsExactly("\"none\" is no episode of this project; choose one of the episodes");
        assertThat(said(ENTRY, "crew", "none"))
                .containsExactly("\"none\" is nobody of the crew; choose a person of the crew");
        assertThat(said(ENTRY, "task", "1 OR 1"))
                .containsExactly("\"1 OR 1\" is not an id; use at most 40 letters, digits, - _ and . only");
        assertThat(said(ENTRY, "task", "", "episode", "none"))
                .containsExactly("\"none\" is no episode of this project; choose one of the episodes");
        assertThat(said(NOTHING, "reason", "weather", "crew", "none"))
                .containsExactly("\"none\" is not one of those here; choose one of the list");
        assertThat(said(NEW_LINE, "crew", "none", "task", "none"))
                .containsExactly(
                        "\"none\" is nobody of the crew; choose one of the list",
                        "\"none\" is no task of this project; choose one of the list");
        assertThat(said(WALL, "hours.0", "1", "what.0", "task:none"))
                .containsExactly("\"none\" is no task of this project; choose one of the tasks");
        assertThat(said(WALL, "hours.0", "1", "what.0", "oak"))
                .containsExactly("\"oak\" is not one of those here; choose one of the list");
        assertThat(said(WALL, "crew.1", "ilse", "what.1", "task:weir.2"))
                .containsExactly("is missing; write the hours, or choose nobody and nothing on this line");
        assertThat(said(WALL, "crew.1", "ilse", "what.1", "task:none", "done.1", "yes"))
                .containsExactly("\"none\" is no task of this project; take the tick out, or choose another task");
    }

    @Test
    void a_day_of_more_than_24_hours_names_what_stands_there_and_every_person() {
        assertThat(said(ENTRY, "date", "2026-11-09", "hours", "18"))
                .containsExactly(
                        "\"18\" makes 25 hours for Ilse on 9 November 2026 (already there: 7 on Set the sill stones);"
                                + " at most 24 fit in a day");
        Visitor.Reply refused = ilse.form(ilse.get("/log"), LOG.css())
                .with("who", "ilse", "bram")
                .with("date", "2026-11-09")
                .with("hours", "18")
                .with("pieces", "-1")
                .with("cost", "x")
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "\"-1\" is under 0; write 0 to 100000",
                        "\"x\" is not an amount of money; write 12.50",
                        "\"18\" makes 25 hours for Ilse on 9 November 2026 (already there: 7 on Set the sill stones);"
                                + " at most 24 fit in a day");
    }

    @Test
    void what_the_rules_refuse_is_told_together_with_what_cannot_be_read() {
        assertThat(said(ENTRY, "date", "2026-11-26", "hours", "3x", "people", "0"))
                .containsExactlyInAnyOrder(
                        "\"3x\" is not hours; write 3.5 or 3:30",
                        "\"0\" is under 1; write 1 to 100",
                        "\"26 November 2026\" is still to come; write 25 November 2026 or an earlier day");
        assertThat(said(LINE, "hours", "3x", "task", "none", "from", "12:00", "to", "11:59"))
                .containsExactlyInAnyOrder(
                        "\"3x\" is not hours; write 3.5 or 3:30",
                        "\"none\" is no task of this project; choose one of the list",
                        "\"11:59\" is not after from 12:00; write a later time of the same day");
    }

    @Test
    void a_field_sent_twice_or_that_nobody_asked_for_and_entries_that_are_not_there() {
        Visitor.Reply twice =
                ilse.form(ilse.get("/log"), LOG.css()).with("hours", "1", "2").send();
        assertThat(twice.troubles()).containsExactly("was sent twice; send it once");
        Visitor.Reply stranger =
                ilse.form(ilse.get("/week/lines/new")).with("colour", "brown").send();
        assertThat(stranger.troubles())
                .containsExactly("\"colour\" is not a field of this form; load the page again and fill it in");
        for (String address : List.of(
                "/log/entries/99/edit",
                "/log/entries/1%20OR%201/edit",
                "/log/entries/9223372036854775808/edit",
                "/week/lines/99/edit",
                "/week/lines/x/edit")) {
            assertThat(ilse.get(address).status()).as(address).isEqualTo(404);
        }
    }
}
