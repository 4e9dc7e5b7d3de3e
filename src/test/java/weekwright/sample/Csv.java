package weekwright.sample;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The little reading and writing of RFC 4180 files that the sample's makers need: comma, CRLF, quotes only where needed,
 * no line breaks inside a cell. Rows are maps from column name to text; an absent cell is the empty text.
 */
final class Csv {
    private Csv() {}

    /** All rows of a file with a header row, in file order. */
    static List<Map<String, String>> read(Path file) {
        List<Map<String, String>> rows = new ArrayList<>();
        try {
            List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
            List<String> head = cells(lines.get(0));
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = cells(line);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < head.size(); i++) {
                    row.put(head.get(i), cells.get(i));
                }
                rows.add(row);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return rows;
    }

    /** The text of a file: {@code head} is the comma-separated header, every row has as many cells. */
    static String text(String head, List<List<String>> rows) {
        StringBuilder text = new StringBuilder(head).append("\r\n");
        for (List<String> row : rows) {
            List<String> written = new ArrayList<>();
            for (String cell : row) {
                boolean quoted = cell.contains(",") || cell.contains("\"");
                written.add(quoted ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
            }
            text.append(String.join(",", written)).append("\r\n");
        }
        return text.toString();
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
