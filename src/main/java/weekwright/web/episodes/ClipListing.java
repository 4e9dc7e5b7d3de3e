package weekwright.web.episodes;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.base.Ref;
import weekwright.base.Rows;
import weekwright.base.Shape;
import weekwright.build.Said;
import weekwright.episodes.Clip;
import weekwright.files.csv.RecordCsv;

/** A card's clips as a listing in CSV: the script's, a camera's or a typed one. */
public final class ClipListing {
    private static final String FILE = "listing";
    private static final Id NONE = new Id("clip.0");

    private ClipListing() {}

    /** A line of it; every column but clip and date may be absent. */
    public record Line(
            @Bounds(max = 200) String clip,
            LocalDate date,
            Optional<LocalTime> time,
            @Bounds(min = 0, max = 10000) Optional<Quantity> minutes,
            @Bounds(max = 200) String size,
            @Bounds(max = 200) String card,
            @Ref("tasks") Optional<Id> task,
            @Bounds(min = 1, max = 5) Optional<Integer> rating,
            @Bounds(max = 2000) String remarks) {

        Clip clip(String otherCard, Optional<Id> chosen, Optional<Id> who) {
            return new Clip(NONE, date, card(otherCard), clip, chosen, minutes, size, who, rating, remarks, time);
        }

        String card(String other) {
            return card.isEmpty() ? other : card;
        }
    }

    /**
     * Reads it; all faults at once, each with its line.
     *
     * @param card of the lines that name none
     * @param today in the project's zone
     */
    static List<Line> read(String text, String card, Reading reading, LocalDate today, Problems problems) {
        Rows<Line> rows = RecordCsv.read(
                        Shape.of(Line.class),
                        FILE,
                        text,
                        reading,
                        (line, found) -> checked(line, today, found),
                        problems)
                .rows();
        Map<String, Integer> seen = new HashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            Line line = rows.get(i);
            int at = rows.places().get(i).line();
            Integer first = seen.putIfAbsent((line.card(card) + "/" + line.clip()).toLowerCase(Locale.ROOT), at);
            if (first != null) {
                problems.add(Problem.fault(
                                "clip", line.clip(), "stands in line " + first + " already", "take one of the two out")
                        .at(FILE, at));
            }
        }
        return new ArrayList<>(rows.list());
    }

    private static Line checked(Line line, LocalDate today, Problems problems) {
        if (line.clip().isEmpty()) {
            problems.fault("clip", "", "is missing", "write its name on the card");
        }
        if (line.minutes().map(minutes -> minutes.doubleValue() == 0).orElse(false)) {
            problems.fault("minutes", "0", "is no footage", "write its length in minutes, or leave it empty");
        }
        if (line.date().isAfter(today)) {
            problems.fault(
                    "date",
                    line.date().toString(),
                    "is after today, " + Said.day(today),
                    "set the camera's clock, and write the day it was taken");
        }
        return line;
    }
}
