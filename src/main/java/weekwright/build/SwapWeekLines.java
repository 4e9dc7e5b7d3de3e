package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Two lines of the week change places: day, person and clock times. Both keep to the rules of {@link SaveWeekLine}. */
public final class SwapWeekLines {
    private static final String[] PLACE = {"date", "crew", "from", "to"};

    private SwapWeekLines() {}

    /**
     * @param shown the first line as it was shown
     * @param other the id of the line with which it changes places
     * @param today in the project's zone
     */
    public static void swap(Write write, Shown shown, Id other, LocalDate today) throws Rejected, Stale {
        Stored<WeekLine> one = WeekLineStore.TABLE
                .find(write, shown.row())
                .orElseThrow(() -> new IllegalArgumentException("no line " + shown.row()));
        Optional<Stored<WeekLine>> found = WeekLineStore.TABLE.find(write, other);
        Problems problems = new Problems();
        if (found.isEmpty()) {
            problems.fault("swap", other.value(), "is no line of a week", "choose one of the list");
        } else if (found.get().row() == one.row()) {
            problems.fault("swap", other.value(), "is this line itself", "choose another");
        }
        Faults.refuse(problems);
        Stored<WeekLine> two = found.orElseThrow();
        WeekLine first = moved(one.value(), two.value());
        WeekLine second = moved(two.value(), one.value());
        Stored<WeekLine> firstKept = WeekLineStore.TABLE.update(write, shown.row(), shown.version(), first);
        Stored<WeekLine> secondKept = WeekLineStore.TABLE.update(write, two.row(), two.version(), second);
        Faults.refuse(SaveWeekLine.check(write, Optional.of(Shown.of(firstKept)), first, today));
        Faults.refuse(SaveWeekLine.check(write, Optional.of(Shown.of(secondKept)), second, today));
    }

    private static WeekLine moved(WeekLine line, WeekLine to) {
        Shape<WeekLine> shape = WeekLineStore.TABLE.shape();
        WeekLine moved = line;
        for (String column : PLACE) {
            moved = shape.with(
                    moved,
                    column,
                    switch (column) {
                        case "date" -> to.date();
                        case "crew" -> to.crew();
                        case "from" -> to.from();
                        default -> to.to();
                    });
        }
        return moved;
    }
}
