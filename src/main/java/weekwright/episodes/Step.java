package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;

/** The steps of an episode, in their order. */
public enum Step {
    FOOTAGE_COMPLETE("footage_complete", "footage complete"),
    ROUGH_CUT("rough_cut", "rough cut"),
    PICTURE_LOCK("picture_lock", "picture lock"),
    SOUND("sound", "sound"),
    CUT("cut", "ready"),
    PUBLISHED("published", "published");

    private final String column;
    private final String words;

    Step(String column, String words) {
        this.column = column;
        this.words = words;
    }

    /** The column that keeps its day. */
    public String column() {
        return column;
    }

    /** As it is said on a page. */
    public String words() {
        return words;
    }

    /** The day on which an episode reached it, or empty. */
    public Optional<LocalDate> day(Episode episode) {
        return switch (this) {
            case FOOTAGE_COMPLETE -> episode.footageComplete();
            case ROUGH_CUT -> episode.roughCut();
            case PICTURE_LOCK -> episode.pictureLock();
            case SOUND -> episode.sound();
            case CUT -> episode.cut();
            case PUBLISHED -> episode.published();
        };
    }
}
