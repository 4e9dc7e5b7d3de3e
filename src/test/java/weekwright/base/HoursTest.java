package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoursTest {
    private static final Reading FILE = Reading.file(2);
    private static final Reading FORM = Reading.form(2);

    @Test
    void rule_101_every_whole_minute_of_a_day_comes_back_from_its_text() throws Refused {
        for (int minutes = 0; minutes <= 24 * 60; minutes++) {
            Hours hours = new Hours(minutes);
            assertThat(Hours.parse(hours.text(), FILE)).isEqualTo(hours);
        }
    }

    @Test
    void rule_101_a_third_of_an_hour_is_twenty_minutes_whether_written_33_or_34() throws Refused {
        assertThat(Hours.parse("0.34", FILE)).isEqualTo(new Hours(20));
        assertThat(Hours.parse("0.33", FILE)).isEqualTo(new Hours(20));
        assertThat(new Hours(20).text()).isEqualTo("0.33");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"3.5|210", "3,5|210", "3:30|210", "3½|210", "3 ½|210", "3¼|195", "¾|45", " 5 |300", "+5|300"})
    void rule_101_a_person_may_type_hours_in_these_forms(String typed, int minutes) throws Refused {
        assertThat(Hours.parse(typed, FORM)).isEqualTo(new Hours(minutes));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3x|is not hours; write 3.5 or 3:30",
                "3h30|is not hours; write 3.5 or 3:30",
                "3:75|has more than 59 minutes after the colon; write 3.5 or 3:30",
                "-1|is less than nothing; write hours from 0 up",
                "NaN|is not hours; write 3.5 or 3:30",
                "1e5|is not hours; write 3.5 or 3:30",
                "0x1p3|is not hours; write 3.5 or 3:30",
                "١٢|is not hours; write 3.5 or 3:30",
                "1.234|can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point",
                "1,234|can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point",
                "99999999|is too large; write at most 1000000 hours",
            })
    void what_is_no_hours_is_refused_with_the_rule_and_the_remedy(String typed, String message) {
        assertThatThrownBy(() -> Hours.parse(typed, FORM))
                .isInstanceOf(Refused.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3,5"})
    void a_file_has_the_decimal_point_only(String text) {
        assertThatThrownBy(() -> Hours.parse(text, FILE)).hasMessage("has a decimal comma; write 3.5");
    }

    @Test
    void a_clock_form_is_for_people_and_not_for_files() {
        assertThatThrownBy(() -> Hours.parse("3:30", FILE)).hasMessage("is not hours; write 3.5");
    }
}
