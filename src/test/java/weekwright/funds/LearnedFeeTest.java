package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Shape;

/** A level's fee from what its pay-outs kept back; every figure worked by hand. */
class LearnedFeeTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static PledgeLevel level(long amount, long fixed) {
        return new PledgeLevel(
                new Id("peg"),
                "Peg",
                new Money(amount),
                PledgeLevel.Charged.MONTH,
                Optional.empty(),
                Optional.of(new Money(fixed)),
                Optional.empty(),
                Optional.empty());
    }

    private static LedgerEntry payout(String date, long net, Optional<Long> gross, Optional<Long> fee, String payee) {
        LedgerEntry row = Ledger.entry(
                new Id("p-" + date),
                LocalDate.parse(date),
                new Money(net),
                LedgerEntry.Kind.PAYOUT,
                "bank",
                Optional.empty(),
                payee);
        Shape<LedgerEntry> shape = LedgerEntryStore.TABLE.shape();
        return shape.with(shape.with(row, "gross", gross.map(Money::new)), "fee", fee.map(Money::new));
    }

    private static Optional<LearnedFee> learned(PledgeLevel level, LedgerEntry... rows) {
        return LearnedFee.of(level, List.of(rows), TODAY);
    }

    /** 394.88 / 3.00 = 131.63 charges, × 0.20 = 26.33; 57.92 − 26.33 = 31.59, of 394.88 that is 8.001 %. */
    @Test
    void a_pay_out_gives_back_the_percent_beside_the_fixed_fee() {
        LedgerEntry january = payout("2026-01-06", 336_96, Optional.of(394_88L), Optional.of(57_92L), "PEG");
        assertThat(learned(level(3_00, 20), january)).hasValueSatisfying(fee -> {
            assertThat(fee.text()).isEqualTo("8");
            assertThat(fee.percent()).isEqualByComparingTo("8.00");
            assertThat(fee.charges()).isEqualTo(132);
            assertThat(fee.fits()).isTrue();
        });
    }

    /** 100.00 and 300.00 before fees, 5.00 and 25.01 kept: 30.01 of 400.00 is 7.5025 %; the mean of 5 % and 8.34 % would be 6.67 %. */
    @Test
    void pay_outs_are_summed_and_two_of_three_amounts_say_the_third() {
        assertThat(learned(
                        level(1_00, 0),
                        payout("2026-02-06", 95_00, Optional.of(100_00L), Optional.empty(), "peg"),
                        payout("2026-03-06", 274_99, Optional.empty(), Optional.of(25_01L), "peg")))
                .contains(new LearnedFee(
                        2,
                        LocalDate.of(2026, 2, 6),
                        LocalDate.of(2026, 3, 6),
                        new Money(400_00),
                        new Money(30_01),
                        400,
                        new BigDecimal("7.50")));
    }

    /** 0.125 % and 0.375 % lie half way: the even neighbours are 0.12 and 0.38. */
    @Test
    void half_a_hundredth_goes_to_the_even_one() {
        assertThat(learned(level(1_00, 0), payout("2026-02-06", 799_00, Optional.of(800_00L), Optional.empty(), "peg"))
                        .orElseThrow()
                        .text())
                .isEqualTo("0.12");
        assertThat(learned(level(1_00, 0), payout("2026-02-06", 797_00, Optional.of(800_00L), Optional.empty(), "peg"))
                        .orElseThrow()
                        .text())
                .isEqualTo("0.38");
    }

    /** 10 charges of 1.00 at 0.20 are 2.00, and only 1.00 was kept: −10 %. */
    @Test
    void a_fixed_fee_that_alone_is_more_than_was_kept_does_not_fit() {
        LearnedFee fee = learned(
                        level(1_00, 20), payout("2026-02-06", 9_00, Optional.of(10_00L), Optional.empty(), "peg"))
                .orElseThrow();
        assertThat(fee.text()).isEqualTo("-10");
        assertThat(fee.fits()).isFalse();
    }

    @Test
    void other_levels_days_to_come_and_rows_without_gross_or_fees_teach_nothing() {
        assertThat(learned(
                        level(3_00, 20),
                        payout("2026-02-06", 95_00, Optional.of(100_00L), Optional.empty(), "beam"),
                        payout("2026-12-06", 95_00, Optional.of(100_00L), Optional.empty(), "peg"),
                        payout("2026-03-06", 95_00, Optional.empty(), Optional.empty(), "peg")))
                .isEmpty();
    }
}
