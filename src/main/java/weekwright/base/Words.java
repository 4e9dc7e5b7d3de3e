package weekwright.base;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Words divided by single spaces: trades, hazards, equipment with counts ({@code trestle:2 hoist}). A word stands once; a
 * number may stand again (the twelve shares of lost days).
 */
public record Words(List<String> list) {
    public static final Words NONE = new Words(List.of());
    private static final Pattern NUMBER = Pattern.compile("[0-9.]+");

    public Words {
        list = List.copyOf(list);
    }

    public static Words parse(String text) throws Refused {
        String plain = text.strip();
        if (plain.isEmpty()) {
            return NONE;
        }
        List<String> words = new ArrayList<>();
        for (String word : plain.split("[ ,]+")) {
            if (words.contains(word) && !NUMBER.matcher(word).matches()) {
                throw new Refused("has the word " + word + " twice", "write each word once");
            }
            words.add(word);
        }
        return new Words(words);
    }

    public static Words of(String... words) {
        return new Words(Arrays.asList(words));
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    public boolean has(String word) {
        return list.contains(word);
    }

    public String text() {
        return String.join(" ", list);
    }

    @Override
    public String toString() {
        return text();
    }
}
