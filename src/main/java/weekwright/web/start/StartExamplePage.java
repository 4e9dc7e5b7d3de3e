package weekwright.web.start;

import weekwright.history.Examples;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A few example rows, put in and taken out again. */
public final class StartExamplePage implements Page {
    /** @param there whether some are in */
    public record View(Form put, Form out, boolean there) {}

    @Override
    public View show(Request request) {
        return new View(request.form("put"), request.form("out"), request.read(Examples::there));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        if (request.form().act().equals("out")) {
            return request.save(write -> {
                Examples.TakenOut out = Examples.takeOut(write);
                String said = out.gone() == 0
                        ? "Nothing of the example was taken out."
                        : Formats.sentence(Formats.counted(out.gone(), "row", "rows")) + " of the example "
                                + (out.gone() == 1 ? "is" : "are") + " taken out.";
                String stays = out.stays().isEmpty() ? "" : " What stays: " + String.join("; ", out.stays()) + ".";
                return Saved.to("/start/example").saying(said + stays);
            });
        }
        return request.save(write -> {
            Examples.put(write, request.today());
            return Saved.to("/build").saying("The example is in. Take it out again whenever you like, under Start.");
        });
    }
}
