package weekwright.base;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The known words that lie nearest to one that is not known, so that a refusal can offer them. Nearness is the number of
 * letters to add, take out or change (V. I. Levenshtein, Soviet Physics Doklady 10, 1966), without regard to case.
 */
public final class Nearest {
    private static final int MOST_LETTERS = 60;

    private Nearest() {}

    /** At most {@code most} of the known words, nearest first, ties in their order; only those less than half other. */
    public static List<String> to(String word, Collection<String> known, int most) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        if (plain.isEmpty() || plain.length() > MOST_LETTERS) {
            return List.of();
        }
        record Near(String word, int distance) {}
        return known.stream()
                .filter(other -> Math.abs(other.length() - plain.length()) <= plain.length() / 2 + 1)
                .map(other -> new Near(other, distance(plain, other.toLowerCase(Locale.ROOT))))
                .filter(near -> 2 * near.distance()
                        <= Math.max(plain.length(), near.word().length()))
                .sorted(Comparator.comparingInt(Near::distance))
                .limit(most)
                .map(Near::word)
                .toList();
    }

    /** {@code write one of oak, ash} with the three nearest, or the other remedy where none is near. */
    public static String remedy(String word, Collection<String> known, String otherwise) {
        List<String> near = to(word, known, 3);
        return switch (near.size()) {
            case 0 -> otherwise;
            case 1 -> "write " + near.get(0);
            default -> near.stream().collect(Collectors.joining(", ", "write one of ", ""));
        };
    }

    private static int distance(String one, String other) {
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int changed = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[other.length()];
    }
}
