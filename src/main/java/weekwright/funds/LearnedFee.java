package weekwright.funds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;

/**
 * What past pay-outs of a level kept back, as a fee in percent beside the level's fixed one: (fees − fixed × n) / gross, where
 * n = gross / amount is how often it was charged; half to even, two places.
 *
 * @param payouts how many said it
 * @param charges n, rounded
 * @param percent below 0 where the fixed fee alone comes to more than was kept
 */
public record LearnedFee(
        int payouts, LocalDate first, LocalDate last, Money gross, Money kept, long charges, BigDecimal percent) {
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    /**
     * Learns from the pay-outs up to a day that name the level and say two of gross, fees and net; empty without any.
     *
     * @param level its amount and its fixed fee are taken for all of them
     */
    public static Optional<LearnedFee> of(PledgeLevel level, List<LedgerEntry> ledger, LocalDate today) {
        List<LedgerEntry> said = ledger.stream()
                .filter(row -> row.kind() == LedgerEntry.Kind.PAYOUT
                        && !row.date().isAfter(today)
                        && row.payee().equalsIgnoreCase(level.id().value())
                        && (row.gross().isPresent() || row.fee().isPresent()))
                .toList();
        Money gross = said.stream().map(LearnedFee::gross).reduce(Money.ZERO, Money::plus);
        Money kept = said.stream().map(LearnedFee::kept).reduce(Money.ZERO, Money::plus);
        if (gross.minor() <= 0 || level.amount().minor() <= 0) {
            return Optional.empty();
        }
        BigDecimal before = BigDecimal.valueOf(gross.minor());
        BigDecimal amount = BigDecimal.valueOf(level.amount().minor());
        BigDecimal fixed =
                BigDecimal.valueOf(level.feeFixed().orElse(Money.ZERO).minor());
        BigDecimal over = BigDecimal.valueOf(kept.minor()).multiply(amount).subtract(fixed.multiply(before));
        return Optional.of(new LearnedFee(
                said.size(),
                said.stream().map(LedgerEntry::date).min(LocalDate::compareTo).orElseThrow(),
                said.stream().map(LedgerEntry::date).max(LocalDate::compareTo).orElseThrow(),
                gross,
                kept,
                before.divide(amount, 0, RoundingMode.HALF_EVEN).longValueExact(),
                over.multiply(HUNDRED).divide(before.multiply(amount), 2, RoundingMode.HALF_EVEN)));
    }

    private static Money gross(LedgerEntry row) {
        return row.gross().orElseGet(() -> row.amount().plus(row.fee().orElseThrow()));
    }

    private static Money kept(LedgerEntry row) {
        return row.fee().orElseGet(() -> row.gross().orElseThrow().minus(row.amount()));
    }

    /** Whether it can be a level's fee: neither below nothing nor more than all. */
    public boolean fits() {
        return percent.signum() >= 0 && percent.compareTo(HUNDRED) <= 0;
    }

    /** As it is typed, {@code 8} or {@code 7.95}. */
    public String text() {
        return percent.signum() == 0 ? "0" : percent.stripTrailingZeros().toPlainString();
    }
}
