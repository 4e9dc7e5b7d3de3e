package weekwright.build;

import java.text.Normalizer;
import java.util.Collection;
import java.util.Locale;
import java.util.stream.Collectors;
import weekwright.base.Id;

/** Ids proposed from names (rule 111): the name's last word where it is free, else that word and a number. */
public final class Ids {
    private static final int LONGEST = 30;

    private Ids() {}

    /** {@code shaft} for "Wheel shaft", {@code shaft.1} when that is taken. */
    public static Id word(String name, Collection<Id> taken) {
        String[] words = Normalizer.normalize(name, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", " ")
                .strip()
                .split(" ");
        String last = words[words.length - 1];
        String word = last.isEmpty() ? "x" : last.substring(0, Math.min(LONGEST, last.length()));
        boolean free =
                taken.stream().map(Id::folded).collect(Collectors.toSet()).add(word);
        return free ? new Id(word) : Id.next(word, taken);
    }
}
