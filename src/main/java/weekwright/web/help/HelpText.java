package weekwright.web.help;

import weekwright.notes.Markdown;
import weekwright.render.Templates;

/**
 * A page of the help as it is written: a sentence that says what the sheets are for, then what one does there and an
 * example.
 *
 * @param lead one sentence, as plain text
 * @param html the rest
 */
record HelpText(String lead, String html) {

    static HelpText of(Templates templates, String name) {
        String file = "help/texts/" + name + ".md";
        String text = templates.text(file).orElseThrow(() -> new IllegalStateException("no text " + file));
        String lead = text.lines().findFirst().orElse("");
        return new HelpText(lead, Markdown.html(text.substring(lead.length()).strip()));
    }
}
