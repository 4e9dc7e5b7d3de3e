package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HeldWordsTest {
    @Test
    void a_month_is_named_as_the_engine_counts_it() {
        assertThat(HeldWords.of(new Forecast.HeldBy("weather", "2", 0.5), null)).isEqualTo("the weather in February");
        assertThat(HeldWords.of(new Forecast.HeldBy("weather", "", 0.5), null)).isEqualTo("the weather");
    }

    @Test
    void helpers_without_a_name_are_the_crew() {
        assertThat(HeldWords.of(new Forecast.HeldBy("person", "", 0.5), null)).isEqualTo("the crew’s hours");
    }
}
