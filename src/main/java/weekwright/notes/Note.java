package weekwright.notes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Ref;
import weekwright.base.Words;

/**
 * A dated build note in Markdown.
 *
 * @param visibleFrom shown from that day on; nothing means at once
 */
public record Note(
        Id id,
        String title,
        LocalDate date,
        @Ref("crew") Optional<Id> author,
        @Ref("stages") Optional<Id> stage,
        @Ref("episodes") Optional<Id> episode,
        Words tasks,
        Optional<Visible> visible,
        Optional<LocalDate> visibleFrom,
        @Lines @Bounds(max = 200000) String text) {
    /** Who may read it. */
    public enum Visible {
        CREW,
        SUPPORTERS,
        EVERYONE
    }

    public Visible visibleOrDefault() {
        return visible.orElse(Visible.CREW);
    }
}
