package weekwright.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Changes bytes as damage, haste and malice change them; the same seed gives the same changes. */
final class Mutations {
    private static final String[] SIGNS = {
        "\"",
        "\"\"",
        ",",
        ";",
        "\r\n",
        "\r",
        "\n\n",
        "\0",
        "\ufeff",
        "\ufffd",
        "=",
        "[",
        "]",
        "[[",
        "{",
        "}",
        "'''",
        "\"\"\"",
        "\\",
        "\\u",
        "#",
        "+++",
        "---",
        ":",
        "|",
        "`",
        "```",
        "*",
        "_",
        "~~",
        "<",
        ">",
        "&",
        "&#",
        "](",
        "![",
        "[^",
        "<!--",
        "<![CDATA[",
        "\u202e",
        "\ud83d\udc69"
    };

    private final SplittableRandom random;
    private final List<String> hostile = lines("hostile.txt");

    Mutations(long seed) {
        random = new SplittableRandom(seed);
    }

    static byte[] corpus(String name) {
        try (InputStream in = Mutations.class.getResourceAsStream("/corpus/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> lines(String name) {
        return new String(corpus(name), StandardCharsets.UTF_8).lines().toList();
    }

    int next(int bound) {
        return random.nextInt(bound);
    }

    /** A text that has tripped programs up. */
    String text() {
        String one = hostile.get(random.nextInt(hostile.size()));
        return switch (random.nextInt(8)) {
            case 0 -> one.repeat(1 + random.nextInt(400));
            case 1 -> one + SIGNS[random.nextInt(SIGNS.length)];
            case 2 -> "";
            default -> one;
        };
    }

    /** One to four changes of a copy. */
    byte[] of(byte[] seed) {
        byte[] bytes = seed.clone();
        for (int i = random.nextInt(4); i >= 0; i--) {
            bytes = once(bytes);
        }
        return bytes;
    }

    private byte[] once(byte[] bytes) {
        int at = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, at + random.nextInt(1 + random.nextInt(64)));
        return switch (random.nextInt(7)) {
            case 0 -> bytes.length == 0 ? bytes : flipped(bytes, Math.min(at, bytes.length - 1));
            case 1 -> joined(Arrays.copyOf(bytes, at), tail(bytes, to));
            case 2 -> joined(Arrays.copyOf(bytes, to), tail(bytes, at));
            case 3 -> joined(joined(Arrays.copyOf(bytes, at), utf8(text())), tail(bytes, to));
            case 4 ->
                joined(joined(Arrays.copyOf(bytes, at), utf8(SIGNS[random.nextInt(SIGNS.length)])), tail(bytes, at));
            case 5 -> Arrays.copyOf(bytes, at);
            default ->
                joined(
                        joined(
                                Arrays.copyOf(bytes, at),
                                utf8(SIGNS[random.nextInt(SIGNS.length)].repeat(1 + random.nextInt(2_000)))),
                        tail(bytes, at));
        };
    }

    private byte[] flipped(byte[] bytes, int at) {
        byte[] other = bytes.clone();
        other[at] = (byte) random.nextInt(256);
        return other;
    }

    private static byte[] tail(byte[] bytes, int from) {
        return Arrays.copyOfRange(bytes, from, bytes.length);
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
