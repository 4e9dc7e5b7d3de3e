package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.base.Money;
import weekwright.build.Settings;
import weekwright.render.Formats;
import weekwright.testkit.SmallProject;

/** What Funds says of the money that is there and of what is pledged. */
class FundsSentencesTest {
    private static final long RESERVE = 1_000_00;

    private final Settings settings = SmallProject.project("reserve", "1000");

    private String said(String currency, long minor, long people, List<FundsPage.Level> levels) {
        Formats formats = new Formats(currency, LocalDate.of(2026, 11, 25));
        return FundsPage.said(new Money(minor), settings, people, levels, formats)
                .replace(Formats.NBSP, " ");
    }

    private static FundsPage.Level level(String charged, long people, long together) {
        return new FundsPage.Level(
                "Peg", new Money(together / Math.max(1, people)), charged, people, new Money(together));
    }

    @Test
    void money_under_the_reserve_is_not_said_to_hold_it() {
        assertThat(said("EUR", RESERVE + 100_00, 0, List.of()))
                .isEqualTo("There is €1,100 in the bank, €1,000 of it reserve. Nobody pledges yet.");
        assertThat(said("EUR", RESERVE - 250_00, 0, List.of()))
                .isEqualTo("There is €750 in the bank, €250 under the reserve. Nobody pledges yet.");
    }

    @Test
    void pledges_are_told_by_the_month_and_by_the_episode_in_the_currency_of_the_project() {
        assertThat(said("GBP", RESERVE, 1, List.of(level("a month", 1, 5_00))))
                .endsWith(" 1 supporter pledges £5 a month before fees.");
        assertThat(said("GBP", RESERVE, 2, List.of(level("an episode", 2, 9_00))))
                .endsWith(" 2 supporters pledge £9 an episode before fees.");
        assertThat(said("CHF", RESERVE, 3, List.of(level("a month", 1, 5_00), level("an episode", 2, 9_00))))
                .endsWith(" 3 supporters pledge CHF 5 a month and CHF 9 an episode before fees.");
    }
}
