package weekwright.web.kit;

/** An address that is no page: JSON, a picture, a style sheet, a redirect. */
@FunctionalInterface
public interface Fragment {
    /**
     * @throws NotFound when there is no such thing
     */
    Answer answer(Request request);
}
