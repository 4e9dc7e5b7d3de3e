package weekwright.funds;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Money;

/**
 * A booking as a bank's file has it.
 *
 * @param line physical line of its start, from 1
 * @param amount plus in, minus out
 * @param balance of the account after it
 */
public record BankRow(
        int line,
        LocalDate date,
        Money amount,
        String payee,
        String reference,
        Optional<Money> balance,
        Optional<Money> gross,
        Optional<Money> fee) {}
