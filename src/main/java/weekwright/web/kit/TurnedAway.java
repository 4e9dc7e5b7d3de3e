package weekwright.web.kit;

/** A form was not accepted for who sent it, not for what it says: the same page is shown again with this status. */
public final class TurnedAway extends Exception {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final long retryAfterSeconds;

    /** @param retryAfterSeconds 0 when it may be tried again at once */
    public TurnedAway(int status, String sentence, long retryAfterSeconds) {
        super(sentence, null, false, false);
        this.status = status;
        this.retryAfterSeconds = retryAfterSeconds;
    }

    int status() {
        return status;
    }

    long retryAfterSeconds() {
        return retryAfterSeconds;
    }
}
