package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.base.Money;

/** Joined and left of a month of which only the count is known; every figure worked by hand. */
class UsualRateTest {
    private static final YearMonth NOW = YearMonth.of(2026, 11);

    private static final PledgeLevel PLANK = new PledgeLevel(
            new Id("plank"),
            "Plank",
            new Money(5_00),
            PledgeLevel.Charged.MONTH,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    private static SupporterMonth month(String month, String level, int start, Integer left) {
        return new SupporterMonth(
                YearMonth.parse(month), new Id(level), start, Optional.empty(), Optional.ofNullable(left), false);
    }

    /** 2 + 3 left of 60 + 66: (1 + 5) / (20 + 126) = 6/146; of 73 that is 3.0, and 78 on the next first are 78 − 73 + 3 = 8 joined. */
    @Test
    void a_count_is_split_by_what_the_other_months_say() {
        UsualRate rate = UsualRate.of(
                List.of(
                        month("2026-08", "plank", 60, 2),
                        month("2026-09", "PLANK", 66, 3),
                        month("2026-09", "beam", 500, 400),
                        month("2026-10", "plank", 73, null),
                        month("2026-11", "plank", 78, 70)),
                PLANK,
                NOW);
        assertThat(rate).isEqualTo(new UsualRate(2, 5, 126));
        assertThat(rate.split(73, 78)).isEqualTo(new UsualRate.Split(8, 3));
    }

    /** Without any month it is the one in twenty of the forecast's own prior: 2 of 40. Of 50 and of 70 the halves 2.5 and 3.5 go to 2 and 4. */
    @Test
    void before_anything_is_known_one_in_twenty_leaves_half_to_even() {
        UsualRate rate = UsualRate.of(List.of(), PLANK, NOW);
        assertThat(rate).isEqualTo(new UsualRate(0, 0, 0));
        assertThat(rate.split(40, 40)).isEqualTo(new UsualRate.Split(2, 2));
        assertThat(rate.split(50, 50).left()).isEqualTo(2);
        assertThat(rate.split(70, 70).left()).isEqualTo(4);
        assertThat(rate.split(0, 9)).isEqualTo(new UsualRate.Split(9, 0));
    }

    /** 40 to 30: two usually leave, ten are missing. */
    @Test
    void where_more_are_missing_than_usually_leave_nobody_joined() {
        assertThat(new UsualRate(0, 0, 0).split(40, 30)).isEqualTo(new UsualRate.Split(0, 10));
    }

    /** Of 10 there on the 1st no more than 10 can have left of them: (1 + 10) / (20 + 10). */
    @Test
    void newcomers_who_left_again_do_not_count_among_those_of_the_first() {
        assertThat(UsualRate.of(List.of(month("2026-08", "plank", 10, 12)), PLANK, NOW))
                .isEqualTo(new UsualRate(1, 10, 10));
    }
}
