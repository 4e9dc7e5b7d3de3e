package weekwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class SampleClockTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static Clock at(String instant) {
        return Clock.fixed(Instant.parse(instant), BERLIN);
    }

    @Test
    void the_day_of_starting_counts_as_25_november_2026_at_the_same_time_of_day() {
        for (String started : new String[] {"2027-06-30T22:30:00Z", "2027-06-30T21:59:00Z", "2024-02-29T11:00:00Z"}) {
            Clock clock = SampleClock.startingNow(at(started));
            LocalDateTime real = LocalDateTime.ofInstant(Instant.parse(started), BERLIN);
            assertThat(LocalDateTime.now(clock.withZone(BERLIN)))
                    .isEqualTo(LocalDate.of(2026, 11, 25).atTime(real.toLocalTime()));
        }
    }

    @Test
    void the_days_after_follow() {
        Clock real = at("2027-06-30T10:00:00Z");
        Clock clock = SampleClock.startingNow(real);
        assertThat(Clock.offset(clock, Duration.ofDays(2)).instant()).isEqualTo("2026-11-27T11:00:00Z");
    }

    @Test
    void a_machine_in_another_zone_starts_on_the_same_day_of_the_sample() {
        Clock late = Clock.fixed(Instant.parse("2026-11-25T23:24:00Z"), ZoneId.of("UTC"));
        Clock clock = SampleClock.startingNow(late);
        assertThat(LocalDate.now(clock.withZone(SampleClock.ZONE))).isEqualTo(SampleClock.DAY);
    }
}
