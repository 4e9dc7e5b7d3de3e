package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunTimeTest {
    private static final Reading FILE = Reading.file(2);
    private static final Reading FORM = Reading.form(2);

    @Test
    void every_second_of_two_hours_comes_back_from_both_its_texts() throws Refused {
        for (int seconds = 0; seconds <= 7200; seconds++) {
            RunTime length = new RunTime(seconds);
            assertThat(RunTime.parse(length.text(), FILE)).isEqualTo(length);
            assertThat(RunTime.parse(length.clock(), FORM)).isEqualTo(length);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"4|240|4|4", "4.5|270|4.5|4:30", "4,5|270|4.5|4:30", "4:05|245|4.08|4:05", "0:20|20|0.33|0:20"})
    void a_person_may_type_minutes_or_minutes_and_seconds(String typed, int seconds, String text, String clock)
            throws Refused {
        RunTime length = RunTime.parse(typed, FORM);
        assertThat(length).isEqualTo(new RunTime(seconds));
        assertThat(length.text()).isEqualTo(text);
        assertThat(length.clock()).isEqualTo(clock);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "soon|is not a length in minutes; write 4.5 or 4:30",
                "4:60|has more than 59 seconds after the colon; write 4.5 or 4:30",
                "1:02:03|is not a length in minutes; write 4.5 or 4:30",
                "-1|is less than nothing; write minutes from 0 up",
                "1000:01|is too long; write at most 1000 minutes",
                "1e5|is not a length in minutes; write 4.5 or 4:30",
            })
    void what_is_no_length_is_refused_with_the_rule_and_the_remedy(String typed, String message) {
        assertThatThrownBy(() -> RunTime.parse(typed, FORM))
                .isInstanceOf(Refused.class)
                .hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4:30|is not a length in minutes; write 4.5",
                "4.333|has more than two decimal places; write at most two",
            })
    void files_have_decimal_minutes_alone(String text, String message) {
        assertThatThrownBy(() -> RunTime.parse(text, FILE))
                .isInstanceOf(Refused.class)
                .hasMessage(message);
    }
}
