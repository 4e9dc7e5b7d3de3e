package weekwright.web.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import weekwright.base.Quantity;
import weekwright.forecast.Lessons;
import weekwright.forecast.PurchaseLessons;
import weekwright.funds.Material;
import weekwright.render.Formats;

/** What received lines teach of prices and leads, in words. */
public final class PurchaseWords {
    private PurchaseWords() {}

    /** Of all bought lines. */
    public static String prices(PurchaseLessons lessons) {
        return lessons.prices()
                .map(ratio -> "Things cost " + times(ratio.p50()) + " times the likely price" + range(ratio) + ", from "
                        + Formats.counted(ratio.finished(), "line", "lines") + " received and paid.")
                .orElse("Nothing that was bought is received and paid yet. Until then things are taken to cost what is"
                        + " written down for them.");
    }

    /** Of one supplier. */
    public static String lead(PurchaseLessons.Lead one) {
        return Formats.sentence(one.name()) + " takes " + times(one.ratio().p50()) + " times the likely lead"
                + range(one.ratio()) + ", from " + Formats.counted(one.orders().size(), "order", "orders") + ".";
    }

    /** What a line's own supplier and its like teach for it, the forecast having reckoned with it already. */
    public static List<String> of(PurchaseLessons lessons, Material line) {
        List<String> said = new ArrayList<>();
        lessons.lead(line.supplier()).ifPresent(one -> {
            String here = line.leadLikely()
                    .filter(days -> days.compareTo(Quantity.ZERO) > 0)
                    .map(days -> " Of the " + days.text() + (days.equals(Quantity.ONE) ? " day" : " days")
                            + " written here it makes "
                            + Math.round(days.doubleValue() * one.ratio().p50()) + ".")
                    .orElse("");
            said.add(lead(one) + here);
        });
        if (line.sourceOrDefault() == Material.Source.BOUGHT && lessons.prices().isPresent()) {
            said.add(prices(lessons));
        }
        if (!said.isEmpty()) {
            said.add("The forecast reckons with this by itself; price and lead stay as the supplier names them.");
        }
        return said;
    }

    private static String range(Lessons.Ratio ratio) {
        return ", four chances in five between " + times(ratio.p10()) + " and " + times(ratio.p90());
    }

    /** "1.08". */
    public static String times(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
