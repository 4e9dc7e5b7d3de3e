package weekwright.db;

/** A folder that cannot be opened as a project; the message is the whole sentence for the person. */
public final class FolderRefused extends Exception {
    private static final long serialVersionUID = 1L;

    public FolderRefused(String message) {
        super(message);
    }

    public FolderRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
