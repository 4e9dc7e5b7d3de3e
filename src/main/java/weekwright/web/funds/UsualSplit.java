package weekwright.web.funds;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;
import weekwright.funds.UsualRate;
import weekwright.render.Formats;

/**
 * A level of which a month's form holds the count alone, split into joined and left by the usual rate.
 *
 * @param level its id
 * @param sentence where the figures come from
 */
record UsualSplit(String level, int joined, int left, String sentence) {
    /** @param typed what stands in a field of the form */
    static List<UsualSplit> all(Read read, YearMonth month, YearMonth now, UnaryOperator<String> typed) {
        List<SupporterMonth> counts = SupporterMonthStore.TABLE.values(read);
        List<SupporterMonth> next = SupporterMonthStore.of(read, month.plusMonths(1)).stream()
                .map(Stored::value)
                .toList();
        List<UsualSplit> splits = new ArrayList<>();
        for (PledgeLevel level : PledgeLevelStore.TABLE.values(read)) {
            Id id = level.id();
            String start = typed.apply("start." + id);
            boolean alone = typed.apply("joined." + id).isEmpty()
                    && typed.apply("left." + id).isEmpty();
            if (alone && start.matches("[0-9]{1,6}")) {
                next.stream()
                        .filter(row -> row.level().same(id))
                        .forEach(row ->
                                splits.add(of(level, Integer.parseInt(start), row, UsualRate.of(counts, level, now))));
            }
        }
        return splits;
    }

    private static UsualSplit of(PledgeLevel level, int start, SupporterMonth next, UsualRate rate) {
        UsualRate.Split split = rate.split(start, next.start());
        String said = rate.months() == 0
                ? "no month says yet who left"
                : Formats.grouped(rate.left()) + " left of " + Formats.grouped(rate.start()) + " counted in "
                        + Formats.count(rate.months(), "month");
        return new UsualSplit(
                level.id().value(),
                split.joined(),
                split.left(),
                level.name() + ": " + said + ", which makes " + Formats.grouped(split.left()) + " of these "
                        + Formats.grouped(start) + "; with " + Formats.grouped(next.start()) + " on the first of "
                        + Formats.monthYear(next.month().atDay(1)) + ", " + Formats.grouped(split.joined())
                        + " joined.");
    }
}
