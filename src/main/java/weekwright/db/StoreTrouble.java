package weekwright.db;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.util.Optional;

/** The disk or the database failed in the middle of the work. Nothing of the action was saved. */
public final class StoreTrouble extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What failed, as far as it matters to the person. */
    public enum Kind {
        DISK_FULL("The disk is full. Nothing of this entry was saved. Free at least 200 MB and send it again."),
        LITTLE_ROOM(
                "The disk has less than 200 MB left, so no more files are taken. Nothing of this entry was saved. Free"
                        + " some room, or send it without a file."),
        READ_ONLY("The project folder cannot be written. Nothing of this entry was saved. Give this program the right"
                + " to write there and send it again."),
        BUSY("The project is busy with another change. Nothing of this entry was saved. Send it again."),
        DAMAGED("The project's database is damaged. Nothing of this entry was saved. Stop the program and restore the"
                + " newest backup."),
        DISK("The disk did not take the entry. Nothing of it was saved. Look after the disk, then send it again.");

        private final String sentence;

        Kind(String sentence) {
            this.sentence = sentence;
        }
    }

    private final Kind kind;

    StoreTrouble(Kind kind, Throwable cause) {
        super(kind.sentence, cause);
        this.kind = kind;
    }

    /** A file came and the disk is nearly full. */
    public static StoreTrouble littleRoom() {
        return new StoreTrouble(Kind.LITTLE_ROOM, null);
    }

    /** What a failure to write a file into the project's folder means to the person; empty where it is none of that. */
    public static Optional<StoreTrouble> writing(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            String said = String.valueOf(cause.getMessage());
            boolean refused = cause instanceof AccessDeniedException
                    || cause instanceof FileSystemException && said.matches("(?s).*(Read-only|not permitted).*");
            if (refused) {
                return Optional.of(new StoreTrouble(Kind.READ_ONLY, failure));
            }
            if (cause instanceof IOException && said.contains("No space left")) {
                return Optional.of(new StoreTrouble(Kind.DISK_FULL, failure));
            }
        }
        return Optional.empty();
    }

    public Kind kind() {
        return kind;
    }
}
