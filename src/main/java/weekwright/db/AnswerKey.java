package weekwright.db;

/**
 * The key of one filled-in form, so that a post that comes twice is done once (rule 117).
 *
 * @param key random text made when the form was shown
 * @param route the address it was posted to, as its pattern
 * @param bodySha256 of what was posted: the same key with another body is refused
 */
public record AnswerKey(String key, String route, String bodySha256) {}
