package weekwright.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/**
 * Asked by a page that keeps entries while the server is out of reach, before it sends them: which project answers here, who
 * is known, which day it is, and the token that forms of this browser carry now. A stranger is told nothing but the door.
 */
final class Reach implements Fragment {
    private static final JsonMapper JSON = new JsonMapper();

    @Override
    public Answer answer(Request request) {
        boolean known = request.hasProject() && request.access() != Access.PUBLIC;
        Map<String, String> all = new LinkedHashMap<>();
        all.put("whose", known ? request.whose() : "");
        all.put("project", known ? request.settings().project().name() : "");
        all.put("person", known ? request.person().map(person -> person.name()).orElse("") : "");
        all.put("day", known ? request.today().toString() : "");
        all.put("csrf", known ? request.form("").csrf() : "");
        all.put("door", request.locked() ? "/account/log-in" : "/account");
        try {
            return Answer.body(
                    "application/json; charset=utf-8",
                    JSON.writeValueAsString(all).getBytes(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
