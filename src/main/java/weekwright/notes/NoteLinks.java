package weekwright.notes;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Id;

/**
 * What a reference in a note points to. It is written {@code [words](task:ID)}, or with {@code stage}, {@code episode} or
 * {@code material}, and shows the thing's name as it is today; the words stand only where the thing is gone.
 */
@FunctionalInterface
public interface NoteLinks {
    /** The address of a reference as it is written. */
    Pattern ADDRESS = Pattern.compile("(task|stage|episode|material):([\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd}._-]{0,39})");

    /** Nothing is found: every reference shows its words. */
    NoteLinks NONE = (kind, id) -> Optional.empty();

    /** What may be referred to. */
    enum Kind {
        TASK,
        STAGE,
        EPISODE,
        MATERIAL
    }

    /**
     * A thing as it is called today.
     *
     * @param address where it is seen; empty for nowhere, then its name stands as plain text
     */
    record Target(String name, String address) {}

    Optional<Target> find(Kind kind, Id id);

    /** What an address points to; empty when it is no reference or the thing is gone. */
    default Optional<Target> at(String address) {
        Matcher match = ADDRESS.matcher(address);
        return match.matches()
                ? find(Kind.valueOf(match.group(1).toUpperCase(Locale.ROOT)), new Id(match.group(2)))
                : Optional.empty();
    }
}
