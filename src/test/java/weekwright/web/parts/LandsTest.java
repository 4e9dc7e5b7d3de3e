package weekwright.web.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;

class LandsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Optional<Forecast> FORECAST = Optional.of(new Forecast(
            TODAY,
            1,
            1,
            "1",
            LocalDate.of(2029, 11, 25),
            null,
            List.of(),
            List.of(),
            List.of(),
            null,
            List.of(),
            List.of(),
            0,
            List.of(),
            null));
    private static final Forecast.Days LATER =
            new Forecast.Days(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 1);

    private static String brief(Optional<LocalDate> done, Optional<Forecast> forecast, Forecast.Days days) {
        return Lands.brief(done, forecast, Optional.of(days), new Formats("EUR", TODAY))
                .replace('\u00a0', ' ');
    }

    @Test
    void rule_7_what_lands_past_the_horizon_says_after_which_day() {
        assertThat(brief(Optional.empty(), FORECAST, LATER)).isEqualTo("after 25 Nov 2029");
    }

    @Test
    void what_is_done_has_nothing_to_do_or_has_no_forecast_says_so() {
        assertThat(brief(Optional.of(LocalDate.of(2026, 9, 19)), FORECAST, LATER))
                .isEqualTo("done 19 Sep");
        assertThat(brief(Optional.empty(), FORECAST, Forecast.Days.NONE)).isEqualTo("nothing to do");
        assertThat(brief(Optional.empty(), Optional.empty(), LATER)).isEqualTo("no forecast yet");
    }
}
