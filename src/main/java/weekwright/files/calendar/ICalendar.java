package weekwright.files.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * Writes a calendar as RFC 5545 has it: all times in UTC, whole days as dates, so that no zone has to be described; lines
 * folded at 75 octets, never inside a letter; the name as in RFC 7986.
 */
public final class ICalendar {
    /** The content type. */
    public static final String TYPE = "text/calendar; charset=utf-8";

    private static final int OCTETS = 75;
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    private ICalendar() {}

    /**
     * An entry as it is told.
     *
     * @param sequence how often it was changed since it was first told
     * @param changed when it was last changed
     */
    public record Told(CalendarEntry entry, int sequence, Instant changed) {}

    /**
     * The text of a calendar.
     *
     * @param name what it is called
     * @param domain makes the uids of this project unlike all others
     */
    public static String text(String name, String domain, List<Told> entries) {
        StringBuilder text = new StringBuilder();
        line(text, "BEGIN:VCALENDAR");
        line(text, "VERSION:2.0");
        line(text, "PRODID:-//weekwright//EN");
        line(text, "CALSCALE:GREGORIAN");
        line(text, "NAME:" + escaped(name));
        line(text, "REFRESH-INTERVAL;VALUE=DURATION:PT1H");
        for (Told one : entries) {
            event(text, domain, one);
        }
        line(text, "END:VCALENDAR");
        return text.toString();
    }

    private static void event(StringBuilder text, String domain, Told told) {
        CalendarEntry entry = told.entry();
        line(text, "BEGIN:VEVENT");
        line(text, "UID:" + escaped(entry.uid() + "@" + domain));
        line(text, "DTSTAMP:" + STAMP.format(told.changed()));
        line(text, "SEQUENCE:" + told.sequence());
        if (entry.start().isPresent()) {
            line(text, "DTSTART:" + STAMP.format(entry.start().get()));
            entry.end().ifPresent(end -> line(text, "DTEND:" + STAMP.format(end)));
        } else {
            line(text, "DTSTART;VALUE=DATE:" + date(entry.day()));
            line(text, "DTEND;VALUE=DATE:" + date(entry.day().plusDays(1)));
            line(text, "TRANSP:TRANSPARENT");
        }
        line(text, "SUMMARY:" + escaped(entry.summary()));
        if (!entry.description().isEmpty()) {
            line(text, "DESCRIPTION:" + escaped(entry.description()));
        }
        line(text, "END:VEVENT");
    }

    private static String date(LocalDate day) {
        return DateTimeFormatter.BASIC_ISO_DATE.format(day);
    }

    private static void line(StringBuilder text, String line) {
        text.append(folded(line)).append("\r\n");
    }

    /** A text value: RFC 5545, 3.3.11. Control characters are left out. */
    public static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        String plain = text.replace("\r\n", "\n").replace('\r', '\n');
        for (int i = 0; i < plain.length(); i++) {
            char letter = plain.charAt(i);
            switch (letter) {
                case '\\', ';', ',' -> escaped.append('\\').append(letter);
                case '\n' -> escaped.append("\\n");
                default -> {
                    if (letter == '\t' || !Character.isISOControl(letter)) {
                        escaped.append(letter);
                    }
                }
            }
        }
        return escaped.toString();
    }

    /** A content line in pieces of at most 75 octets, each but the first behind a blank: RFC 5545, 3.1. */
    public static String folded(String line) {
        StringBuilder folded = new StringBuilder();
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            int letter = line.codePointAt(i);
            int size = Character.toString(letter).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.appendCodePoint(letter);
            octets += size;
            i += Character.charCount(letter);
        }
        return folded.toString();
    }
}
