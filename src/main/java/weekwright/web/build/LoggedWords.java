package weekwright.web.build;

import weekwright.build.TaskFigures;
import weekwright.render.Formats;

/** How many hours are logged and left, in words, the verb in agreement with them. */
final class LoggedWords {
    private LoggedWords() {}

    /** {@code 1 hour is logged}, {@code 31½ hours are logged}. */
    static String logged(TaskFigures hours) {
        return Formats.hoursCounted(hours.logged(), "hour is", "hours are") + " logged";
    }

    /** {@code 31½ hours are logged, about 12 hours are left by the estimates}. */
    static String loggedAndLeft(TaskFigures hours) {
        return logged(hours) + ", "
                + (hours.left() == 0
                        ? "nothing is left by the estimates"
                        : "about " + Formats.hoursCounted(hours.left(), "hour is", "hours are")
                                + " left by the estimates");
    }
}
