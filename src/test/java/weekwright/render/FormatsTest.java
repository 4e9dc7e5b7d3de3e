package weekwright.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormatsTest {
    /** A Wednesday. */
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private final Formats euro = new Formats("EUR", TODAY);

    /** No-break spaces shown as underscores, so that a test says where they stand. */
    private static String seen(String text) {
        return text.replace(' ', '~').replace('\u00a0', '_').replace('~', ' ');
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, today",
        "2026-11-26, tomorrow",
        "2026-11-24, yesterday",
        "2026-11-27, in_2_days",
        "2026-11-23, 2_days_ago",
        "2026-12-08, in_13_days",
        "2026-12-09, in_2_weeks",
        "2026-12-12, in_2_weeks",
        "2026-12-13, in_3_weeks",
        "2026-11-12, 13_days_ago",
        "2026-11-11, 2_weeks_ago",
        "2026-11-04, 3_weeks_ago",
        "2027-01-23, in_8_weeks",
        "2027-01-24, ''",
        "2026-09-27, 8_weeks_ago",
        "2026-09-26, ''",
        "2036-11-25, ''"
    })
    void how_far_off_a_day_is_stands_beside_it_as_long_as_that_helps(LocalDate day, String text) {
        assertThat(seen(euro.away(day))).isEqualTo(text);
        assertThat(seen(euro.comingOrGone(day))).isEqualTo(text.isEmpty() ? "" : ", " + text);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "15, ¼",
        "30, ½",
        "45, ¾",
        "60, 1",
        "195, 3¼",
        "210, 3½",
        "225, 3¾",
        "200, 3:20",
        "5, 0:05",
        "61, 1:01",
        "74040, '1,234'",
        "-90, −1½"
    })
    void rule_101_hours_stand_as_quarters_where_exact_else_as_hours_and_minutes(long minutes, String text) {
        assertThat(Formats.hours(minutes)).isEqualTo(text);
    }

    @Test
    void hours_carry_their_unit_across_no_line_end() {
        assertThat(seen(Formats.hoursShort(390))).isEqualTo("6½_h");
        assertThat(seen(Formats.hoursLong(390))).isEqualTo("6½_hours");
        assertThat(seen(Formats.hoursLong(60))).isEqualTo("1_hour");
        assertThat(seen(Formats.hoursLong(45))).isEqualTo("¾_hour");
        assertThat(seen(Formats.hoursLong(0))).isEqualTo("0_hours");
        assertThat(seen(Formats.hoursLong(20))).isEqualTo("0:20_hours");
    }

    @Test
    void forecast_hours_are_whole_from_ten_up_and_quarters_below() {
        assertThat(Formats.hoursForecast(47.3 * 60)).isEqualTo("47");
        assertThat(Formats.hoursForecast(3.4 * 60)).isEqualTo("3½");
    }

    @Test
    void booked_money_is_exact_and_shows_the_smaller_unit_only_where_there_is_some() {
        assertThat(euro.money(518_000)).isEqualTo("€5,180");
        assertThat(euro.money(518_050)).isEqualTo("€5,180.50");
        assertThat(euro.money(-31_000)).isEqualTo("−€310");
        assertThat(euro.money(0)).isEqualTo("€0");
        assertThat(euro.moneyExact(518_000)).isEqualTo("€5,180.00");
        assertThat(euro.moneySigned(4_000)).isEqualTo("+€40");
        assertThat(euro.moneySigned(-4_000)).isEqualTo("−€40");
        assertThat(euro.moneySigned(0)).isEqualTo("€0");
    }

    /** Digits by ISO 4217: JPY 0, KWD 3, CHF and USD 2. */
    @Test
    void every_currency_has_its_own_digits_and_its_mark_or_its_code() {
        assertThat(seen(new Formats("JPY", TODAY).money(5_180))).isEqualTo("¥5,180");
        assertThat(seen(new Formats("USD", TODAY).money(1_250))).isEqualTo("$12.50");
        assertThat(seen(new Formats("GBP", TODAY).money(1_250))).isEqualTo("£12.50");
        assertThat(seen(new Formats("CHF", TODAY).money(-1_250))).isEqualTo("−CHF_12.50");
        assertThat(seen(new Formats("KWD", TODAY).money(1_250))).isEqualTo("KWD_1.250");
        assertThat(seen(new Formats("KWD", TODAY).moneyExact(1_000))).isEqualTo("KWD_1.000");
        assertThatThrownBy(() -> new Formats("XQZ", TODAY)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void forecast_money_is_rounded_to_ten_of_the_larger_unit() {
        assertThat(euro.moneyForecast(87_412)).isEqualTo("€870");
        assertThat(euro.moneyForecast(87_500)).isEqualTo("€880");
        assertThat(euro.moneyForecast(-87_412)).isEqualTo("−€870");
        assertThat(euro.moneyForecast(499)).isEqualTo("€0");
        assertThat(new Formats("JPY", TODAY).moneyForecast(5_184)).isEqualTo("¥5,180");
    }

    @Test
    void a_date_has_its_weekday_within_ten_days_and_its_year_when_not_this_year() {
        assertThat(seen(euro.date(LocalDate.of(2026, 11, 27)))).isEqualTo("Friday_27_November");
        assertThat(seen(euro.date(LocalDate.of(2026, 12, 5)))).isEqualTo("Saturday_5_December");
        assertThat(seen(euro.date(LocalDate.of(2026, 12, 6)))).isEqualTo("6_December");
        assertThat(seen(euro.date(LocalDate.of(2026, 11, 15)))).isEqualTo("Sunday_15_November");
        assertThat(seen(euro.date(LocalDate.of(2026, 11, 14)))).isEqualTo("14_November");
        assertThat(seen(euro.date(LocalDate.of(2027, 3, 2)))).isEqualTo("2_March_2027");
        assertThat(seen(euro.dateShort(LocalDate.of(2026, 11, 27)))).isEqualTo("Fri_27_Nov");
        assertThat(seen(euro.dateShort(LocalDate.of(2026, 12, 9)))).isEqualTo("9_Dec");
        assertThat(seen(euro.dateShort(LocalDate.of(2027, 3, 2)))).isEqualTo("2_Mar_2027");
        assertThat(seen(euro.dateLong(LocalDate.of(2026, 11, 27)))).isEqualTo("27_November");
        assertThat(seen(euro.dateBrief(LocalDate.of(2026, 11, 27)))).isEqualTo("27_Nov");
        assertThat(seen(Formats.dayMonth(LocalDate.of(2027, 3, 2)))).isEqualTo("2_Mar");
        assertThat(seen(Formats.moment(LocalDateTime.of(2026, 11, 25, 7, 40)))).isEqualTo("25_Nov_2026,_07:40");
    }

    @Test
    void rule_115_a_range_of_days_is_between_two_days_with_its_even_chance() {
        assertThat(seen(new Formats("EUR", LocalDate.of(2027, 1, 10))
                        .landingRange(LocalDate.of(2027, 3, 12), LocalDate.of(2027, 4, 2), LocalDate.of(2027, 4, 30))))
                .isEqualTo("between 12_March and 30_April, even chances by 2_April");
    }

    @Test
    void a_range_says_once_what_both_ends_share() {
        LocalDate third = LocalDate.of(2026, 12, 3);
        assertThat(seen(euro.between(third, LocalDate.of(2026, 12, 19)))).isEqualTo("between 3 and 19_December");
        assertThat(seen(euro.span(third, LocalDate.of(2026, 12, 19)))).isEqualTo("3 to 19_December");
        assertThat(seen(euro.span(LocalDate.of(2027, 2, 11), LocalDate.of(2027, 3, 30))))
                .isEqualTo("11_February to 30_March_2027");
        assertThat(seen(euro.span(third, LocalDate.of(2027, 1, 8)))).isEqualTo("3_December to 8_January_2027");
        assertThat(seen(euro.span(third, third))).isEqualTo("3_December");
        assertThat(seen(euro.between(third, third))).isEqualTo("on 3_December");
        assertThat(seen(euro.landingRange(third, third, third))).isEqualTo("on 3_December");
        assertThat(seen(euro.landingRange(
                        LocalDate.of(2027, 2, 11), LocalDate.of(2027, 3, 2), LocalDate.of(2027, 3, 30))))
                .isEqualTo("between 11_February and 30_March_2027, even chances by 2_March");
        assertThat(seen(euro.landingRange(
                        LocalDate.of(2027, 11, 11), LocalDate.of(2027, 12, 2), LocalDate.of(2028, 1, 30))))
                .isEqualTo("between 11_November_2027 and 30_January_2028, even chances by 2_December_2027");
    }

    @Test
    void rule_121_a_date_is_never_withheld_but_told_as_month_or_season_when_far() {
        assertThat(seen(euro.far(LocalDate.of(2026, 12, 9)))).isEqualTo("9_December");
        assertThat(seen(euro.far(LocalDate.of(2027, 8, 25)))).isEqualTo("25_August_2027");
        assertThat(seen(euro.far(LocalDate.of(2027, 8, 26)))).isEqualTo("August_2027");
        assertThat(seen(euro.far(LocalDate.of(2028, 11, 25)))).isEqualTo("November_2028");
        assertThat(seen(euro.far(LocalDate.of(2029, 4, 14)))).isEqualTo("spring_2029");
        assertThat(seen(euro.far(LocalDate.of(2029, 11, 30)))).isEqualTo("autumn_2029");
        assertThat(seen(euro.far(LocalDate.of(2029, 12, 1)))).isEqualTo("winter_2030");
    }

    @Test
    void the_public_reads_months_from_eight_weeks_on() {
        assertThat(seen(euro.dateOrMonth(LocalDate.of(2027, 1, 20)))).isEqualTo("20_January_2027");
        assertThat(seen(euro.dateOrMonth(LocalDate.of(2027, 1, 21)))).isEqualTo("January_2027");
    }

    @Test
    void days_moved_have_a_sign() {
        assertThat(seen(Formats.daysMoved(4))).isEqualTo("+4_days");
        assertThat(seen(Formats.daysMoved(-1))).isEqualTo("−1_day");
        assertThat(Formats.daysMoved(0)).isEqualTo("no change");
    }

    @Test
    void names_and_numbers_are_said_as_in_a_sentence() {
        assertThat(Formats.list(List.of())).isEmpty();
        assertThat(Formats.list(List.of("Ilse"))).isEqualTo("Ilse");
        assertThat(Formats.list(List.of("Ilse", "Tomas"))).isEqualTo("Ilse and Tomas");
        assertThat(Formats.list(List.of("Ilse", "Tomas", "Wren"))).isEqualTo("Ilse, Tomas and Wren");
        assertThat(seen(Formats.count(1, "day"))).isEqualTo("1_day");
        assertThat(seen(Formats.count(1_200, "person", "people"))).isEqualTo("1,200_people");
        assertThat(seen(Formats.counted(4, "week", "weeks"))).isEqualTo("four_weeks");
        assertThat(seen(Formats.counted(0, "shot", "shots"))).isEqualTo("no_shots");
        assertThat(seen(Formats.counted(13, "week", "weeks"))).isEqualTo("13_weeks");
        assertThat(Formats.sentence("four weeks")).isEqualTo("Four weeks");
    }

    @Test
    void words_agree_with_none_one_two_and_with_hours_of_a_part() {
        assertThat(Stream.of(0, 1, 2).map(n -> seen(Formats.count(n, "shot"))))
                .containsExactly("0_shots", "1_shot", "2_shots");
        assertThat(Stream.of(0, 1, 2).map(n -> seen(Formats.counted(n, "person is", "people are"))))
                .containsExactly("no_people are", "one_person is", "two_people are");
        assertThat(Stream.of(0, 15, 45, 60, 61, 75, 120)
                        .map(minutes -> seen(Formats.hoursCounted(minutes, "hour is", "hours are"))))
                .containsExactly(
                        "0_hours are",
                        "¼_hour is",
                        "¾_hour is",
                        "1_hour is",
                        "1:01_hours are",
                        "1¼_hours are",
                        "2_hours are");
    }

    @Test
    void the_price_of_one_may_have_more_places_than_the_currency() {
        Formats euro = new Formats("EUR", LocalDate.of(2026, 11, 25));
        assertThat(euro.price(new BigDecimal("1520"))).isEqualTo("€1,520");
        assertThat(euro.price(new BigDecimal("12.5"))).isEqualTo("€12.50");
        assertThat(euro.price(new BigDecimal("0.1875"))).isEqualTo("€0.1875");
    }

    @Test
    void a_day_of_every_year_has_no_year() {
        assertThat(seen(Formats.dayMonthLong(MonthDay.of(2, 29)))).isEqualTo("29_February");
    }
}
