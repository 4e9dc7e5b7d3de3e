package weekwright.files.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.base.Money;
import weekwright.funds.StatementLine;

class StatementSheetTest {
    /** Digits of ISO 4217 as java.util.Currency has them. */
    @ParameterizedTest
    @CsvSource({
        "JPY, 1250, 350",
        "ISK, 1250, 350",
        "EUR, 12.50, 3.50",
        "USD, 12.50, 3.50",
        "KWD, 1.250, 0.350",
        "TND, 1.250, 0.350"
    })
    void amounts_have_all_digits_of_their_currency(String currency, String amount, String fee) {
        StatementLine line = new StatementLine(
                YearMonth.of(2026, 10),
                StatementLine.Part.INCOME,
                "\t=1+1",
                Optional.of(new Money(1250)),
                Optional.empty(),
                Optional.of(new Money(350)),
                Optional.empty(),
                Optional.of(3));
        String sheet = StatementSheet.of(
                List.of(line), Currency.getInstance(currency).getDefaultFractionDigits(), "-the mill");
        assertThat(sheet.lines().skip(1))
                .containsExactly("2026-10,income,'\t=1+1," + amount + ",," + fee + ",,3,'-the mill");
    }
}
