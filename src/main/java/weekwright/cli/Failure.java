package weekwright.cli;

/** A command cannot do what was asked; the message is the whole text for the person. */
final class Failure extends Exception {
    private static final long serialVersionUID = 1L;

    private final int status;

    private Failure(int status, String message) {
        super(message, null, false, false);
        this.status = status;
    }

    /** A fault in the data or the folder: status 1. */
    static Failure fault(String message) {
        return new Failure(1, message);
    }

    /** Wrong usage: status 2. */
    static Failure usage(String message) {
        return new Failure(2, message);
    }

    int status() {
        return status;
    }
}
