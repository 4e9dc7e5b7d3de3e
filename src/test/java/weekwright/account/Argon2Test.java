package weekwright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class Argon2Test {
    private static final HexFormat HEX = HexFormat.of();

    private static byte[] times(int value, int count) {
        byte[] bytes = new byte[count];
        Arrays.fill(bytes, (byte) value);
        return bytes;
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** RFC 7693, appendix A. */
    @Test
    void blake2b_of_abc_is_that_of_its_standard() {
        assertThat(HEX.formatHex(Blake2b.hash(64, bytes("abc"))))
                .isEqualTo("ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d1"
                        + "7d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923");
    }

    /** RFC 9106, section 5.3: all inputs, four lanes, three passes. */
    @Test
    void argon2id_gives_the_tag_of_its_standard() {
        byte[] tag = new Argon2(32, 3, 4).tag(32, times(1, 32), times(2, 16), times(3, 8), times(4, 12));
        assertThat(HEX.formatHex(tag)).isEqualTo("0d640df58d78766c08c037a34a8b53c9d01ef0452d75b65eb52520e96b01e659");
    }

    /** The reference implementation's own test, P-H-C/phc-winner-argon2, src/test.c: version 0x13, Argon2id. */
    @Test
    void argon2id_gives_the_tags_of_the_reference_implementation() {
        byte[] none = {};
        assertThat(HEX.formatHex(new Argon2(256, 2, 1).tag(32, bytes("password"), bytes("somesalt"), none, none)))
                .isEqualTo("9dfeb910e80bad0311fee20f9c0e2b12c17987b4cac90c2ef54d5b3021c68bfe");
        assertThat(HEX.formatHex(new Argon2(256, 2, 2).tag(32, bytes("password"), bytes("somesalt"), none, none)))
                .isEqualTo("6d093c501fd5999645e0ea3bf620d7b8be7fd2db59c20d9fff9539da2bf57037");
        assertThat(HEX.formatHex(new Argon2(65536, 2, 1).tag(32, bytes("password"), bytes("somesalt"), none, none)))
                .isEqualTo("09316115d5cf24ed5a15a31a3ba326e5cf32edc24702987c02b6566f61913cf7");
    }
}
