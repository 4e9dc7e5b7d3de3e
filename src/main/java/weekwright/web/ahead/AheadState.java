package weekwright.web.ahead;

import java.nio.charset.StandardCharsets;
import weekwright.forecast.Forecasts;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** Whether another forecast is there, as JSON: {@code {"key": "12-2026-11-25-1000", "moving": true, "done": 40, "of": 100}}. */
public final class AheadState implements Fragment {
    @Override
    public Answer answer(Request request) {
        Forecasts.Look look = request.forecast();
        String json = "{\"key\": \"" + look.key() + "\", \"moving\": "
                + (look.state() == Forecasts.State.RUNNING) + ", \"done\": " + look.done() + ", \"of\": " + look.of()
                + "}";
        return Answer.body("application/json; charset=utf-8", json.getBytes(StandardCharsets.UTF_8));
    }
}
