package weekwright.notes;

import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What somebody typed of a note and did not save.
 *
 * @param version of the note when it was opened; 0 for a new note
 * @param fields of the form, as they were typed
 */
public record Draft(Instant at, long version, Map<String, List<String>> fields) {}
