package weekwright.cli;

import weekwright.render.Formats;

/** Lines of a text under headings. No-break spaces become plain ones: a terminal breaks where it likes. */
final class Sheet {
    private final StringBuilder text = new StringBuilder();

    /** A heading, after an empty line but at the top. */
    Sheet head(String words) {
        if (!text.isEmpty()) {
            text.append('\n');
        }
        return raw("", words);
    }

    /** A line under the heading. */
    Sheet line(String words) {
        return raw("  ", words);
    }

    /** A line that belongs to the one before. */
    Sheet under(String words) {
        return raw("      ", words);
    }

    private Sheet raw(String indent, String words) {
        text.append(indent).append(words.replace(Formats.NBSP, " ")).append('\n');
        return this;
    }

    String text() {
        return text.toString();
    }
}
