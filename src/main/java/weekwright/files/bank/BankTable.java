package weekwright.files.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.files.csv.CsvText;
import weekwright.funds.BankSource.Divider;

/** A file as rows of cells, the lines before its headings among them. */
public record BankTable(List<Row> rows) {
    private static final int LOOKED_AT = 40;

    /** @param line physical line of its start */
    public record Row(int line, List<String> cells) {
        /** The text of a column, counted from 1; empty where the row has no such cell. */
        public String cell(int column) {
            return column <= cells.size() ? cells.get(column - 1).strip() : "";
        }
    }

    /** Empty where the text cannot be taken apart: then a fault with its line was added. */
    public static Optional<BankTable> of(String file, String text, Divider divider, Problems problems) {
        return CsvText.parse(file, text, divider.sign(), problems).map(csv -> {
            List<Row> rows = new ArrayList<>();
            rows.add(new Row(csv.header().line(), csv.header().cells()));
            csv.records().forEach(line -> rows.add(new Row(line.line(), line.cells())));
            return new BankTable(List.copyOf(rows));
        });
    }

    /** The divider that parts the most of the first lines into the same number of cells, more than one. */
    public static Divider guess(String text) {
        List<String> lines =
                text.lines().filter(line -> !line.isBlank()).limit(LOOKED_AT).toList();
        Divider best = Divider.COMMA;
        long most = 0;
        for (Divider divider : Divider.values()) {
            List<Long> counts = lines.stream()
                    .map(line -> outsideQuotes(line, divider.sign()))
                    .filter(count -> count > 0)
                    .toList();
            long agree = counts.stream()
                    .mapToLong(one -> counts.stream().filter(one::equals).count() * 100 + Math.min(one, 99))
                    .max()
                    .orElse(0);
            if (agree > most) {
                most = agree;
                best = divider;
            }
        }
        return best;
    }

    private static long outsideQuotes(String line, char sign) {
        boolean quoted = false;
        long count = 0;
        for (int i = 0; i < line.length(); i++) {
            quoted ^= line.charAt(i) == '"';
            count += !quoted && line.charAt(i) == sign ? 1 : 0;
        }
        return count;
    }

    public int columns() {
        return rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
    }

    /** The rows after those that are passed over. */
    public List<Row> after(int skip) {
        return rows.subList(Math.min(skip, rows.size()), rows.size());
    }
}
