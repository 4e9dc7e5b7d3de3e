package weekwright.worlds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Few worlds, so the bounds are wide; {@code KnownWorldsBench} measures. Fixed seeds: the same on any machine. */
class KnownWorldsTest {
    private static final int TRIALS = 300;

    private static Tally tally(Kind kind, int worlds) {
        Tally tally = new Tally();
        for (int w = 0; w < worlds; w++) {
            tally.add(new Lived(kind, 7, w, TRIALS));
        }
        return tally;
    }

    @Test
    void ranges_hold_four_landings_in_five_where_all_is_as_the_model_says() {
        Tally tally = tally(Kind.PLAIN, 10);
        // four standard deviations of a binomial of 0.8 on either side, upwards no more than all
        double four = 4 * Math.sqrt(0.16 / tally.stages());
        assertThat(tally.coverage()).as(tally.text()).isGreaterThan(0.8 - four);
        assertThat(tally.crps()).as(tally.text()).isLessThan(0.6 * tally.planOff());
        assertThat(tally.brier()).as(tally.text()).isLessThan(0.1);
    }

    @Test
    void what_is_learned_of_turnout_and_found_work_makes_ranges_better() {
        Tally learned = tally(Kind.REAL, 4);
        Tally blind = tally(Kind.REAL_UNLEARNED, 4);
        assertThat(learned.crps()).as(learned.text() + "\n" + blind.text()).isLessThan(blind.crps());
        assertThat(learned.coverage()).as(learned.text() + "\n" + blind.text()).isGreaterThan(blind.coverage());
    }
}
