package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Currency;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoneyTest {
    @ParameterizedTest
    @CsvSource({"12.5,2,1250,12.50", "1250,0,1250,1250", "1.25,3,1250,1.250", "-0.05,2,-5,-0.05", "+7,2,700,7.00"})
    void an_amount_is_read_and_written_with_all_digits_of_its_currency(String text, int digits, long minor, String out)
            throws Refused {
        Money money = Money.parse(text, Reading.file(digits));
        assertThat(money.minor()).isEqualTo(minor);
        assertThat(money.text(digits)).isEqualTo(out);
    }

    @Test
    void more_places_than_the_currency_has_are_refused() {
        assertThatThrownBy(() -> Money.parse("12.345", Reading.file(2)))
                .hasMessage("has more decimal places than the currency; write at most 2 places");
        assertThatThrownBy(() -> Money.parse("12.5", Reading.file(0)))
                .hasMessage("has more decimal places than the currency; write whole units");
        assertThatThrownBy(() -> Money.parse("5 €", Reading.form(2)))
                .hasMessage("is not an amount of money; write 12.50");
        assertThatThrownBy(() -> Money.parse("1".repeat(200), Reading.file(2)))
                .hasMessage("is too large; write at most twelve digits");
    }

    /** A remedy that is typed as it stands is taken. */
    @Test
    void three_digits_after_a_point_are_refused_with_what_the_currency_can_hold() throws Refused {
        assertThatThrownBy(() -> Money.parse("12.345", Reading.form(2)))
                .hasMessage("can be read as 12.345 or as 12345; write 12345, or 12.34");
        assertThat(Money.parse("12.34", Reading.form(2)).minor()).isEqualTo(1234);
        assertThatThrownBy(() -> Money.parse("12,345", Reading.form(3)))
                .hasMessage("can be read as 12.345 or as 12345; write 12345, or 12.3450 with the point");
        assertThat(Money.parse("12.3450", Reading.form(3)).minor()).isEqualTo(12345);
    }

    /** Digits against java.util.Currency, which carries the list of ISO 4217. */
    @Test
    void the_digits_of_every_currency_of_iso_4217_are_known() throws Refused {
        for (Currency currency : Currency.getAvailableCurrencies()) {
            if (currency.getDefaultFractionDigits() >= 0) {
                assertThat(Money.digits(currency.getCurrencyCode())).isEqualTo(currency.getDefaultFractionDigits());
            }
        }
        assertThat(Money.digits("EUR")).isEqualTo(2);
        assertThat(Money.digits("JPY")).isZero();
        assertThat(Money.digits("KWD")).isEqualTo(3);
        for (String wrong : new String[] {"EURO", "XXX", "BTC", ""}) {
            assertThatThrownBy(() -> Money.digits(wrong))
                    .hasMessage("is not a currency of ISO 4217; write its three letters, such as EUR");
        }
        assertThatThrownBy(() -> Money.digits("eur")).hasMessage("is not a currency of ISO 4217; write EUR");
    }

    @Test
    void a_sum_that_leaves_the_range_of_long_fails_loudly() {
        assertThatThrownBy(() -> new Money(Long.MAX_VALUE).plus(new Money(1))).isInstanceOf(ArithmeticException.class);
    }
}
