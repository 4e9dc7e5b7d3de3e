package weekwright.web.kit;

/** The address names a thing that does not exist; the message is the sentence for the person. Answered with 404. */
public final class NotFound extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NotFound(String sentence) {
        super(sentence, null, false, false);
    }
}
