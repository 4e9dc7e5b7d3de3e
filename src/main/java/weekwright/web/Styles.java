package weekwright.web;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import weekwright.render.Templates;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** The style sheets of the templates: {@code /css/base.css}. */
final class Styles implements Fragment {
    private final Templates templates;

    Styles(Templates templates) {
        this.templates = templates;
    }

    @Override
    public Answer answer(Request request) {
        String name = request.part("name");
        if (!name.endsWith(".css")) {
            throw new NotFound("There is no style sheet " + name + ".");
        }
        String text = templates
                .css(name.substring(0, name.length() - 4))
                .orElseThrow(() -> new NotFound("There is no style sheet " + name + "."));
        return new Answer.Body(
                200,
                "text/css; charset=utf-8",
                text.getBytes(StandardCharsets.UTF_8),
                Map.of("Cache-Control", "no-cache"));
    }
}
