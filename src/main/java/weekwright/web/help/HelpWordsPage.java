package weekwright.web.help;

import java.util.List;
import weekwright.render.Templates;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The words of the program, each in a line. */
public final class HelpWordsPage implements Page {
    private final Templates templates;

    /** @param words in the order of the alphabet */
    public record View(List<HelpWords.Word> words) {}

    public HelpWordsPage(Templates templates) {
        this.templates = templates;
    }

    @Override
    public View show(Request request) {
        return new View(HelpWords.of(templates, request.access()));
    }
}
