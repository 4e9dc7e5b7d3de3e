package weekwright.files.year;

import java.util.List;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.files.csv.SheetCsv;
import weekwright.funds.StatementLine;

/** Statements as a table for a spreadsheet; every row says where it is from. */
public final class StatementSheet {
    private StatementSheet() {}

    public static String of(List<StatementLine> lines, int digits, String source) {
        SheetCsv sheet = new SheetCsv("month", "part", "what", "amount", "gross", "fee", "hours", "count", "source");
        for (StatementLine line : lines) {
            sheet.figure(line.month().toString())
                    .figure(Codec.word(line.part()))
                    .text(line.name())
                    .figure(line.amount().map(money -> money.text(digits)).orElse(""))
                    .figure(line.gross().map(money -> money.text(digits)).orElse(""))
                    .figure(line.fee().map(money -> money.text(digits)).orElse(""))
                    .figure(line.hours().map(Hours::text).orElse(""))
                    .figure(line.count().map(String::valueOf).orElse(""))
                    .text(source)
                    .end();
        }
        return sheet.toString();
    }
}
