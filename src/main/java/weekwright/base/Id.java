package weekwright.base;

import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The name by which one thing is referred to in files and addresses: letters, digits, {@code - _ .}, at most 40, kept as
 * written, unique regardless of case.
 */
public record Id(String value) implements Comparable<Id> {
    private static final Pattern GRAMMAR = Pattern.compile("[\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd}._-]{0,39}");

    public static Id parse(String text) throws Refused {
        if (!GRAMMAR.matcher(text).matches()) {
            throw new Refused("is not an id", "use at most 40 letters, digits, - _ and . only");
        }
        return new Id(text);
    }

    /** Whether a text has the form of an id. */
    public static boolean isOne(String text) {
        return GRAMMAR.matcher(text).matches();
    }

    /** The form under which two ids are the same. */
    public String folded() {
        return value.toLowerCase(Locale.ROOT);
    }

    /** Whether both name the same thing. */
    public boolean same(Id other) {
        return folded().equals(other.folded());
    }

    /**
     * Proposes the first free id of a series: {@code wheel.12} for the word {@code wheel} when 1 to 11 are taken.
     *
     * @param word made fit for an id first; an empty one becomes {@code x}
     */
    public static Id next(String word, Collection<Id> taken) {
        String stem = word.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}_-]+", "-")
                .replaceAll("^-+|-+$", "");
        String cut = stem.isEmpty() ? "x" : stem.substring(0, Math.min(stem.length(), 30));
        var folded = taken.stream().map(Id::folded).collect(Collectors.toSet());
        int number = 1;
        while (folded.contains(cut + "." + number)) {
            number++;
        }
        return new Id(cut + "." + number);
    }

    @Override
    public int compareTo(Id other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
