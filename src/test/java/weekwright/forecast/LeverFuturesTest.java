package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Words;
import weekwright.engine.explain.Levers;
import weekwright.testkit.ServerFixture;

class LeverFuturesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final int FIRST = 60;
    private static final int WHOLE = 300;
    private static final ServerFixture SERVER = ServerFixture.sample();
    private static final Levers MORE_HOURS = new Levers(
            Map.of("ilse", 10 * 60),
            Levers.Helper.NOBODY,
            0,
            0,
            Set.of(),
            Map.of(),
            0,
            Levers.NONE.grant(),
            100,
            false,
            0);
    private static final Levers DEARER = new Levers(
            Map.of(), Levers.Helper.NOBODY, 0, 30, Set.of(), Map.of(), 0, Levers.NONE.grant(), 100, false, 0);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static LeverFutures.Look look(LeverFutures futures, Levers levers) {
        return futures.look(SERVER.db(), TODAY, Optional.empty(), levers);
    }

    @Test
    void the_first_answer_is_drawn_at_once_and_the_whole_one_after_it() throws InterruptedException {
        LeverFutures futures = new LeverFutures(FIRST, WHOLE, 2);
        LeverFutures.Look first = look(futures, DEARER);
        assertThat(first.answer().futures()).isEqualTo(FIRST);
        assertThat(first.settled()).isFalse();
        futures.await();
        LeverFutures.Look whole = look(futures, DEARER);
        assertThat(whole.answer().futures()).isEqualTo(WHOLE);
        assertThat(whole.settled()).isTrue();
        assertThat(whole.answer().reordered()).isFalse();
        assertThat(whole.answer().stages())
                .isNotEmpty()
                .allSatisfy(stage -> assertThat(stage.reordered()).isEmpty());
    }

    @Test
    void what_stands_is_what_a_forecast_with_as_many_futures_says() throws InterruptedException {
        LeverFutures futures = new LeverFutures(FIRST, WHOLE, 2);
        look(futures, DEARER);
        futures.await();
        LeverAnswer answer = look(futures, DEARER).answer();
        Basis basis = SERVER.db().read(read -> InputsBuilder.build(read, TODAY));
        Forecast forecast =
                ForecastRun.run(basis, WHOLE, Forecasts.SEED, 1, done -> true).forecast();
        assertThat(answer.empty().now()).isEqualTo(forecast.slots().expectedEmpty12());
        assertThat(answer.runway().now()).isEqualTo(forecast.cash().runway());
        assertThat(answer.withoutPledges().now()).isEqualTo(forecast.cash().runwayWithoutPledges());
        for (LeverAnswer.Stage stage : answer.stages()) {
            Forecast.Stage same = forecast.stage(stage.id()).orElseThrow();
            assertThat(stage.landing().now()).isEqualTo(same.landing());
            assertThat(stage.covered().now()).isEqualTo(same.materials().covered());
        }
    }

    @Test
    void rule_52_where_a_lever_touches_the_crew_an_order_of_work_made_anew_is_told_too() throws InterruptedException {
        LeverFutures futures = new LeverFutures(FIRST, WHOLE, 2);
        assertThat(look(futures, MORE_HOURS).answer().reordered()).isFalse();
        futures.await();
        LeverAnswer answer = look(futures, MORE_HOURS).answer();
        assertThat(answer.reordered()).isTrue();
        assertThat(answer.stages())
                .allSatisfy(stage -> assertThat(stage.reordered()).isPresent());
        LeverAnswer.Stage first = answer.stages().get(0);
        assertThat(first.sooner()).isGreaterThan(first.later());
    }

    @Test
    void another_question_and_a_change_of_the_project_leave_no_old_answer() throws InterruptedException {
        LeverFutures futures = new LeverFutures(FIRST, WHOLE, 2);
        look(futures, DEARER);
        look(futures, MORE_HOURS);
        futures.await();
        assertThat(look(futures, MORE_HOURS).settled()).isTrue();
        look(futures, DEARER);
        futures.await();
        assertThat(look(futures, DEARER).settled()).isTrue();
        long before = SERVER.db().version();
        SERVER.db().write("ilse", write -> {
            KeptLeversStore.TABLE.insert(write, new KeptLevers("dearer", Words.of("prices=30")));
            return null;
        });
        assertThat(SERVER.db().version()).isGreaterThan(before);
        assertThat(look(futures, DEARER).settled()).isFalse();
        futures.await();
    }
}
