package weekwright.build;

import java.util.Optional;
import weekwright.base.Bounds;

/**
 * What the public build log shows ([build_log] in project.toml). One row. Nothing said means no: everything is off until
 * the crew switches it on.
 *
 * @param open whether this program serves it without an account; {@code publish} writes it in any case
 * @param address where it stands in public, for the feed and the site map; empty where that is not known
 * @param lead the sentences under its title
 * @param stages how far each stage is, by hours
 * @param landing when the stage in hand is done, in words
 * @param episodes those that are out, with their notes
 * @param thanks who gave material or money in kind, by the credit that was agreed
 * @param drawing the crew's own drawing, inked as stages are done
 * @param moved why that date moved, in one sentence
 * @param rung the next purchase and how far the money for it is there
 * @param pledge which share of what was spent on the build went into which stage
 */
public record BuildLog(
        Optional<Boolean> open,
        String address,
        @Bounds(max = 500) String lead,
        Optional<Boolean> stages,
        Optional<Boolean> landing,
        Optional<Boolean> episodes,
        Optional<Boolean> thanks,
        Optional<Boolean> drawing,
        Optional<Boolean> moved,
        Optional<Boolean> rung,
        Optional<Boolean> pledge) {
    /** Nothing switched on. */
    public static final BuildLog OFF = new BuildLog(
            Optional.empty(),
            "",
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());

    /** Whether a switch is on. */
    public static boolean on(Optional<Boolean> asked) {
        return asked.orElse(false);
    }
}
