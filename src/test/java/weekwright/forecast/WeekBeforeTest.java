package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.forecast.SmallProject.CLOCK;
import static weekwright.forecast.SmallProject.TODAY;

import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.HoursEntryStore;
import weekwright.engine.Inputs;

@Timeout(120)
class WeekBeforeTest {
    @TempDir
    Path folder;

    @Test
    void it_knows_the_records_of_that_evening_and_is_what_today_is_compared_with() throws Exception {
        try (SmallProject project = SmallProject.withOneTask(folder);
                Forecasts forecasts = new Forecasts(project.db(), CLOCK, 2, 20, 60)) {
            project.add(HoursEntryStore.TABLE, "id=h.1", "date=2026-11-18", "crew=ilse", "task=pit.1", "hours=3");
            project.add(HoursEntryStore.TABLE, "id=h.2", "date=2026-11-19", "crew=ilse", "task=pit.1", "hours=5");
            WeekBefore.keep(project.db(), TODAY, 20);
            SavedForecast kept = project.db()
                    .read(read -> SavedForecastStore.newest(read, TODAY))
                    .orElseThrow();
            assertThat(kept.day()).isEqualTo(TODAY.minusDays(7));
            assertThat(kept.madeAt()).isEqualTo(Instant.parse("2026-11-18T17:00:00Z"));
            assertThat(kept.trials()).isEqualTo(20);
            assertThat(kept.byHand()).isFalse();
            assertThat(kept.unpackedInputs().tasks().get(0).log().stream()
                            .mapToInt(Inputs.Worked::minutes)
                            .sum())
                    .isEqualTo(3 * 60);
            forecasts.current(TODAY);
            forecasts.await();
            assertThat(forecasts.moved().orElseThrow().since()).isEqualTo(TODAY.minusDays(7));
        }
    }
}
