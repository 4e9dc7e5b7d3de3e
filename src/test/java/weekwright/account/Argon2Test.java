package weekwright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;

/** The library's Argon2id as it is used here. */
class Argon2Test {
    private static final HexFormat HEX = HexFormat.of();

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String tag(int kibibytes, int passes, int lanes) {
        return HEX.formatHex(Passphrases.function(kibibytes, passes, lanes, 32)
                .hash(bytes("password"), bytes("somesalt"))
                .getBytes());
    }

    /** The reference implementation's own test, P-H-C/phc-winner-argon2, src/test.c: version 0x13, Argon2id. */
    @Test
    @Requirement({"11.2.1"})
    void argon2id_gives_the_tags_of_the_reference_implementation() {
        assertThat(tag(256, 2, 1)).isEqualTo("9dfeb910e80bad0311fee20f9c0e2b12c17987b4cac90c2ef54d5b3021c68bfe");
        assertThat(tag(256, 2, 2)).isEqualTo("6d093c501fd5999645e0ea3bf620d7b8be7fd2db59c20d9fff9539da2bf57037");
        assertThat(tag(65536, 2, 1)).isEqualTo("09316115d5cf24ed5a15a31a3ba326e5cf32edc24702987c02b6566f61913cf7");
    }
}
