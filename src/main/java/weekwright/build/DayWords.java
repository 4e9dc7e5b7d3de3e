package weekwright.build;

import java.time.LocalTime;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Ref;

/**
 * What the crew writes on the day sheet of a task.
 *
 * @param begins by the clock
 * @param stopWord at which everybody stops; empty for "Stop"
 * @param fallback the day to fall back on, in words
 * @param permits and notices, and who gave them
 * @param running what else stands in the running order, a line each, a clock time first where there is one
 * @param places who stands where, a line each: a name, a colon, the place
 * @param cameras which stand where and who minds each, a line each
 */
public record DayWords(
        @Ref("tasks") Id task,
        Optional<LocalTime> begins,
        @Bounds(max = 40) String stopWord,
        @Bounds(max = 160) String fallback,
        @Bounds(max = 300) String permits,
        @Lines @Bounds(max = 3000) String running,
        @Lines @Bounds(max = 2000) String places,
        @Lines @Bounds(max = 1000) String cameras) {}
