package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOffStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.StatedHours;
import weekwright.build.TaskStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * A line that the crew wrote for a day of the last seven and that is not done: neither ticked, nor its task done, nor hours
 * logged on it. It is offered for the next day on which its person is there.
 *
 * @param to that day
 */
record LeftOver(Stored<WeekLine> line, LocalDate to) {
    private static final int DAYS_BACK = 7;
    private static final int DAYS_AHEAD = 14;

    static List<LeftOver> of(Read read, LocalDate today) {
        List<HoursEntry> hours = HoursEntryStore.between(read, today.minusDays(DAYS_BACK), today).stream()
                .map(Stored::value)
                .toList();
        List<LeftOver> left = new ArrayList<>();
        for (Stored<WeekLine> stored : WeekLineStore.between(read, today.minusDays(DAYS_BACK), today.minusDays(1))) {
            WeekLine line = stored.value();
            boolean gone = line.done()
                    || line.kind().filter(kind -> kind == WeekLine.Kind.REST).isPresent()
                    || line.task()
                            .flatMap(id -> TaskStore.TABLE.find(read, id))
                            .filter(task -> !task.value().isOpen())
                            .isPresent()
                    || hours.stream().anyMatch(entry -> isOf(entry, line));
            if (!gone) {
                left.add(new LeftOver(stored, next(read, line, today)));
            }
        }
        return left;
    }

    private static boolean isOf(HoursEntry entry, WeekLine line) {
        boolean what = line.task().isPresent() || line.episode().isPresent();
        return what
                && entry.date().equals(line.date())
                && same(entry.task(), line.task())
                && same(entry.episode(), line.episode())
                && (line.crew().isEmpty() || same(Optional.of(entry.crew()), line.crew()));
    }

    private static boolean same(Optional<Id> one, Optional<Id> other) {
        return one.map(Id::folded).equals(other.map(Id::folded));
    }

    private static LocalDate next(Read read, WeekLine line, LocalDate today) {
        Optional<CrewMember> who =
                line.crew().flatMap(id -> CrewMemberStore.TABLE.find(read, id)).map(Stored::value);
        if (who.isEmpty()) {
            return today;
        }
        var seasons = CrewHoursStore.TABLE.values(read);
        var off = DaysOffStore.TABLE.values(read);
        return today.datesUntil(today.plusDays(DAYS_AHEAD))
                .filter(day -> StatedHours.on(day, who.get(), seasons, off).minutes() > 0)
                .findFirst()
                .orElse(today);
    }
}
