package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HazardWordsTest {
    @Test
    void rule_119_words_of_a_title_propose_hazards_each_once() {
        assertThat(HazardWords.of("Forge and weld six hoops")).containsExactly("hot");
        assertThat(HazardWords.of("Pouring the gudgeons, then LIFT them out")).containsExactly("melt", "lift");
        assertThat(HazardWords.of("Fell the oak with the chainsaw")).containsExactly("fell", "saw");
        assertThat(HazardWords.of("Steam two planks")).containsExactly("steam");
    }

    @Test
    void a_word_that_only_looks_like_one_proposes_nothing() {
        assertThat(HazardWords.of("Saw out the felloes")).isEmpty();
        assertThat(HazardWords.of("Shirts and jackets")).isEmpty();
        assertThat(HazardWords.of("")).isEmpty();
    }

    @Test
    void every_proposed_hazard_is_a_known_one() {
        assertThat(HazardWords.of("pour forge weld fell lift jack chainsaw steam epoxy scaffold"))
                .hasSize(9)
                .allMatch(HazardCodes::isKnown);
    }
}
