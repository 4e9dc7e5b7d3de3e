package weekwright.web.funds;

import java.util.List;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** What supporters can pledge, and what of it arrives. */
public final class FundsLevelsPage implements Page {
    public record View(List<Line> lines) {}

    /**
     * A line.
     *
     * @param fees what is taken off, in words
     * @param arrives when it is paid out
     */
    public record Line(String id, String name, Money amount, String charged, String fees, String arrives) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        return request.read(read -> new View(PledgeLevelStore.TABLE.values(read).stream()
                .map(level -> line(level, formats))
                .toList()));
    }

    private static Line line(PledgeLevel level, Formats formats) {
        String percent =
                level.feePercent().map(Quantity::text).map(text -> text + " %").orElse("");
        String fixed =
                level.feeFixed().map(money -> formats.moneyExact(money.minor())).orElse("");
        String fees = percent.isEmpty() || fixed.isEmpty() ? percent + fixed : percent + " and " + fixed;
        String declined = level.declined()
                .filter(share -> share.value().signum() > 0)
                .map(share -> ", " + share.text() + " % declined")
                .orElse("");
        int days = level.payoutDays().orElse(0);
        return new Line(
                level.id().value(),
                level.name(),
                level.amount(),
                LevelFields.charged(level),
                (fees.isEmpty() ? "no fee" : fees) + declined,
                days == 0 ? "the same day" : Formats.count(days, "day") + " later");
    }
}
