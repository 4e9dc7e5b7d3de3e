package weekwright.web.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Quantity;
import weekwright.funds.StockItem;
import weekwright.render.Formats;

/** When something in the yard is dry or ready, in words. */
final class StockReady {
    private StockReady() {}

    /** "about 30 December, 1 December to 5 April"; "ready". */
    static String words(StockItem item, Formats formats) {
        if (item.undated()) {
            return "wet, not said when dry";
        }
        if (item.readyLikely().isEmpty()) {
            return "ready";
        }
        LocalDate from = item.since().orElse(formats.today());
        LocalDate likely = after(from, item.readyLikely().get());
        Optional<LocalDate> low = item.readyLow().map(days -> after(from, days));
        Optional<LocalDate> high = item.readyHigh().map(days -> after(from, days));
        if (!likely.isAfter(formats.today())) {
            return high.filter(day -> day.isAfter(formats.today()))
                    .map(day -> "probably ready, at worst " + formats.far(day))
                    .orElse("probably ready");
        }
        return "about " + formats.far(likely)
                + (low.isPresent() && high.isPresent()
                        ? ", at best " + formats.far(low.get()) + ", at worst " + formats.far(high.get())
                        : "");
    }

    private static LocalDate after(LocalDate day, Quantity days) {
        return day.plusDays(days.value().longValue());
    }
}
