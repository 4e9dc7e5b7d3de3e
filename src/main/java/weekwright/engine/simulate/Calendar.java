package weekwright.engine.simulate;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;

/**
 * Days, months, weeks and slots of the simulated time, and who has how many minutes on which day. Day numbers count from the
 * as-of day (0) to {@link #days} - 1. Computed once; nothing here is drawn.
 */
final class Calendar {
    /** The as-of day as epoch day. */
    final int asOf;
    /** How many days are simulated (rule 6: the horizon is that many calendar months after the as-of day). */
    final int days;
    /** Named people. */
    final int people;
    /** Stated minutes of each person, [day * people + person]. */
    final short[] minutes;
    /** By person, minutes logged on the as-of day already. */
    final int[] worked;
    /** The longest day of each person. */
    final int[] longest;
    /** Month of the year, 0 to 11. */
    final byte[] monthOfYear;
    /** Position in {@link #months}. */
    final short[] monthIndex;
    /** Day of the month. */
    final byte[] dayOfMonth;
    /** Months from the as-of month on as 12 * year + month - 1. */
    final int[] months;
    /** Day numbers of the Sundays. */
    final int[] sundays;
    /** Position in {@link #sundays} or -1. */
    final short[] sundayIndex;
    /** Whether the day is a Monday: drift of the plan is looked at on Mondays. */
    final boolean[] monday;
    /** Whether the day is a 1st, a 15th, a Sunday or a slot: money or records may change on it by the calendar alone. */
    final boolean[] marked;
    /** Whether none of the named people has stated any hours for the day. */
    final boolean[] nobody;
    /** Day numbers of the slots. */
    final int[] slots;
    /** Position in {@link #slots} or -1. */
    final short[] slotIndex;
    /** How many slots of the as-of month were left empty before the as-of day. */
    final int emptyThisMonth;
    /** How many slots lie before a day. */
    final short[] slotsBefore;

    Calendar(Inputs inputs) {
        asOf = inputs.asOf();
        LocalDate first = LocalDate.ofEpochDay(asOf);
        days = (int) (first.plusMonths(inputs.horizonMonths()).toEpochDay() - asOf);
        people = inputs.crew().size();
        monthOfYear = new byte[days];
        monthIndex = new short[days];
        dayOfMonth = new byte[days];
        monday = new boolean[days];
        sundayIndex = new short[days];
        slotIndex = new short[days];
        YearMonth start = YearMonth.from(first);
        int startMonth = 12 * start.getYear() + start.getMonthValue() - 1;
        int sundayCount = 0;
        for (int d = 0; d < days; d++) {
            LocalDate date = first.plusDays(d);
            monthOfYear[d] = (byte) (date.getMonthValue() - 1);
            monthIndex[d] = (short) (12 * date.getYear() + date.getMonthValue() - 1 - startMonth);
            dayOfMonth[d] = (byte) date.getDayOfMonth();
            monday[d] = date.getDayOfWeek().getValue() == 1;
            sundayIndex[d] = date.getDayOfWeek().getValue() == 7 ? (short) sundayCount++ : -1;
        }
        months = IntStream.rangeClosed(0, days == 0 ? 0 : monthIndex[days - 1])
                .map(m -> startMonth + m)
                .toArray();
        sundays = IntStream.range(0, days).filter(d -> sundayIndex[d] >= 0).toArray();
        minutes = new short[days * people];
        longest = new int[people];
        worked = new int[people];
        fillMinutes(inputs);
        nobody = new boolean[days];
        for (int d = 0; d < days; d++) {
            int all = 0;
            for (int p = 0; p < people; p++) {
                all += minutes[d * people + p];
            }
            nobody[d] = all == 0;
        }
        slots = slotDays(inputs);
        emptyThisMonth = slotsLeftEmpty(inputs);
        Arrays.fill(slotIndex, (short) -1);
        for (int s = 0; s < slots.length; s++) {
            slotIndex[slots[s]] = (short) s;
        }
        slotsBefore = new short[days];
        for (int d = 1; d < days; d++) {
            slotsBefore[d] = (short) (slotsBefore[d - 1] + (slotIndex[d - 1] >= 0 ? 1 : 0));
        }
        marked = new boolean[days];
        for (int d = 0; d < days; d++) {
            marked[d] = dayOfMonth[d] == 1 || dayOfMonth[d] == 15 || sundayIndex[d] >= 0 || slotIndex[d] >= 0;
        }
    }

    private void fillMinutes(Inputs inputs) {
        for (int p = 0; p < people; p++) {
            Inputs.Crew person = inputs.crew().get(p);
            for (int d = 0; d < days; d++) {
                int m = StatedHours.minutes(inputs.crewHours(), inputs.daysOff(), person, asOf + d);
                longest[p] = Math.max(longest[p], m);
                minutes[d * people + p] = (short) m;
            }
            for (Inputs.WorkedToday worked : inputs.workedToday()) {
                if (worked.crew().equals(person.id()) && days > 0) {
                    this.worked[p] += worked.minutes();
                }
            }
        }
    }

    /** By day, whether its weekday is one of these (1 for Monday to 7 for Sunday); null for none given. */
    boolean[] onWeekdays(List<Integer> weekdays) {
        if (weekdays.isEmpty()) {
            return null;
        }
        boolean[] on = new boolean[days];
        for (int d = 0; d < days; d++) {
            on[d] = weekdays.contains(Math.floorMod(asOf + d + 3, 7) + 1);
        }
        return on;
    }

    /**
     * Slots of the simulated days (rule 65): every weekday from {@code first}, each so many weeks, less those skipped; the
     * as-of day's own only if nothing is recorded as published on it or for it.
     */
    private int[] slotDays(Inputs inputs) {
        boolean todayPublished = inputs.episodes().stream()
                .anyMatch(e -> e.published() == asOf || (e.slot() == asOf && e.published() != Inputs.NONE));
        return slotDates(inputs.publishing(), asOf, asOf + days)
                .filter(s -> s > asOf || !todayPublished)
                .map(s -> s - asOf)
                .toArray();
    }

    /** Slots of the as-of month before the as-of day beyond the number of its publications before that day (rule 81). */
    private int slotsLeftEmpty(Inputs inputs) {
        int firstOfMonth = asOf + 1 - LocalDate.ofEpochDay(asOf).getDayOfMonth();
        long slotsGone = slotDates(inputs.publishing(), firstOfMonth, asOf).count();
        long published = inputs.episodes().stream()
                .filter(e -> e.published() >= firstOfMonth && e.published() < asOf)
                .count();
        return (int) Math.max(0, slotsGone - published);
    }

    /** Slot dates from a day to before another. */
    private static IntStream slotDates(Inputs.Publishing publishing, int from, int to) {
        if (publishing.first() == Inputs.NONE) {
            return IntStream.empty();
        }
        int firstSlot = publishing.first();
        while (Math.floorMod(firstSlot + 3, 7) + 1 != publishing.weekday()) {
            firstSlot++;
        }
        int step = 7 * Math.max(1, publishing.everyWeeks());
        int next = firstSlot >= from ? firstSlot : firstSlot + ((from - firstSlot + step - 1) / step) * step;
        return IntStream.iterate(next, s -> s < to, s -> s + step)
                .filter(s -> !publishing.skip().contains(s));
    }

    /**
     * First day number on or after each day on which a season is open (rule 5), {@link #days} or more if none; a season that
     * ends before it begins runs across new year; 29 February reads as 1 March (from) and 28 February (to) in common years.
     *
     * @param from month * 100 + day, 0 for no bound
     * @param to month * 100 + day, 0 for no bound
     */
    int[] nextOpen(int from, int to) {
        int[] next = new int[days + 1];
        next[days] = days;
        LocalDate first = LocalDate.ofEpochDay(asOf);
        for (int d = days - 1; d >= 0; d--) {
            next[d] = open(first.plusDays(d), from, to) ? d : next[d + 1];
        }
        return next;
    }

    private static boolean open(LocalDate date, int from, int to) {
        int start = from == 0 ? 101 : from;
        int end = to == 0 ? 1231 : to;
        boolean acrossNewYear = start > end;
        if (!date.isLeapYear()) {
            start = start == 229 ? 301 : start;
            end = end == 229 ? 228 : end;
        }
        int day = date.getMonthValue() * 100 + date.getDayOfMonth();
        return acrossNewYear ? day >= start || day <= end : day >= start && day <= end;
    }
}
