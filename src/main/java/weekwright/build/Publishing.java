package weekwright.build;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Quantity;
import weekwright.base.Words;

/**
 * Settings of the publishing calendar ([publishing] in project.toml). One row. Defaults: rule 99.
 *
 * @param weekday english name of a day, any case
 * @param editDays weekdays on which the editor edits; none means any
 * @param skip dates of slots without an episode
 */
public record Publishing(
        String weekday,
        Optional<LocalTime> time,
        Optional<LocalDate> first,
        @Bounds(min = 1, max = 52) Optional<Integer> everyWeeks,
        @Bounds(min = 1, max = 1000) Optional<Quantity> targetMinutes,
        @Bounds(min = 0, max = 365) Optional<Integer> earlyDays,
        @Bounds(min = 0, max = 365) Optional<Integer> editWindowDays,
        Words editDays,
        String shootUntil,
        @Bounds(min = 0, max = 52) Optional<Quantity> bankFloor,
        Optional<Hours> editLow,
        Optional<Hours> editLikely,
        Optional<Hours> editHigh,
        @Bounds(min = 0, max = 31) Optional<Integer> chargesAMonth,
        @Bounds(min = 0, max = 100) Optional<Quantity> emptyLeaving,
        Words skip) {}
