package weekwright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.testkit.Requirement;

/** OWASP ASVS 5.0.0, 6.2.1, 6.2.4, 6.2.5, 6.2.9, 6.2.11. */
class PassphraseRulesTest {
    private static List<String> refusals(String passphrase) {
        Problems problems = new Problems();
        PassphraseRules.check("passphrase", passphrase, List.of("Ilse Harms", "Alder Mill"), problems);
        return problems.list().stream().map(Problem::rule).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "oak pegs and tallow",
                "OAK PEGS TALLOW 1",
                " a c e b d f h g ",
                "žluťoučký kůň 🐴",
                "Ilse Harms dries felt"
            })
    @Requirement({"6.2.5"})
    void any_signs_will_do_that_are_long_enough(String passphrase) {
        assertThat(refusals(passphrase)).isEmpty();
    }

    @Test
    @Requirement({"6.2.1", "6.2.9"})
    void fifteen_signs_are_enough_fourteen_are_not_and_there_is_an_end() {
        assertThat(refusals("oak pegs tallo")).containsExactly("is too short");
        assertThat(refusals("oak pegs tallow")).isEmpty();
        assertThat(refusals("🐴🐑🐐🐄🐖🐓🦆")).containsExactly("is too short");
        String long256 = "oak pegs and tallow ".repeat(12) + "and a wet hat in.";
        assertThat(refusals((long256 + "x").substring(0, 256))).isEmpty();
        assertThat(refusals("oak pegs and tallow".repeat(20))).containsExactly("is too long");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "aaaaaaaaaaaaaaaa",
                "weekmillweekmill",
                "abcdefghijklmnop",
                "ponmlkjihgfedcba",
                "fedcbafedcbafedcba"
            })
    void what_repeats_itself_or_counts_up_is_refused(String passphrase) {
        assertThat(refusals(passphrase)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Correct Horse Battery Staple", "The quick brown fox", "change me change me"})
    @Requirement({"6.2.4", "6.2.12"})
    void what_many_people_take_is_refused(String passphrase) {
        assertThat(refusals(passphrase)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Ilse Harms 1987-2026", "weekwright Alder Mill", "alder mill 123456789"})
    @Requirement({"6.1.2", "6.2.11"})
    void names_that_others_know_with_figures_are_refused(String passphrase) {
        assertThat(refusals(passphrase)).containsExactly("is made of names that others know");
    }
}
