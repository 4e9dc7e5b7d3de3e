package weekwright.web.funds;

import java.util.List;
import weekwright.base.Money;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Costs and income that come again, and when. */
public final class FundsRegularPage implements Page {
    public record View(List<Line> lines) {}

    /**
     * A line.
     *
     * @param every how often, in words
     * @param time from when to when
     */
    public record Line(String id, String name, Money amount, String every, String spread, String time) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        return request.read(read -> new View(RegularItemStore.TABLE.values(read).stream()
                .map(item -> line(item, formats))
                .toList()));
    }

    private static Line line(RegularItem item, Formats formats) {
        String every = every(item);
        String from = item.from().map(day -> "from " + formats.dateShort(day)).orElse("");
        String to = item.to().map(day -> "to " + formats.dateShort(day)).orElse("");
        return new Line(
                item.id().value(),
                item.name(),
                item.amount(),
                every,
                item.spread()
                        .filter(spread -> spread.value().signum() > 0)
                        .map(spread -> "more or less " + spread.text() + " %")
                        .orElse(""),
                (from + " " + to).strip());
    }

    /** How often, in words. */
    static String every(RegularItem item) {
        return switch (item.every()) {
            case MONTH -> "every month";
            case WEEK -> "every week";
            case YEAR -> "every year";
            case EPISODE -> "every published episode";
        };
    }
}
