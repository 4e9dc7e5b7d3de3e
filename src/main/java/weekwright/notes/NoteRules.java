package weekwright.notes;

import static weekwright.base.RowRules.needed;

import java.util.Locale;
import java.util.regex.Pattern;
import weekwright.base.Problems;

/** What must hold within one build note and one picture. */
public final class NoteRules {
    private static final Pattern FILE = Pattern.compile("[\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd}._ -]{0,120}");
    private static final Pattern PICTURE = Pattern.compile(".+\\.(jpe?g|png|webp)");

    private NoteRules() {}

    public static void check(Note note, Problems problems) {
        needed("title", note.title(), "write what it is about", problems);
    }

    /** A picture's file lies in photos/ itself and is JPEG, PNG or WebP by its name. */
    public static void check(Photo photo, Problems problems) {
        if (!FILE.matcher(photo.file()).matches()) {
            problems.fault(
                    "photo", photo.file(), "is not a plain file name", "use letters, digits, blanks, - _ and . only");
        } else if (!isPicture(photo.file())) {
            problems.fault("photo", photo.file(), "is not a picture", "name a file in .jpg, .png or .webp");
        }
    }

    /** Whether a file is a picture by its name. */
    public static boolean isPicture(String file) {
        return PICTURE.matcher(file.toLowerCase(Locale.ROOT)).matches();
    }
}
