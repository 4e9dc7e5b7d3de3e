package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.testkit.OakMill;

class RegularItemTest {
    /** Counted on a calendar: months keep the day of the first, as far as the month has it. */
    @ParameterizedTest
    @CsvSource({
        "month, 2025-12-31, , 2026-11-25, 2026-11-30",
        "month, 2025-12-31, , 2027-02-01, 2027-02-28",
        "month, 2026-11-25, , 2026-11-25, 2026-12-25",
        "month, 2027-01-10, , 2026-11-25, 2027-01-10",
        "week, 2026-11-20, , 2026-11-25, 2026-11-27",
        "year, 2024-02-29, , 2026-11-25, 2027-02-28",
        "month, 2026-01-20, 2026-12-19, 2026-11-25, ",
        "episode, 2026-01-20, , 2026-11-25, "
    })
    void rule_87_the_next_time_is_the_first_day_after_today(
            String every, String from, String to, LocalDate today, LocalDate next) {
        RegularItem item = OakMill.row(
                RegularItem.class,
                "id",
                "r",
                "name",
                "Rent",
                "amount",
                "-5",
                "every",
                every,
                "from",
                from,
                "to",
                to == null ? "" : to);
        assertThat(item.nextAfter(today)).isEqualTo(Optional.ofNullable(next));
    }
}
