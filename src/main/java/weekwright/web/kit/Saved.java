package weekwright.web.kit;

import java.util.Map;
import java.util.Optional;
import weekwright.render.Frame;

/**
 * What follows a form that was accepted: where the browser goes on, and the one line that is said there.
 *
 * @param to a path of this server
 */
public record Saved(String to, Optional<Frame.Flash> flash, Optional<Kept> kept) {
    /** A form that was sent when the log-in had ended, as the log-in page carried it, and whose it is, folded. */
    public record Kept(String packed, String crew) {}

    public Saved {
        if (!to.matches("/([^/\\\\].*)?") || to.chars().anyMatch(c -> c < ' ')) {
            throw new IllegalArgumentException("not a path of this server: " + to);
        }
    }

    public static Saved to(String path) {
        return new Saved(path, Optional.empty(), Optional.empty());
    }

    /** The same with a line about what was done: {@code 3½ hours logged on 25 November.} */
    public Saved saying(String text) {
        return new Saved(to, Optional.of(new Frame.Flash(text, flash.flatMap(Frame.Flash::undo))), kept);
    }

    /** The same, but on to the form that was sent when the log-in had ended, where it is this person's. */
    public Saved orBackTo(String packed, String crew) {
        return new Saved(to, flash, packed.isEmpty() ? Optional.empty() : Optional.of(new Kept(packed, crew)));
    }

    /** The same with a button that takes it back: it posts the fields to the address. */
    public Saved undo(String action, String label, Map<String, String> fields) {
        Frame.Undo undo = new Frame.Undo(action, label, fields);
        return new Saved(
                to, Optional.of(new Frame.Flash(flash.map(Frame.Flash::text).orElse(""), Optional.of(undo))), kept);
    }
}
