package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.db.Db;
import weekwright.db.Read;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.testkit.ServerFixture;

class SlotFuturesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final LocalDate SLOT = LocalDate.of(2026, 12, 4);
    private static final int FUTURES = 200;
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static SlotFutures.Compared compare(Function<Read, List<SlotPlan>> changes) {
        return new SlotFutures(FUTURES).compare(SERVER.db(), TODAY, Optional.empty(), changes);
    }

    private static Episode boards(Db db) {
        return db.read(read -> EpisodeStore.TABLE.values(read).stream()
                .filter(one -> one.id().value().equals("ep.12"))
                .findFirst()
                .orElseThrow());
    }

    private static Episode on(LocalDate slot) {
        return EpisodeStore.TABLE.shape().with(boards(SERVER.db()), "slot", Optional.of(slot));
    }

    @Test
    void a_plan_that_changes_nothing_has_the_same_futures() {
        SlotFutures.Compared pair = compare(read -> List.of(SlotPlan.of(read)));
        assertThat(pair.futures()).isEqualTo(FUTURES);
        assertThat(pair.then()).containsExactly(pair.now());
    }

    @Test
    void the_standing_plan_is_what_a_forecast_with_as_many_futures_says() {
        Basis basis = SERVER.db().read(read -> InputsBuilder.build(read, TODAY));
        Forecast forecast =
                ForecastRun.run(basis, FUTURES, Forecasts.SEED, 1, done -> true).forecast();
        SlotOutlook now = compare(read -> List.of()).now();
        assertThat(now.emptyOf12()).isEqualTo(forecast.slots().expectedEmpty12());
        assertThat(now.ready("ep.12"))
                .isEqualTo(forecast.episode("ep.12").orElseThrow().onTime());
        assertThat(now.ready("ep.s1")).isEmpty();
        assertThat(now.empty(SLOT)).isEqualTo(forecast.emptyChance(SLOT));
        double sum = forecast.everySlot().stream()
                .filter(one -> one.date().isAfter(TODAY))
                .limit(12)
                .mapToDouble(Forecast.SlotChance::empty)
                .sum();
        assertThat(sum).isCloseTo(now.emptyOf12(), Offset.offset(1e-9));
    }

    @Test
    void with_the_same_luck_a_later_slot_is_never_less_likely_to_be_met() {
        SlotFutures.Compared pair = compare(read -> List.of(
                SlotPlan.of(read).with(on(LocalDate.of(2027, 1, 8))),
                SlotPlan.of(read).with(on(LocalDate.of(2027, 3, 5)))));
        double now = pair.now().ready("ep.12").orElseThrow();
        double january = pair.then().get(0).ready("ep.12").orElseThrow();
        double march = pair.then().get(1).ready("ep.12").orElseThrow();
        assertThat(now).isLessThan(january);
        assertThat(january).isLessThanOrEqualTo(march);
    }

    @Test
    void a_slot_left_out_is_no_slot_any_more() {
        SlotFutures.Compared pair = compare(
                read -> List.of(SlotPlan.of(read).with(on(SLOT.plusWeeks(1))).skipping(SLOT)));
        assertThat(pair.now().empty(SLOT)).isPresent();
        assertThat(pair.then().get(0).empty(SLOT)).isEmpty();
        assertThat(SERVER.db().read(SlotPlan::of).skipped()).isEmpty();
    }
}
