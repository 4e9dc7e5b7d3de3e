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
    private static final String UNDO = "/crew/history";

    /**
     * A form that was sent when the passphrase was wanted first.
     *
     * @param packed as the page that asked for it carried it
     * @param crew whose it is, folded
     * @param sentence what is said above it when it comes back
     */
    public record Kept(String packed, String crew, String sentence) {}

    public Saved {
        if (!isPath(to)) {
            throw new IllegalArgumentException("not a path of this server: " + to);
        }
    }

    /** Whether a text is a path of this server, to which a browser may be sent on. */
    public static boolean isPath(String text) {
        return text.matches("/([^/\\\\].*)?") && text.chars().noneMatch(c -> c < ' ');
    }

    public static Saved to(String path) {
        return new Saved(path, Optional.empty(), Optional.empty());
    }

    /** The same with a line about what was done: {@code 3½ hours logged on 25 November.} */
    public Saved saying(String text) {
        return new Saved(to, Optional.of(new Frame.Flash(text, flash.flatMap(Frame.Flash::undo))), kept);
    }

    /** The same, but on to the form that was sent when the passphrase was wanted first, where it is this person's. */
    public Saved orBackTo(String packed, String crew, String sentence) {
        return new Saved(
                to, flash, packed.isEmpty() ? Optional.empty() : Optional.of(new Kept(packed, crew, sentence)));
    }

    /**
     * The same with a button beside its line that takes the change back; without a line there is no button.
     *
     * @param version the project's version that the change made
     */
    Saved undo(long version) {
        Frame.Undo undo =
                new Frame.Undo(UNDO, "Take it back", Map.of("do", "undo", "change", Long.toString(version), "to", to));
        return new Saved(to, flash.map(line -> new Frame.Flash(line.text(), Optional.of(undo))), kept);
    }
}
