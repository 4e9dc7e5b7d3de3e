package weekwright.render.chart;

import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Model;

final class AheadUpright {
    AheadUpright(Model model, Formats formats) {}

    String draw() {
        return "";
    }
}
