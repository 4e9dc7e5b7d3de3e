package weekwright.web;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import weekwright.forecast.Forecasts;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Access;
import weekwright.web.kit.Request;
import weekwright.web.parts.Addresses;

/** The cells of the title block: when the forecast ran, what for, from how many futures, with which seed. */
public final class Provenance {
    private Provenance() {}

    static List<Frame.Cell> of(Request request) {
        List<Frame.Cell> cells = of(request, request.forecast());
        if (request.access() == Access.CREW) {
            request.read(read -> Addresses.history(read, request.address()))
                    .ifPresent(address -> cells.add(new Frame.Cell("History", "who changed this, and when", address)));
        }
        return cells;
    }

    /** The cells of one look at the forecast. */
    public static List<Frame.Cell> of(Request request, Forecasts.Look look) {
        List<Frame.Cell> cells = new ArrayList<>();
        look.shown().ifPresent(shown -> {
            LocalDateTime when =
                    LocalDateTime.ofInstant(shown.madeAt(), request.settings().zone());
            cells.add(new Frame.Cell("Forecast run", Formats.moment(when)));
            if (!shown.forecast().asOf().equals(request.today())) {
                Formats formats = request.formats();
                cells.add(new Frame.Cell("As of", formats.date(shown.forecast().asOf())));
            }
            String futures = Formats.grouped(shown.forecast().trials());
            cells.add(new Frame.Cell(
                    "From", shown.firstLook() ? "first look, " + futures + " futures" : futures + " futures drawn"));
            cells.add(new Frame.Cell("Seed", String.valueOf(shown.forecast().seed())));
        });
        switch (look.state()) {
            case RUNNING -> cells.add(new Frame.Cell("Under way", "a newer forecast is being drawn"));
            case FAILED -> cells.add(new Frame.Cell("Under way", "the last forecast did not finish"));
            case READY -> {}
        }
        return cells;
    }
}
