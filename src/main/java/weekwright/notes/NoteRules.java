package weekwright.notes;

import static weekwright.base.RowRules.needed;

import java.util.List;
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
                    "photo", photo.file(), "is not a plain file name", "use letters, digits, spaces, - _ and . only");
        } else if (!isPicture(photo.file())) {
            problems.fault("photo", photo.file(), "is not a picture", "name a file in .jpg, .png or .webp");
        }
    }

    /** A picture of a note that everyone reads has words for those who do not see it. */
    public static void seenWithWords(Note note, Photo photo, Problems problems) {
        if (note.visibleOrDefault() == Note.Visible.EVERYONE
                && photo.alternative().isEmpty()) {
            problems.fault(
                    "alternative",
                    "",
                    "is missing; everyone reads this note",
                    "write what the picture shows, for those who do not see it");
        }
    }

    /** A note becomes visible to everyone when each of its pictures has words. */
    static void seenWithWords(Note note, List<Photo> photos, Problems problems) {
        long without =
                photos.stream().filter(photo -> photo.alternative().isEmpty()).count();
        if (note.visibleOrDefault() == Note.Visible.EVERYONE && without > 0) {
            problems.fault(
                    "visible",
                    "everyone",
                    "asks for words with each picture, for those who do not see it; "
                            + (without == 1 ? "one has none" : without + " have none"),
                    "write what it shows at the pictures of the note first");
        }
    }

    /** So do the pictures within its text. */
    static void textWithWords(Note note, Problems problems) {
        if (note.visibleOrDefault() != Note.Visible.EVERYONE) {
            return;
        }
        for (Markdown.Picture picture : Markdown.pictures(note.text())) {
            if (picture.alternative().isEmpty()) {
                problems.fault(
                        "text",
                        "![](photos/" + picture.file() + ")",
                        "has no words for those who do not see it; everyone reads this note",
                        "write what it shows between [ and ]");
            }
        }
    }

    /** Whether a file is a picture by its name. */
    public static boolean isPicture(String file) {
        return PICTURE.matcher(file.toLowerCase(Locale.ROOT)).matches();
    }
}
