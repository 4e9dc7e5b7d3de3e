package weekwright.web.week;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.WeekLine;
import weekwright.db.Read;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.SlotCalendar;
import weekwright.files.calendar.CalendarEntry;
import weekwright.forecast.Forecast;
import weekwright.forecast.WeekPlan;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.render.Formats;

/**
 * What the calendars hold: slots, deliveries with the days by which orders go out, and a person's work of two weeks. No
 * money stands in them and no days off: lines of rest and care are left out.
 */
final class CalendarEntries {
    private static final int WEEKS_BACK = 4;
    private static final Set<String> PRIVATE = Set.of("rest", "care");

    private CalendarEntries() {}

    /** Slots of four weeks back and a year ahead; those skipped are left out. */
    static List<CalendarEntry> slots(Read read, LocalDate today) {
        Settings settings = SettingsStore.get(read);
        List<CalendarEntry> entries = new ArrayList<>();
        for (Episode one : EpisodeStore.TABLE.values(read)) {
            one.published()
                    .filter(day -> !day.isBefore(today.minusWeeks(WEEKS_BACK)))
                    .ifPresent(day ->
                            entries.add(slot(settings, "slot-" + one.id().folded(), day, named(one), "Published.")));
        }
        for (SlotCalendar.Slot slot : SlotCalendar.of(read, today.minusWeeks(WEEKS_BACK), today.plusYears(1))) {
            if (slot.episode().isPresent()) {
                Episode one = slot.episode().get();
                entries.add(slot(settings, "slot-" + one.id().folded(), slot.day(), named(one), ""));
            } else if (slot.skipped().isEmpty() && !slot.day().isBefore(today)) {
                entries.add(slot(settings, "open-" + slot.day(), slot.day(), "Slot with nothing planned", ""));
            }
        }
        return entries;
    }

    private static String named(Episode one) {
        return plain(one.number().map(n -> "No. " + n + ", ").orElse("") + one.title());
    }

    private static CalendarEntry slot(Settings settings, String uid, LocalDate day, String summary, String more) {
        return CalendarEntry.at(uid, day, settings.publishingTime(), Optional.empty(), settings.zone(), summary, more);
    }

    /** Deliveries promised and the days by which orders should go out; what is overdue stands today, as on the week's sheet. */
    static List<CalendarEntry> deliveries(Read read, Optional<Forecast> forecast, LocalDate today) {
        List<CalendarEntry> entries = new ArrayList<>();
        for (Material line : MaterialStore.TABLE.values(read)) {
            String id = line.id().folded();
            if (line.ordered().isPresent()
                    && line.received().isEmpty()
                    && line.promised().isPresent()) {
                LocalDate day = line.promised().get();
                String words = day.isBefore(today) ? "Delivery, promised for " + Said.day(day) : "Delivery";
                entries.add(due("delivery-" + id, day, words, line, today));
            }
            if (line.ordered().isEmpty()) {
                forecast.flatMap(f -> f.order(line.id().value()))
                        .flatMap(Forecast.Order::orderBy)
                        .ifPresent(day -> {
                            String words =
                                    day.isBefore(today) ? "Order, overdue since " + Said.day(day) : "Order by today";
                            entries.add(due("order-" + id, day, words, line, today));
                        });
            }
        }
        return entries;
    }

    private static CalendarEntry due(String uid, LocalDate day, String words, Material line, LocalDate today) {
        String from = line.supplier().isEmpty() ? "" : "From " + line.supplier() + ".";
        return CalendarEntry.day(uid, day.isBefore(today) ? today : day, words + ": " + what(line), from);
    }

    private static String what(Material line) {
        return plain(line.item()
                + line.quantity()
                        .map(q -> ", " + q.text() + (line.unit().isEmpty() ? "" : " " + line.unit()))
                        .orElse(""));
    }

    /** A person's lines of a week: those with a time of the clock at that time, the others for the whole day. */
    static List<CalendarEntry> week(Settings settings, WeekPlan plan, WeekFacts facts, Id crew) {
        List<CalendarEntry> entries = new ArrayList<>();
        Set<String> uids = new HashSet<>();
        for (WeekPlan.Day day : plan.days()) {
            for (WeekPlan.Person person : day.people()) {
                if (new Id(person.crew()).same(crew)) {
                    person.lines().stream()
                            .filter(line -> !PRIVATE.contains(line.kind()))
                            .map(line -> entry(settings, facts, crew, day.date(), line))
                            .filter(one -> uids.add(one.uid()))
                            .forEach(entries::add);
                }
            }
        }
        return entries;
    }

    private static CalendarEntry entry(Settings settings, WeekFacts facts, Id crew, LocalDate day, WeekPlan.Line line) {
        Optional<WeekLine> own = line.row().map(facts.own()::get);
        String uid = own.map(one -> "line-" + one.id().folded())
                .orElseGet(() -> "plan-" + day + "-" + crew.folded() + "-" + line.kind() + "-"
                        + line.task().or(line::episode).orElse("bank").toLowerCase(Locale.ROOT));
        int minutes = line.own()
                ? line.hours().minutes()
                : WeekDays.quarters(line.hours().minutes());
        String text = plain(Formats.sentence(WeekDays.text(line, facts)));
        String hours = minutes == 0 ? "" : ", " + Formats.hours(minutes) + " h";
        String more = own.isPresent() ? "" : "Proposed from the plan.";
        Optional<LocalTime> at = own.flatMap(WeekLine::from);
        return at.isPresent()
                ? CalendarEntry.at(uid, day, at.get(), own.flatMap(WeekLine::to), settings.zone(), text, more)
                : CalendarEntry.day(uid, day, text + hours, more);
    }

    private static String plain(String text) {
        return text.replace(Formats.NBSP, " ");
    }

    /** Two entries of one thing would be one to those who read: the later one stays. */
    static List<CalendarEntry> once(List<CalendarEntry> entries) {
        Map<String, CalendarEntry> byUid = new LinkedHashMap<>();
        entries.forEach(entry -> byUid.put(entry.uid(), entry));
        return List.copyOf(byUid.values());
    }
}
