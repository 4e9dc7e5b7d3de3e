package weekwright.funds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Money;
import weekwright.build.Settings;

/**
 * Money in the bank on the evening of a day, by rule 85: for each account the last counted balance and the rows after its
 * day; without one, the rows from the opening day on, and the opening cash on the account of the earliest row. Exact
 * sums; throws ArithmeticException past 64 bits.
 */
public final class Balance {
    private Balance() {}

    /** All accounts together. */
    public static Money on(LocalDate day, Settings settings, List<LedgerEntry> ledger) {
        return accounts(day, settings, ledger).values().stream().reduce(Money.ZERO, Money::plus);
    }

    /**
     * What of it is not theirs (rule 135): the percent that is put by of the net pay-outs since the last tax payment, rounded half
     * up, at least 0. A pay-out of the day of a payment came before it.
     */
    public static Money putBy(LocalDate day, Settings settings, List<LedgerEntry> ledger) {
        LocalDate paid = ledger.stream()
                .filter(entry -> entry.kind() == LedgerEntry.Kind.TAX
                        && entry.amount().isNegative()
                        && !entry.date().isAfter(day))
                .map(LedgerEntry::date)
                .reduce(settings.openingDate().minusDays(1), (a, b) -> a.isAfter(b) ? a : b);
        long in = ledger.stream()
                .filter(entry -> entry.kind() == LedgerEntry.Kind.PAYOUT
                        && entry.date().isAfter(paid)
                        && !entry.date().isAfter(day))
                .mapToLong(entry -> entry.amount().minor())
                .reduce(0, Math::addExact);
        BigDecimal share = settings.putByPercent().value().movePointLeft(2);
        return new Money(BigDecimal.valueOf(Math.max(0, in))
                .multiply(share)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact());
    }

    /** What orders may use: all accounts without what is put by. */
    public static Money available(LocalDate day, Settings settings, List<LedgerEntry> ledger) {
        return on(day, settings, ledger).minus(putBy(day, settings, ledger));
    }

    /**
     * The account of the opening cash: that of the earliest row, of two on a day the one entered first. A row of later that names
     * no account brings no second opening cash.
     */
    public static String opened(List<LedgerEntry> ledger) {
        return ledger.stream()
                .min(Comparator.comparing(LedgerEntry::date))
                .map(LedgerEntry::account)
                .orElse("");
    }

    /** By account; the project's one account has the empty name. */
    public static Map<String, Money> accounts(LocalDate day, Settings settings, List<LedgerEntry> ledger) {
        Map<String, LocalDate> counted = new LinkedHashMap<>();
        Map<String, Money> sums = new LinkedHashMap<>();
        String opening = opened(ledger);
        if (!day.isBefore(settings.openingDate())) {
            sums.put(opening, settings.openingCash());
        }
        for (LedgerEntry entry : ledger) {
            boolean later =
                    counted.get(entry.account()) == null || !entry.date().isBefore(counted.get(entry.account()));
            if (entry.kind() == LedgerEntry.Kind.COUNTED && !entry.date().isAfter(day) && later) {
                counted.put(entry.account(), entry.date());
                sums.put(entry.account(), entry.amount());
            }
        }
        for (LedgerEntry entry : ledger) {
            LocalDate last = counted.get(entry.account());
            boolean counts = last == null
                    ? !entry.date().isBefore(settings.openingDate())
                    : entry.date().isAfter(last);
            if (entry.kind() != LedgerEntry.Kind.COUNTED
                    && counts
                    && !entry.date().isAfter(day)) {
                sums.merge(entry.account(), entry.amount(), Money::plus);
            }
        }
        return sums;
    }
}
