package weekwright.files.calendar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.build.Settings;
import weekwright.episodes.SlotRules;
import weekwright.testkit.Requirement;
import weekwright.testkit.SmallProject;

/** Read back by biweekly 0.6.8, an iCalendar library; the rules and examples are those of RFC 5545. */
class ICalendarTest {
    private static final Instant CHANGED = Instant.parse("2026-11-25T08:00:00Z");
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static String text(CalendarEntry... entries) {
        List<ICalendar.Told> told = new ArrayList<>();
        for (CalendarEntry entry : entries) {
            told.add(new ICalendar.Told(entry, 3, CHANGED));
        }
        return ICalendar.text("The weir, slots", "a1b2", told);
    }

    private static List<VEvent> read(String text) {
        return Biweekly.parse(text).first().getEvents();
    }

    private static CalendarEntry at(String day, String time, ZoneId zone) {
        return CalendarEntry.at(
                "slot-1",
                LocalDate.parse(day),
                LocalTime.parse(time),
                Optional.of(LocalTime.parse(time).plusMinutes(30)),
                zone,
                "Slot",
                "");
    }

    private static Instant start(CalendarEntry entry) {
        return read(text(entry)).get(0).getDateStart().getValue().toInstant();
    }

    private static String unfolded(String folded) {
        return folded.replace("\r\n ", "");
    }

    @Test
    void a_whole_calendar_is_what_it_is() {
        String text = text(
                CalendarEntry.day("delivery-m1", LocalDate.of(2026, 12, 31), "Delivery: oak; 14 m, sawn", "a\nb"),
                at("2026-12-04", "17:00", BERLIN));
        assertThat(text)
                .isEqualTo(String.join(
                        "\r\n",
                        "BEGIN:VCALENDAR",
                        "VERSION:2.0",
                        "PRODID:-//weekwright//EN",
                        "CALSCALE:GREGORIAN",
                        "NAME:The weir\\, slots",
                        "REFRESH-INTERVAL;VALUE=DURATION:PT1H",
                        "BEGIN:VEVENT",
                        "UID:delivery-m1@a1b2",
                        "DTSTAMP:20261125T080000Z",
                        "SEQUENCE:3",
                        "DTSTART;VALUE=DATE:20261231",
                        "DTEND;VALUE=DATE:20270101",
                        "TRANSP:TRANSPARENT",
                        "SUMMARY:Delivery: oak\\; 14 m\\, sawn",
                        "DESCRIPTION:a\\nb",
                        "END:VEVENT",
                        "BEGIN:VEVENT",
                        "UID:slot-1@a1b2",
                        "DTSTAMP:20261125T080000Z",
                        "SEQUENCE:3",
                        "DTSTART:20261204T160000Z",
                        "DTEND:20261204T163000Z",
                        "SUMMARY:Slot",
                        "END:VEVENT",
                        "END:VCALENDAR",
                        ""));
    }

    @Test
    void a_library_reads_back_what_was_written_and_has_nothing_to_warn_of() {
        String hard = "Kühler \\ Schmied; Öl, \"Eiche\" \uD83E\uDEB5 – ".repeat(9) + "\n\nEnde\t.";
        String text = text(CalendarEntry.day("x", LocalDate.of(2028, 2, 29), hard, hard));
        VEvent event = read(text).get(0);
        assertThat(event.getSummary().getValue()).isEqualTo(hard);
        assertThat(event.getDescription().getValue()).isEqualTo(hard);
        assertThat(event.getUid().getValue()).isEqualTo("x@a1b2");
        assertThat(event.getSequence().getValue()).isEqualTo(3);
        assertThat(event.getDateTimeStamp().getValue()).isEqualTo(Date.from(CHANGED));
        assertThat(event.getDateStart().getValue().hasTime()).isFalse();
        assertThat(event.getDateEnd().getValue().getRawComponents().getMonth()).isEqualTo(3);
        assertThat(event.getDateEnd().getValue().getRawComponents().getDate()).isEqualTo(1);
        assertThat(Biweekly.parse(text).first().validate(ICalVersion.V2_0).isEmpty())
                .isTrue();
    }

    @Test
    void no_line_is_over_75_octets_and_no_letter_is_cut() {
        // RFC 5545, 3.1: lines SHOULD NOT be longer than 75 octets, line break left out
        for (int letters = 0; letters < 200; letters++) {
            String line = "SUMMARY:" + "a".repeat(letters) + "ü€\uD83E\uDEB5".repeat(letters);
            String folded = ICalendar.folded(line);
            assertThat(unfolded(folded)).isEqualTo(line);
            for (String piece : folded.split("\r\n")) {
                byte[] octets = piece.getBytes(StandardCharsets.UTF_8);
                assertThat(octets.length).isLessThanOrEqualTo(75);
                assertThat(new String(octets, StandardCharsets.UTF_8)).isEqualTo(piece);
            }
        }
        assertThat(ICalendar.folded("x".repeat(75))).isEqualTo("x".repeat(75));
        assertThat(ICalendar.folded("x".repeat(76))).isEqualTo("x".repeat(75) + "\r\n x");
    }

    @Test
    @Requirement({"1.2.3"})
    void the_examples_of_the_standard_hold() {
        // RFC 5545, 3.1: both stand for one line
        String line = "DESCRIPTION:This is a long description that exists on a long line.";
        assertThat(unfolded("DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line."))
                .isEqualTo(line);
        assertThat(ICalendar.folded(line)).isEqualTo(line);
        // RFC 5545, 3.3.11
        assertThat(ICalendar.escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."))
                .isEqualTo("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
        // RFC 5545, 3.3.5: form 2, date with UTC time
        CalendarEntry january = new CalendarEntry(
                "x",
                LocalDate.of(1998, 1, 19),
                Optional.of(Instant.parse("1998-01-19T07:00:00Z")),
                Optional.empty(),
                "",
                "");
        assertThat(text(january)).contains("\r\nDTSTART:19980119T070000Z\r\n");
    }

    @Test
    void every_other_week_is_what_the_standard_says_of_it_across_the_change_to_winter_time() {
        // RFC 5545, 3.8.5.3: DTSTART;TZID=America/New_York:19970902T090000, RRULE:FREQ=WEEKLY;INTERVAL=2;WKST=SU
        // ==> (1997 9:00 AM EDT) September 2,16,30;October 14 (1997 9:00 AM EST) October 28;November 11,25;December
        // 9,23
        List<String> wanted = List.of(
                "1997-09-02T13:00:00Z",
                "1997-09-16T13:00:00Z",
                "1997-09-30T13:00:00Z",
                "1997-10-14T13:00:00Z",
                "1997-10-28T14:00:00Z",
                "1997-11-11T14:00:00Z",
                "1997-11-25T14:00:00Z",
                "1997-12-09T14:00:00Z",
                "1997-12-23T14:00:00Z");
        Settings settings = SmallProject.publishing("weekday", "tuesday", "first", "1997-09-02", "every_weeks", "2");
        List<String> slots = new ArrayList<>();
        for (LocalDate day = LocalDate.of(1997, 9, 1); day.getYear() == 1997; day = day.plusDays(1)) {
            if (SlotRules.isSlot(day, settings)) {
                slots.add(start(at(day.toString(), "09:00", ZoneId.of("America/New_York")))
                        .toString());
            }
        }
        assertThat(slots).isEqualTo(wanted);
    }

    @Test
    void a_slot_keeps_its_hour_across_both_changes_of_the_clock() {
        // Europe/Berlin: 29 March 2026 at 2:00 to 3:00, 25 October 2026 at 3:00 to 2:00 (IANA zone data of the JDK)
        assertThat(start(at("2026-03-27", "17:00", BERLIN))).isEqualTo("2026-03-27T16:00:00Z");
        assertThat(start(at("2026-04-03", "17:00", BERLIN))).isEqualTo("2026-04-03T15:00:00Z");
        assertThat(start(at("2026-10-23", "17:00", BERLIN))).isEqualTo("2026-10-23T15:00:00Z");
        assertThat(start(at("2026-10-30", "17:00", BERLIN))).isEqualTo("2026-10-30T16:00:00Z");
    }

    @Test
    void an_hour_that_is_left_out_comes_later_and_of_one_that_comes_twice_the_first_is_meant() {
        assertThat(start(at("2026-03-29", "02:15", BERLIN))).isEqualTo("2026-03-29T01:15:00Z");
        assertThat(start(at("2026-10-25", "02:15", BERLIN))).isEqualTo("2026-10-25T00:15:00Z");
        CalendarEntry across = at("2026-03-29", "01:45", BERLIN);
        assertThat(across.end()).contains(Instant.parse("2026-03-29T01:15:00Z"));
    }

    @Test
    void a_zone_without_summer_time_is_the_same_all_year() {
        ZoneId tokyo = ZoneId.of("Asia/Tokyo");
        for (String day : List.of("2026-01-02", "2026-03-29", "2026-07-03", "2026-10-25")) {
            assertThat(start(at(day, "17:00", tokyo))).isEqualTo(day + "T08:00:00Z");
        }
    }

    @Test
    void an_entry_cannot_end_before_it_begins() {
        assertThatThrownBy(() ->
                        new CalendarEntry("x", LocalDate.EPOCH, Optional.of(CHANGED), Optional.of(CHANGED), "", ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("entry x ends before it begins");
        assertThat(CalendarEntry.at("x", LocalDate.EPOCH, LocalTime.NOON, Optional.of(LocalTime.NOON), BERLIN, "", "")
                        .end())
                .isEmpty();
    }
}
