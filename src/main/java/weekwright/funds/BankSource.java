package weekwright.funds;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;

/**
 * How the files of one bank account or pay-out service are read. Columns are numbers from 1.
 *
 * @param account the account of the books that its rows belong to; empty for the project's one
 * @param skip rows before the first booking, the headings among them
 * @param amount signed, or without a sign beside {@code way}
 * @param way the column whose word says whether money goes out or comes in
 * @param out what went out, where two columns have the amounts
 * @param in what came in, where two columns have the amounts
 * @param gross of a pay-out before fees
 * @param kindIn what money that comes in usually is
 * @param kindOut what money that goes out usually is
 * @param people its rows name supporters: no name and no reference is read
 */
public record BankSource(
        Id id,
        String name,
        String account,
        Encoding encoding,
        Divider divider,
        @Bounds(min = 0, max = 200) int skip,
        DateOrder dateOrder,
        Decimals decimals,
        @Bounds(min = 1, max = 200) int date,
        @Bounds(min = 1, max = 200) Optional<Integer> payee,
        @Bounds(min = 1, max = 200) Optional<Integer> reference,
        @Bounds(min = 1, max = 200) Optional<Integer> amount,
        @Bounds(min = 1, max = 200) Optional<Integer> way,
        @Bounds(min = 1, max = 200) Optional<Integer> out,
        @Bounds(min = 1, max = 200) Optional<Integer> in,
        @Bounds(min = 1, max = 200) Optional<Integer> balance,
        @Bounds(min = 1, max = 200) Optional<Integer> currency,
        @Bounds(min = 1, max = 200) Optional<Integer> gross,
        @Bounds(min = 1, max = 200) Optional<Integer> fee,
        LedgerEntry.Kind kindIn,
        LedgerEntry.Kind kindOut,
        boolean people) {

    /** How bytes become letters; by line: UTF-8 where a line is that, else Windows-1252. */
    public enum Encoding {
        UTF_8,
        UTF_16,
        WINDOWS_1252,
        BY_LINE
    }

    /** What stands between two cells. */
    public enum Divider {
        COMMA(','),
        SEMICOLON(';'),
        TAB('\t'),
        BAR('|');

        private final char sign;

        Divider(char sign) {
            this.sign = sign;
        }

        public char sign() {
            return sign;
        }
    }

    /** In which order a date is written. */
    public enum DateOrder {
        YMD("year, month, day"),
        DMY("day, month, year"),
        MDY("month, day, year");

        private final String words;

        DateOrder(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What stands before the cents. */
    public enum Decimals {
        POINT,
        COMMA
    }
}
