package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HazardReferencesTest {
    @Test
    void every_hazard_has_a_caution_for_hands_and_camera_of_at_most_30_words_and_says_where_its_rules_stand() {
        assertThat(HazardCodes.all()).hasSize(31).allSatisfy(code -> {
            for (Caution.Whom whom : Caution.Whom.values()) {
                String caution = UsualCautions.of(code, whom).orElseThrow();
                assertThat(caution.split(" ")).hasSizeLessThanOrEqualTo(30);
                assertThat(caution.toLowerCase(java.util.Locale.ROOT)).doesNotContain("is safe");
            }
            assertThat(HazardReferences.seen(code).size()
                            + HazardReferences.fromMemory(code).size())
                    .isPositive();
        });
    }

    @Test
    void what_was_looked_at_and_what_is_told_from_memory_stand_apart() {
        // 29 CFR 1910.266 (logging operations) was looked at, the ILO code of 1998 was not
        assertThat(HazardReferences.seen("fell")).containsExactly("29 CFR 1910.266; HSE INDG317 (rev 2, 2013)");
        assertThat(HazardReferences.fromMemory("fell")).containsExactly("ILO code of practice, forestry work, 1998");
        assertThat(HazardReferences.seen("no-such")).isEmpty();
    }
}
