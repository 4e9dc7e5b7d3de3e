package weekwright.web.parts;

import java.util.ArrayList;
import java.util.List;
import weekwright.build.Emergency;
import weekwright.render.Frame;

/** What stands on every printed sheet for an emergency, as labelled cells; what is not set is left out. */
public final class EmergencyCells {
    private EmergencyCells() {}

    public static List<Frame.Cell> of(Emergency set) {
        List<Frame.Cell> cells = new ArrayList<>();
        add(cells, "Call", set.number());
        add(cells, "We are at", set.address());
        add(cells, "Way in", set.wayIn());
        add(cells, "First aider", set.firstAider());
        add(cells, "Kit", set.kit());
        add(cells, "Shut-offs", set.shutOffs());
        return cells;
    }

    private static void add(List<Frame.Cell> cells, String label, String text) {
        if (!text.isEmpty()) {
            cells.add(new Frame.Cell(label, text));
        }
    }
}
