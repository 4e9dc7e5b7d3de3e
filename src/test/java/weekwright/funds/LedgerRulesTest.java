package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.testkit.OakMill;

class LedgerRulesTest {
    private static LedgerEntry paid(String amount, String foreign, String currency, String rate) {
        return OakMill.row(
                LedgerEntry.class,
                "id",
                "l1",
                "date",
                "2026-11-03",
                "amount",
                amount,
                "kind",
                "material",
                "foreign_amount",
                foreign,
                "foreign_currency",
                currency,
                "rate",
                rate);
    }

    private static List<String> said(LedgerEntry entry) {
        Problems problems = new Problems();
        LedgerRules.check(entry, 2, problems);
        return problems.list().stream().map(Problem::text).toList();
    }

    /** Digits of ISO 4217 as java.util.Currency has them: JPY 0, GBP 2, KWD 3. */
    @ParameterizedTest
    @CsvSource({
        "100.5, JPY, 'foreign_amount: \"100.5\" has more decimal places than JPY; write whole units'",
        "1.005, GBP, 'foreign_amount: \"1.005\" has more decimal places than GBP; write at most 2 places'",
        "1.0005, KWD, 'foreign_amount: \"1.0005\" has more decimal places than KWD; write at most 3 places'"
    })
    void what_was_paid_has_the_places_of_its_currency(String foreign, String currency, String fault) {
        assertThat(said(paid("-5", foreign, currency, ""))).containsExactly(fault);
        assertThat(said(paid("-5", "1.005", "KWD", ""))).isEmpty();
        assertThat(said(paid("-5", "100", "JPY", ""))).isEmpty();
    }

    @Test
    void a_rate_that_does_not_make_the_amount_is_told_and_one_with_a_small_fee_is_not() {
        assertThat(said(paid("-116.50", "100", "GBP", "1.165"))).isEmpty();
        assertThat(said(paid("-118.00", "100", "GBP", "1.165"))).isEmpty();
        assertThat(said(paid("-116.50", "100", "GBP", "0.8584")))
                .containsExactly(
                        "rate: \"0.8584\" makes 85.84 of 100 GBP, and 116.50 stands there; the rate is what one"
                                + " GBP cost; leave it empty to take it from the two amounts");
    }

    @Test
    void the_rate_that_was_paid_is_kept_and_else_taken_from_the_two_amounts() {
        assertThat(paid("-116.50", "100", "GBP", "1.2").ratePaid(2)).contains("1.2");
        assertThat(paid("-116.50", "100", "GBP", "").ratePaid(2)).contains("1.165");
        assertThat(paid("-100.00", "16250", "JPY", "").ratePaid(2)).contains("0.00615385");
        assertThat(paid("-5", "", "", "").ratePaid(2)).isEmpty();
    }
}
