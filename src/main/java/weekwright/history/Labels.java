package weekwright.history;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * What each column is called in words: as {@code words/labels.txt} has it where a better word than its own name is needed, else by
 * its name.
 */
public final class Labels {
    private static final Map<String, Map<String, String>> ALL = read();

    private Labels() {}

    /** {@code Nothing more to tell in it} for {@code tasks.story_told}; {@code Stage} for {@code tasks.stage}. */
    public static String of(String table, String column) {
        return ALL.getOrDefault(table, Map.of()).getOrDefault(column, plain(column));
    }

    /** The name of a column as words: {@code season_from} is {@code Season from}. */
    static String plain(String column) {
        return Character.toUpperCase(column.charAt(0)) + column.substring(1).replace('_', ' ');
    }

    /** Those of the list, by table and column. */
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
