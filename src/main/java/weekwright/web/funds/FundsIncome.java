package weekwright.web.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.Settings;
import weekwright.engine.simulate.Charge;
import weekwright.funds.LedgerEntry;
import weekwright.funds.PledgeLevel;
import weekwright.funds.SupporterMonth;
import weekwright.render.Formats;

/**
 * Supporters month by month, and what their pledges should have brought against what was paid out. A charge is made on those of
 * the 1st, on the 1st or at a publication; it is expected in the month of its pay-out (rules 76, 82, 83).
 */
final class FundsIncome {
    private static final int MONTHS = 12;

    private FundsIncome() {}

    /**
     * A month in words.
     *
     * @param off received less expected; in the month that runs, what is not in yet
     */
    public record Line(
            String month,
            long start,
            long joined,
            long left,
            boolean surge,
            String expected,
            String received,
            String off) {}

    /** The last twelve whole months with a count or a pay-out and the one that runs, newest first. */
    static List<Line> lines(
            LocalDate today,
            Settings settings,
            List<PledgeLevel> levels,
            List<SupporterMonth> counts,
            List<LocalDate> published,
            List<LedgerEntry> ledger,
            Formats formats) {
        Map<YearMonth, Long> expected = expected(today, settings, levels, counts, published);
        List<Line> lines = new ArrayList<>();
        for (int back = 0; back <= MONTHS; back++) {
            YearMonth month = YearMonth.from(today).minusMonths(back);
            List<SupporterMonth> rows =
                    counts.stream().filter(row -> row.month().equals(month)).toList();
            long received = received(ledger, month, today);
            long due = expected.getOrDefault(month, 0L);
            if (!rows.isEmpty() || received != 0) {
                lines.add(new Line(
                        Formats.monthYear(month.atDay(1)) + (back == 0 ? " so far" : ""),
                        rows.stream().mapToLong(SupporterMonth::start).sum(),
                        rows.stream().mapToLong(row -> row.joined().orElse(0)).sum(),
                        rows.stream().mapToLong(row -> row.left().orElse(0)).sum(),
                        rows.stream().anyMatch(SupporterMonth::surge),
                        formats.money(due),
                        formats.money(received),
                        back == 0 && received < due
                                ? formats.money(due - received) + " not in yet"
                                : formats.moneySigned(received - due)));
            }
        }
        return lines;
    }

    /** What was paid out in a month up to the day, in minor units. */
    static long received(List<LedgerEntry> ledger, YearMonth month, LocalDate today) {
        return ledger.stream()
                .filter(row -> row.kind() == LedgerEntry.Kind.PAYOUT
                        && YearMonth.from(row.date()).equals(month)
                        && !row.date().isAfter(today))
                .mapToLong(row -> row.amount().minor())
                .reduce(0, Math::addExact);
    }

    /** Net of all charges up to the day, in minor units, by the month of their pay-out. */
    static Map<YearMonth, Long> expected(
            LocalDate today,
            Settings settings,
            List<PledgeLevel> levels,
            List<SupporterMonth> counts,
            List<LocalDate> published) {
        Map<YearMonth, Long> sums = new HashMap<>();
        for (PledgeLevel level : levels) {
            Charge charge = Charge.of(
                    level.amount().minor(),
                    percent(level.feePercent().orElse(Quantity.ZERO)),
                    level.feeFixed().map(Money::minor).orElse(0L),
                    percent(level.declined().orElse(Quantity.ZERO)));
            for (SupporterMonth row : counts) {
                if (!row.level().same(level.id())) {
                    continue;
                }
                for (LocalDate on : charged(level, row.month(), settings, published)) {
                    LocalDate paid = on.plusDays(level.payoutDays().orElse(0));
                    if (!paid.isAfter(today)) {
                        sums.merge(YearMonth.from(paid), charge.net(row.start()), Math::addExact);
                    }
                }
            }
        }
        return sums;
    }

    private static List<LocalDate> charged(
            PledgeLevel level, YearMonth month, Settings settings, List<LocalDate> published) {
        if (level.charged() == PledgeLevel.Charged.MONTH) {
            return List.of(month.atDay(1));
        }
        return published.stream()
                .filter(day -> YearMonth.from(day).equals(month))
                .sorted()
                .limit(settings.publishing().chargesAMonth().orElse(Integer.MAX_VALUE))
                .toList();
    }

    private static double percent(Quantity quantity) {
        return quantity.value().doubleValue();
    }
}
