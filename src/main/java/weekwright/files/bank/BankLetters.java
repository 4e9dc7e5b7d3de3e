package weekwright.files.bank;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.funds.BankSource.Encoding;

/** Bytes of a file to letters. What cannot be read is told by its lines, and what is read in two ways, too. */
public final class BankLetters {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int LINES_TOLD = 5;
    private static final String FIELD = "encoding";

    private BankLetters() {}

    /** The encoding that reads all lines; by line where some are UTF-8 with letters beyond ASCII and others are not. */
    public static Encoding guess(byte[] bytes) {
        if (bom(bytes, 0xff, 0xfe) || bom(bytes, 0xfe, 0xff) || zeros(bytes) * 4L > bytes.length) {
            return Encoding.UTF_16;
        }
        if (decoded(bytes, StandardCharsets.UTF_8).isPresent()) {
            return Encoding.UTF_8;
        }
        boolean some = lines(bytes).stream()
                .anyMatch(line -> beyondAscii(line)
                        && decoded(line, StandardCharsets.UTF_8).isPresent());
        return some ? Encoding.BY_LINE : Encoding.WINDOWS_1252;
    }

    /** The letters; empty where some bytes are none in that encoding: then a fault was added. */
    public static Optional<String> read(byte[] bytes, Encoding encoding, Problems problems) {
        Optional<String> text =
                encoding == Encoding.UTF_16 ? utf16(bytes, problems) : byLines(bytes, encoding, problems);
        return text.map(BankLetters::withoutMark).filter(letters -> isText(letters, problems));
    }

    private static Optional<String> utf16(byte[] bytes, Problems problems) {
        boolean big = bom(bytes, 0xfe, 0xff) || !bom(bytes, 0xff, 0xfe) && bytes.length > 0 && bytes[0] == 0;
        Optional<String> text = bytes.length % 2 == 0
                ? decoded(bytes, big ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE)
                : Optional.empty();
        if (text.isEmpty()) {
            problems.fault(FIELD, "UTF-16", "does not read this file", "choose another encoding");
        }
        return text;
    }

    private static Optional<String> byLines(byte[] bytes, Encoding encoding, Problems problems) {
        if (encoding != Encoding.WINDOWS_1252 || !beyondAscii(bytes)) {
            Optional<String> whole = decoded(bytes, StandardCharsets.UTF_8);
            if (whole.isPresent()) {
                return whole;
            }
        }
        StringBuilder text = new StringBuilder();
        List<Integer> unread = new ArrayList<>();
        List<Integer> utf8 = new ArrayList<>();
        List<Integer> windows = new ArrayList<>();
        int number = 0;
        for (byte[] line : lines(bytes)) {
            number++;
            Optional<String> asUtf8 = decoded(line, StandardCharsets.UTF_8);
            boolean plain = !beyondAscii(line);
            boolean first = encoding != Encoding.WINDOWS_1252 && (encoding == Encoding.UTF_8 || asUtf8.isPresent());
            Optional<String> letters = first || plain ? asUtf8 : decoded(line, WINDOWS);
            if (letters.isEmpty()) {
                unread.add(number);
            } else if (!plain) {
                (asUtf8.isPresent() ? utf8 : windows).add(number);
            }
            text.append(letters.orElse(""));
        }
        if (!unread.isEmpty()) {
            String name = encoding == Encoding.UTF_8 ? "UTF-8" : "Windows-1252";
            problems.fault(
                    FIELD,
                    name,
                    "does not read " + told(unread),
                    encoding == Encoding.UTF_8
                            ? "choose Windows-1252, or each line for itself"
                            : "choose another encoding, or mend the file");
            return Optional.empty();
        }
        if (encoding == Encoding.WINDOWS_1252 && !utf8.isEmpty()) {
            problems.remark(FIELD, "", told(utf8) + " look like UTF-8", "look at the letters below");
        }
        if (encoding == Encoding.BY_LINE && !utf8.isEmpty() && !windows.isEmpty()) {
            problems.remark(
                    FIELD,
                    "",
                    "Two encodings stand in this file: " + told(windows) + " read as Windows-1252, " + told(utf8)
                            + " as UTF-8",
                    "look at the letters below");
        }
        return Optional.of(text.toString());
    }

    /** {@code line 3}, {@code lines 3, 7 and 9}, {@code lines 3, 4, 5, 6, 7 and 20 more}. */
    static String told(List<Integer> lines) {
        if (lines.size() == 1) {
            return "line " + lines.get(0);
        }
        int shown = Math.min(lines.size(), LINES_TOLD);
        boolean more = lines.size() > shown;
        List<String> parts = new ArrayList<>();
        lines.subList(0, more ? shown : shown - 1).forEach(line -> parts.add(line.toString()));
        return "lines " + String.join(", ", parts) + " and "
                + (more ? lines.size() - shown + " more" : lines.get(shown - 1).toString());
    }

    private static boolean isText(String letters, Problems problems) {
        int line = 1;
        for (int i = 0; i < letters.length(); i++) {
            char c = letters.charAt(i);
            if (c == '\n') {
                line++;
            } else if (c < ' ' && c != '\t' && c != '\r' || c == '\uFFFE' || c == '\uFFFF') {
                problems.fault(
                        FIELD, "", "Line " + line + " has what is no text", "download the file as CSV, and send that");
                return false;
            }
        }
        return true;
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static List<byte[]> lines(byte[] bytes) {
        List<byte[]> lines = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                lines.add(Arrays.copyOfRange(bytes, start, i + 1));
                start = i + 1;
            }
        }
        lines.add(Arrays.copyOfRange(bytes, start, bytes.length));
        return lines;
    }

    private static Optional<String> decoded(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException e) {
            return Optional.empty();
        }
    }

    private static boolean beyondAscii(byte[] line) {
        for (byte one : line) {
            if (one < 0) {
                return true;
            }
        }
        return false;
    }

    private static boolean bom(byte[] bytes, int one, int two) {
        return bytes.length > 1 && (bytes[0] & 0xff) == one && (bytes[1] & 0xff) == two;
    }

    private static long zeros(byte[] bytes) {
        long zeros = 0;
        for (byte one : Arrays.copyOf(bytes, Math.min(bytes.length, 4096))) {
            zeros += one == 0 ? 1 : 0;
        }
        return bytes.length > 4096 ? zeros * bytes.length / 4096 : zeros;
    }
}
