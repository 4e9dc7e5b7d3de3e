package weekwright.web.kit;

/** The person may not do this; the message is the sentence for them. Answered with 403. */
public final class Forbidden extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public Forbidden(String sentence) {
        super(sentence, null, false, false);
    }
}
