package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.web.parts.RecordWords;

/** Past forecasts against what happened, worked by hand. Days are of March 2026, today is the 31st. */
class TrackRecordTest {
    private static LocalDate day(int day) {
        return LocalDate.of(2026, 2, 28).plusDays(day);
    }

    /** Drawn on five days; P10, P50 and P90 of five are the first, third and fifth. */
    private static TrackRecord.Stage stage(String id, Integer landed, int... drawn) {
        return new TrackRecord.Stage(
                id,
                id,
                IntStream.of(drawn).mapToDouble(d -> day(d).toEpochDay()).toArray(),
                day(drawn[0]),
                day(drawn[2]),
                day(drawn[4]),
                day(drawn[2]),
                day(drawn[2] - 4),
                day(drawn[2] - 8),
                Optional.ofNullable(landed).map(TrackRecordTest::day));
    }

    private static TrackRecord record(TrackRecord.Stage... stages) {
        return new TrackRecord(
                day(31), List.of(new TrackRecord.Friday(day(6), false, List.of(stages))), Optional.empty());
    }

    @Test
    void a_stage_still_open_after_its_range_is_later_and_one_before_its_end_is_open() {
        TrackRecord record = record(
                stage("early", 17, 18, 19, 20, 21, 24),
                stage("within", 22, 18, 19, 20, 21, 24),
                stage("late", 25, 18, 19, 20, 21, 24),
                stage("over", null, 18, 19, 20, 21, 24),
                stage("open", null, 18, 19, 20, 21, 40),
                stage("lucky", 20, 18, 19, 20, 21, 40));
        assertThat(record.all().stream().map(record::fell).toList())
                .containsExactly(
                        TrackRecord.Fell.EARLIER,
                        TrackRecord.Fell.WITHIN,
                        TrackRecord.Fell.LATER,
                        TrackRecord.Fell.LATER,
                        TrackRecord.Fell.OPEN,
                        TrackRecord.Fell.WITHIN);
        // which are counted does not depend on how the work went: the last two have the same range, which ends in April
        assertThat(record.decided().stream().map(TrackRecord.Stage::id).toList())
                .containsExactly("early", "within", "late", "over");
        assertThat(record.coverage()).isEqualTo(0.25);
    }

    @Test
    void losses_are_the_worked_ones() {
        // ranked score of 18, 19, 20, 21, 24 and 22: 2.4 - 1.12 = 1.28; of one date its distance
        TrackRecord record = record(stage("wheel", 22, 18, 19, 20, 21, 24));
        assertThat(record.crps().model()).isEqualTo(1.28, within(1e-9));
        assertThat(record.crps().plan()).isEqualTo(2, within(1e-9));
        assertThat(record.crps().velocity()).isEqualTo(6, within(1e-9));
        assertThat(record.crps().likely()).isEqualTo(10, within(1e-9));
        // at P10 18: 0.1 * 4; at P50 20: 0.5 * 2; at P90 24: 0.1 * 2; a third of 1.6
        assertThat(record.pinball().model()).isEqualTo(1.6 / 3, within(1e-9));
        // one date, 20: (0.1 + 0.5 + 0.9) * 2 / 3
        assertThat(record.pinball().plan()).isEqualTo(1, within(1e-9));
    }

    @Test
    void what_is_still_open_is_not_left_out_and_counts_with_what_is_known() {
        // 27 and four times 35, open on the 31st: from 27 to 31 a fifth was said to have landed: 4 * 0.04
        TrackRecord record = record(stage("wheel", null, 27, 35, 35, 35, 35));
        assertThat(record.crps().model()).isEqualTo(0.16, within(1e-9));
        assertThat(record.crps().plan()).isZero();
        assertThat(record.crps().velocity()).isZero();
        assertThat(record.crps().likely()).isEqualTo(4, within(1e-9));
    }

    @Test
    void ranges_that_missed_too_often_are_called_too_narrow() {
        // of ten right ranges five to ten hold, nineteen times in twenty: binomial 0.8, four or fewer 0.0064, five or
        // fewer 0.0328
        assertThat(words(10, 4))
                .isEqualTo(
                        "4 of 10 ranges that have run out held, 40 in a hundred; eight in ten should. The ranges have"
                                + " been too narrow: take them as less certain than they look.");
        assertThat(words(10, 5))
                .isEqualTo(
                        "5 of 10 ranges that have run out held, 50 in a hundred; eight in ten should. That is no sign"
                                + " that the ranges have been too narrow.");
        assertThat(words(30, 30))
                .isEqualTo("30 of 30 ranges that have run out held, 100 in a hundred; eight in ten should. The ranges"
                        + " have been wider than they need be.");
        assertThat(words(1, 0))
                .isEqualTo("0 of 1 range that has run out held, 0 in a hundred; eight in ten should. They are of too"
                        + " few stages (one) to say whether the ranges have been too narrow.");
        assertThat(RecordWords.verdict(new TrackRecord(day(31), List.of(), Optional.empty())))
                .isEqualTo("Nothing to look back on yet: a forecast of a past Friday needs work that had begun on it.");
    }

    private static String words(int all, int held) {
        List<TrackRecord.Stage> stages = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            stages.add(stage("s" + i, i < held ? 20 : 26, 18, 19, 20, 21, 24));
        }
        return RecordWords.verdict(record(stages.toArray(TrackRecord.Stage[]::new)));
    }
}
