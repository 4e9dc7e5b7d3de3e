package weekwright.files.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.db.Db;
import weekwright.db.Read;
import weekwright.db.Write;

/**
 * What calendars were told before: the table {@code calendar_entry}. It is no part of the project and raises no version. With
 * it an entry's number rises when, and only when, the entry changes.
 */
public final class ToldEntryStore {
    private static final int DAYS_KEPT = 90;

    private ToldEntryStore() {}

    private record Kept(String text, int sequence, Instant changed) {}

    /**
     * The entries with their numbers; what is new or changed is written down.
     *
     * @param today entries of more than 90 days before it are forgotten
     */
    public static List<ICalendar.Told> tell(Db db, List<CalendarEntry> entries, LocalDate today) {
        List<ICalendar.Told> before = db.read(read -> told(kept(read), entries, Instant.EPOCH));
        if (before.stream().noneMatch(one -> one.changed().equals(Instant.EPOCH))) {
            return before;
        }
        return db.write("calendar", write -> {
            List<ICalendar.Told> told = told(kept(write), entries, write.at());
            write(write, told, today);
            return told;
        });
    }

    private static List<ICalendar.Told> told(Map<String, Kept> kept, List<CalendarEntry> entries, Instant now) {
        List<ICalendar.Told> told = new ArrayList<>();
        for (CalendarEntry entry : entries) {
            Kept before = kept.get(entry.uid());
            if (before == null) {
                told.add(new ICalendar.Told(entry, 0, now));
            } else if (before.text().equals(entry.toString())) {
                told.add(new ICalendar.Told(entry, before.sequence(), before.changed()));
            } else {
                told.add(new ICalendar.Told(entry, before.sequence() + 1, now));
            }
        }
        return told;
    }

    private static Map<String, Kept> kept(Read read) {
        Map<String, Kept> kept = new HashMap<>();
        read.handle()
                .createQuery("SELECT uid, text, sequence, changed FROM calendar_entry")
                .mapToMap()
                .forEach(row -> kept.put(
                        (String) row.get("uid"),
                        new Kept(
                                (String) row.get("text"),
                                ((Number) row.get("sequence")).intValue(),
                                Instant.parse((String) row.get("changed")))));
        return kept;
    }

    private static void write(Write write, List<ICalendar.Told> told, LocalDate today) {
        write.handle()
                .createUpdate("DELETE FROM calendar_entry WHERE day < :day")
                .bind("day", today.minusDays(DAYS_KEPT).toString())
                .execute();
        Set<String> seen = new HashSet<>();
        for (ICalendar.Told one : told) {
            if (one.changed().equals(write.at()) && seen.add(one.entry().uid())) {
                write.handle()
                        .createUpdate("INSERT INTO calendar_entry (uid, day, text, sequence, changed)"
                                + " VALUES (:uid, :day, :text, :sequence, :changed) ON CONFLICT (uid) DO UPDATE SET"
                                + " day = excluded.day, text = excluded.text, sequence = excluded.sequence,"
                                + " changed = excluded.changed")
                        .bind("uid", one.entry().uid())
                        .bind("day", one.entry().day().toString())
                        .bind("text", one.entry().toString())
                        .bind("sequence", one.sequence())
                        .bind("changed", one.changed().toString())
                        .execute();
            }
        }
    }
}
