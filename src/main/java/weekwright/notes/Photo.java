package weekwright.notes;

import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * A picture of a note.
 *
 * @param file its name in photos/
 * @param alternative what it shows, for those who do not see it
 */
public record Photo(
        @Ref("notes") Id note,
        String file,
        @Bounds(max = 500) String caption,
        @Bounds(max = 1000) String alternative) {}
