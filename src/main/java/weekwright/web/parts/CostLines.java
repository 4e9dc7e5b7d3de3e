package weekwright.web.parts;

import java.util.ArrayList;
import java.util.List;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.funds.LedgerEntry;
import weekwright.funds.StageCosts;
import weekwright.render.Formats;

/** What stages cost, as lines of a table. */
public final class CostLines {
    private CostLines() {}

    /**
     * A line of one stage.
     *
     * @param link address of the material line; empty for the others
     * @param entries the rows of the books that paid it
     */
    public record Line(
            String link, String what, Money estimate, Money committed, Money spent, Money left, List<Entry> entries) {}

    /** A row of the books. */
    public record Entry(String link, String said) {}

    public static List<Line> of(StageCosts costs, Formats formats) {
        return costs.lines().stream().map(line -> line(line, formats)).toList();
    }

    private static Line line(StageCosts.Line line, Formats formats) {
        List<Entry> entries = new ArrayList<>();
        line.entries().forEach(row -> {
            LedgerEntry entry = row.value();
            entries.add(new Entry(
                    "/funds/entries/" + row.row() + "/edit",
                    formats.moneyExact(-entry.amount().minor()) + " on " + formats.dateShort(entry.date())
                            + (entry.payee().isEmpty() ? "" : ", " + entry.payee())));
        });
        String what = switch (line.kind()) {
            case MATERIAL -> line.item();
            case ROUGH -> "not listed yet, roughly";
            case OTHER -> "paid beside the lines";
        };
        return new Line(
                line.material()
                        .map(Id::value)
                        .map(id -> "/build/materials/" + id)
                        .orElse(""),
                what,
                line.estimate(),
                line.committed(),
                line.spent(),
                line.left(),
                entries);
    }

    /** {@code It comes to €840, €40 over the estimate.} Empty where there is nothing to say. */
    public static String said(StageCosts costs, Formats formats) {
        if (costs.lines().isEmpty()) {
            return "";
        }
        long off = costs.together().minus(costs.estimate()).minor();
        return "It comes to " + formats.money(costs.together().minor())
                + (off == 0
                        ? ", as estimated."
                        : ", " + formats.money(Math.abs(off)) + (off > 0 ? " over" : " under") + " the estimate.");
    }
}
