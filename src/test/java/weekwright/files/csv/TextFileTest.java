package weekwright.files.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Problem;
import weekwright.base.Problems;

/** Bytes that are text and bytes that are not; the byte order marks are those of the Unicode Standard, section 23.8 (from memory). */
class TextFileTest {
    private static final String SAVE = "save it as CSV UTF-8 or plain UTF-8 text";

    @TempDir
    Path folder;

    private final Problems problems = new Problems();

    private static byte[] bytes(int... values) {
        byte[] bytes = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            bytes[i] = (byte) values[i];
        }
        return bytes;
    }

    private Optional<String> decoded(int... values) {
        return TextFile.decoded(bytes(values), "notes.md", problems);
    }

    private List<String> faults() {
        return problems.list().stream().map(Problem::text).toList();
    }

    private void refused(String said, int... values) {
        Problems mine = new Problems();
        assertThat(TextFile.decoded(bytes(values), "notes.md", mine)).isEmpty();
        assertThat(mine.list().stream().map(Problem::text)).containsExactly("notes.md " + said + "; " + SAVE);
    }

    @Test
    void the_mark_of_utf_8_is_left_out_and_short_files_are_read() {
        assertThat(decoded()).contains("");
        assertThat(decoded('a')).contains("a");
        assertThat(decoded('a', 'b')).contains("ab");
        assertThat(decoded(0xef, 0xbb, 0xbf)).contains("");
        assertThat(decoded(0xef, 0xbb, 0xbf, 'a')).contains("a");
        assertThat(decoded(0xc3, 0xbc)).contains("ü");
        assertThat(faults()).isEmpty();
    }

    @Test
    void utf_16_is_known_by_its_mark_and_by_its_zeros() {
        refused("line 1: is UTF-16, not UTF-8", 0xfe, 0xff, 0, 'a');
        refused("line 1: is UTF-16, not UTF-8", 0xff, 0xfe, 'a', 0);
        refused("line 1: is UTF-16, not UTF-8", 0, 'a');
        refused("line 1: is UTF-16, not UTF-8", 'a', 0);
    }

    @Test
    void what_is_no_utf_8_is_told_with_its_line_and_byte_however_lines_end() {
        refused("line 1: is not UTF-8 at byte 1 of this line", 0xff, 'a');
        refused("line 1: is not UTF-8 at byte 1 of this line", 0xef, 0xbb);
        refused("line 4: is not UTF-8 at byte 3 of this line", 'a', '\r', '\n', 'b', '\r', 'c', '\n', 'd', 'e', 0xfc);
        refused("line 2: is not UTF-8 at byte 1 of this line", 'a', '\r', 0xfc);
        refused("line 3: is not UTF-8 at byte 1 of this line", '\r', '\r', 0xfc);
        refused("line 2: is not text at byte 2 of this line", 'a', '\n', 'b', 0, 'c');
    }

    @Test
    void a_file_of_the_most_bytes_is_read_and_one_more_is_not() throws Exception {
        Path file = folder.resolve("links.csv");
        Files.write(file, "ten bytes.".getBytes(StandardCharsets.UTF_8));
        assertThat(TextFile.read(file, "links.csv", 10, problems)).contains("ten bytes.");
        assertThat(TextFile.read(file, "links.csv", 9, problems)).isEmpty();
        assertThat(TextFile.read(folder, "a folder", 9, problems)).isEmpty();
        assertThat(faults())
                .containsExactly(
                        "links.csv: has 10 bytes, and at most 9 are read; split it",
                        "a folder: is not a file; put a plain text file there");
    }
}
