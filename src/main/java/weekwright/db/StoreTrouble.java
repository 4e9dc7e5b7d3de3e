package weekwright.db;

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

    public Kind kind() {
        return kind;
    }
}
