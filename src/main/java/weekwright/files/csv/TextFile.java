package weekwright.files.csv;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Problems;

/** A text file read as strict UTF-8, with or without a byte order mark. */
public final class TextFile {
    private static final String SAVE = "save it as CSV UTF-8 or plain UTF-8 text";

    private TextFile() {}

    /**
     * Reads a file whole.
     *
     * @param name as the problems call it
     * @param mostBytes larger files are refused before they are read
     * @return the text without byte order mark, or empty when a fault was added
     */
    public static Optional<String> read(Path file, String name, int mostBytes, Problems problems) {
        Problem fault = null;
        try {
            if (!Files.isRegularFile(file)) {
                fault = Problem.fault("", "", "is not a file", "put a plain text file there");
            } else if (!Files.isReadable(file)) {
                fault = Problem.fault("", "", "cannot be read", "give this program the right to read it");
            } else if (Files.size(file) > mostBytes) {
                fault = Problem.fault(
                        "",
                        "",
                        "has " + Files.size(file) + " bytes, and at most " + mostBytes + " are read",
                        "split it");
            } else {
                try (InputStream in = Files.newInputStream(file)) {
                    return decoded(in.readNBytes(mostBytes), name, problems);
                }
            }
        } catch (IOException e) {
            fault = Problem.fault("", "", "cannot be read: " + e.getMessage(), "look after the disk");
        }
        problems.add(fault.at(name, 0));
        return Optional.empty();
    }

    /** The text of bytes, without byte order mark; empty when a fault was added. */
    public static Optional<String> decoded(byte[] bytes, String name, Problems problems) {
        int b0 = bytes.length > 0 ? bytes[0] & 0xff : 0;
        int b1 = bytes.length > 1 ? bytes[1] & 0xff : 0;
        boolean marked = b0 == 0xfe && b1 == 0xff || b0 == 0xff && b1 == 0xfe;
        boolean zeros = bytes.length > 1 && (b0 == 0) != (b1 == 0);
        if (marked || zeros) {
            problems.add(Problem.fault("", "", "is UTF-16, not UTF-8", SAVE).at(name, 1));
            return Optional.empty();
        }
        boolean mark = bytes.length > 2 && b0 == 0xef && b1 == 0xbb && (bytes[2] & 0xff) == 0xbf;
        ByteBuffer in = ByteBuffer.wrap(bytes, mark ? 3 : 0, bytes.length - (mark ? 3 : 0));
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            problems.add(notText(bytes, in.position(), "is not UTF-8").at(name, lineOf(bytes, in.position())));
            return Optional.empty();
        }
        String text = out.flip().toString();
        if (text.indexOf('\0') >= 0) {
            int at = 0;
            while (bytes[at] != 0) {
                at++;
            }
            problems.add(notText(bytes, at, "is not text").at(name, lineOf(bytes, at)));
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private static Problem notText(byte[] bytes, int at, String rule) {
        int start = at;
        while (start > 0 && bytes[start - 1] != '\n' && bytes[start - 1] != '\r') {
            start--;
        }
        return Problem.fault("", "", rule + " at byte " + (at - start + 1) + " of this line", SAVE);
    }

    private static int lineOf(byte[] bytes, int at) {
        int line = 1;
        for (int i = 0; i < at; i++) {
            if (bytes[i] == '\n' || bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n')) {
                line++;
            }
        }
        return line;
    }
}
