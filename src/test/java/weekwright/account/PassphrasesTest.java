package weekwright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;

class PassphrasesTest {
    private static final Passphrases CHEAP = new Passphrases(64, 1);

    /** OWASP Password Storage Cheat Sheet: Argon2id with m=19456 (19 MiB), t=2, p=1. */
    @Test
    @Requirement({"11.4.2"})
    void the_full_cost_is_that_of_the_cheat_sheet_and_stands_in_what_is_stored() {
        Passphrases full = Passphrases.ofFullCost();
        String stored = full.hash("oak pegs and tallow");
        assertThat(stored).matches("\\$argon2id\\$v=19\\$m=19456,t=2,p=1\\$[A-Za-z0-9+/]{22}\\$[A-Za-z0-9+/]{43}");
        assertThat(full.matches("oak pegs and tallow", Optional.of(stored))).isTrue();
        assertThat(full.matches("oak pegs and tallov", Optional.of(stored))).isFalse();
        assertThat(full.outdated(stored)).isFalse();
    }

    @Test
    void two_of_the_same_are_stored_differently_and_an_earlier_cost_is_still_understood() {
        String one = CHEAP.hash("oak pegs and tallow");
        assertThat(one).isNotEqualTo(CHEAP.hash("oak pegs and tallow"));
        Passphrases dearer = new Passphrases(128, 1);
        assertThat(dearer.outdated(one)).isTrue();
        assertThat(dearer.matches("oak pegs and tallow", Optional.of(one))).isTrue();
    }

    @Test
    @Requirement({"6.2.8"})
    void every_sign_counts_blanks_and_the_seventy_third_byte_too() {
        String stored = CHEAP.hash(" " + "a b".repeat(30));
        assertThat(CHEAP.matches(" " + "a b".repeat(30), Optional.of(stored))).isTrue();
        assertThat(CHEAP.matches("a b".repeat(30), Optional.of(stored))).isFalse();
        assertThat(CHEAP.matches(" " + "a b".repeat(29) + "a c", Optional.of(stored)))
                .isFalse();
    }

    @Test
    void a_letter_with_its_accent_apart_is_the_same_letter() {
        String stored = CHEAP.hash("caf\u00e9 behind the mill");
        assertThat(CHEAP.matches("cafe\u0301 behind the mill", Optional.of(stored)))
                .isTrue();
    }

    @Test
    void nobody_has_the_passphrase_of_nobody() {
        assertThat(CHEAP.matches("nobody has this one", Optional.empty())).isFalse();
    }
}
