package weekwright.history;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** What each column is called in words: the one list, {@code words/labels.txt}. */
public final class Labels {
    private static final Map<String, Map<String, String>> ALL = read();

    private Labels() {}

    /** @throws IllegalArgumentException for a column that the list does not have */
    public static String of(String table, String column) {
        String label = ALL.getOrDefault(table, Map.of()).get(column);
        if (label == null) {
            throw new IllegalArgumentException("no label for " + table + "." + column);
        }
        return label;
    }

    static Map<String, Map<String, String>> all() {
        return Map.copyOf(ALL);
    }

    private static Map<String, Map<String, String>> read() {
        Map<String, Map<String, String>> all = new HashMap<>();
        Map<String, String> columns = Map.of();
        for (String line : text().split("\n")) {
            if (line.startsWith("#") || line.isBlank()) {
                continue;
            }
            if (line.startsWith("  ")) {
                String[] halves = line.strip().split(": ", 2);
                columns.put(halves[0], halves[1]);
            } else {
                columns = new HashMap<>();
                all.put(line.strip(), columns);
            }
        }
        return all;
    }

    private static String text() {
        try (InputStream in = Labels.class.getResourceAsStream("/words/labels.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
