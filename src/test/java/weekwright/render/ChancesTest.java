package weekwright.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words of rule 115, at each bound and on both sides of it. */
class ChancesTest {
    @ParameterizedTest
    @CsvSource({
        "1, almost certain",
        "0.97, almost certain",
        "0.9699, nineteen in twenty",
        "0.925, nineteen in twenty",
        "0.9249, nine in ten",
        "0.9, nine in ten",
        "0.851, nine in ten",
        "0.849, four in five",
        "0.8, four in five",
        "0.776, four in five",
        "0.774, three in four",
        "0.75, three in four",
        "0.71, three in four",
        "0.70, two in three",
        "0.6667, two in three",
        "0.584, two in three",
        "0.583, even chances",
        "0.5, even chances",
        "0.417, even chances",
        "0.416, one in three",
        "0.3333, one in three",
        "0.292, one in three",
        "0.291, one in four",
        "0.25, one in four",
        "0.226, one in four",
        "0.224, one in five",
        "0.2, one in five",
        "0.151, one in five",
        "0.149, one in ten",
        "0.1, one in ten",
        "0.03, one in ten",
        "0.0299, almost no chance",
        "0, almost no chance"
    })
    void rule_115_a_chance_is_said_in_the_nearest_words(double chance, String words) {
        assertThat(Chances.words(chance)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"0.85, four in five", "0.775, three in four", "0.225, one in five", "0.15, one in ten"})
    void rule_115_halfway_between_two_words_the_smaller_chance_is_said(double chance, String words) {
        assertThat(Chances.words(chance)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"1, safe", "0.9, safe", "0.8999, close", "0.66667, close", "0.6666, at risk", "0, at risk"})
    void rule_115_safe_is_nine_in_ten_and_over_close_from_two_in_three_at_risk_under(double chance, String word) {
        assertThat(Chances.safety(chance)).isEqualTo(word);
    }

    @Test
    void a_share_counted_by_trials_meets_the_bound_it_stands_for() {
        assertThat(Chances.safety(9_000 / 10_000.0)).isEqualTo("safe");
        assertThat(Chances.safety(2.0 / 3.0)).isEqualTo("close");
        assertThat(Chances.words(970 / 1_000.0)).isEqualTo("almost certain");
    }

    @Test
    void what_is_no_chance_is_refused() {
        assertThatThrownBy(() -> Chances.words(1.01)).hasMessage("not a chance from 0 to 1: 1.01");
        assertThatThrownBy(() -> Chances.words(Double.NaN)).hasMessage("not a chance from 0 to 1: NaN");
    }

    @Test
    void a_share_of_a_landing_is_told_in_tenths() {
        assertThat(Chances.parts(.41)).isEqualTo("four parts in ten");
        assertThat(Chances.parts(.12)).isEqualTo("one part in ten");
        assertThat(Chances.parts(.04)).isEqualTo("a small part");
        assertThat(Chances.parts(.97)).isEqualTo("all of it");
    }

    @Test
    void a_percent_keeps_its_sign_on_the_line() {
        assertThat(Chances.percent(.414)).isEqualTo("41\u00a0%");
    }
}
