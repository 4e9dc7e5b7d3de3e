package weekwright.web;

import java.nio.charset.StandardCharsets;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** The project's version, as JSON: {@code {"version": 12}}. A page that was made from a lower one is not the newest. */
final class Newer implements Fragment {
    @Override
    public Answer answer(Request request) {
        String json = "{\"version\": " + request.version() + "}";
        return Answer.body("application/json; charset=utf-8", json.getBytes(StandardCharsets.UTF_8));
    }
}
