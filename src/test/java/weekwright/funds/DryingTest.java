package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When timber in stick is dry. */
class DryingTest {
    private static Drying.Days days(String species, String inches, String stacked) {
        return Drying.of(Drying.find(species).orElseThrow(), new BigDecimal(inches), LocalDate.parse(stacked), false);
    }

    /** Days of one inch to 20 %: Air Drying of Lumber, FPL-GTR-117 (1999), its table, from memory. */
    @ParameterizedTest
    @CsvSource({
        "red-oak,70,200",
        "white-oak,80,250",
        "ash,60,200",
        "walnut,70,200",
        "tulip,40,150",
        "douglas-fir,20,200",
        "white-pine,60,200"
    })
    void an_inch_stacked_in_spring_takes_the_days_of_the_table(String species, int shortest, int longest) {
        Drying.Days days = days(species, "1", "2026-04-01");
        assertThat(days.low()).isEqualTo(shortest);
        assertThat(days.high()).isEqualTo(longest);
        assertThat(days.likely()).isEqualTo((shortest + longest) / 2);
    }

    /**
     * The power of 1.52 makes twice the thickness 2.87 times as long (red oak, as quoted of Simpson and Hart, Forest Products
     * Journal 51, 2001); the rest recomputed: 4^1.52 = 8.225, 6^1.52 = 15.2332, 0.5^1.52 = 0.3487.
     */
    @ParameterizedTest
    @CsvSource({"1,1.000", "2,2.867", "4,8.224", "6,15.233", "0.5,0.348"})
    void thicker_stock_takes_longer_by_the_power_of_1_52(String inches, String times) {
        assertThat(Drying.times(new BigDecimal(inches))).isEqualTo(new BigDecimal(times));
    }

    /**
     * Stock piled late does not get to 20 % before the next spring: Forest Products Laboratory, Technical Note 233 (1960). By hand:
     * of 80 days 30 lie in September, 50 from 1 April to 20 May; 250 days end in May, so at worst the end of June.
     */
    @Test
    void a_september_stack_is_not_dry_before_the_next_spring() {
        LocalDate stacked = LocalDate.of(2026, 9, 1);
        Drying.Days days = days("white-oak", "1", "2026-09-01");
        assertThat(stacked.plusDays(days.low())).isEqualTo(LocalDate.of(2027, 5, 21));
        assertThat(stacked.plusDays(days.high())).isEqualTo(LocalDate.of(2027, 6, 30));
        assertThat(LocalDate.of(2026, 5, 1)
                        .plusDays(days("white-oak", "1", "2026-05-01").low()))
                .isEqualTo(LocalDate.of(2026, 7, 20));
        assertThat(LocalDate.of(2026, 12, 1)
                        .plusDays(days("douglas-fir", "1", "2026-12-01").low()))
                .isEqualTo(LocalDate.of(2027, 4, 21));
    }

    @Test
    void in_the_south_the_drying_months_begin_in_october() {
        LocalDate stacked = LocalDate.of(2026, 4, 1);
        Drying.Days days = Drying.of(Drying.find("ash").orElseThrow(), BigDecimal.ONE, stacked, true);
        assertThat(stacked.plusDays(days.low())).isEqualTo(LocalDate.of(2026, 11, 30));
        assertThat(stacked.plusDays(days.high())).isEqualTo(LocalDate.of(2026, 12, 31));
    }

    /** Whatever the day and the thickness: at best is never after likely, likely never after at worst, and no winter day dries. */
    @Test
    void the_three_days_rise_and_the_first_lies_in_drying_months() {
        for (Drying.Species species : Drying.TABLE) {
            for (String inches : new String[] {"0.25", "1", "1.97", "3", "6"}) {
                for (LocalDate day = LocalDate.of(2026, 1, 1); day.getYear() < 2027; day = day.plusDays(7)) {
                    Drying.Days days = Drying.of(species, new BigDecimal(inches), day, false);
                    assertThat(days.low()).isBetween(1, days.likely());
                    assertThat(days.likely()).isLessThanOrEqualTo(days.high());
                    assertThat(days.high()).isLessThanOrEqualTo(7300);
                    int last = day.plusDays(days.low() - 1L).getMonthValue();
                    assertThat(last).isBetween(4, 9);
                }
            }
        }
    }

    @Test
    void a_species_is_recognised_by_its_words_alone() {
        assertThat(Drying.meant("oak").map(Drying.Species::key)).isEqualTo(Optional.of("white-oak"));
        assertThat(Drying.meant("Northern red oak").map(Drying.Species::key)).isEqualTo(Optional.of("red-oak"));
        assertThat(Drying.meant("Douglas-fir").map(Drying.Species::key)).isEqualTo(Optional.of("douglas-fir"));
        assertThat(Drying.meant("washed soak")).isEmpty();
        assertThat(Drying.meant("larch")).isEmpty();
    }
}
