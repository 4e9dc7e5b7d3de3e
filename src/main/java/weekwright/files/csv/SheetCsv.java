package weekwright.files.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A table as CSV for a spreadsheet: with a byte order mark, so that it sees UTF-8, and a quote mark before every text that it
 * would run as a formula (ASVS 5.0.0, 1.2.10; the signs of full width are from memory of the OWASP page on CSV injection).
 */
public final class SheetCsv {
    private static final Pattern FORMULA = Pattern.compile("[=+\\-@\t\r\n\u0000\uFF1D\uFF0B\uFF0D\uFF20]");

    private final StringBuilder out = new StringBuilder("\uFEFF");
    private final List<String> cells = new ArrayList<>();

    public SheetCsv(String... header) {
        RecordCsv.line(List.of(header), out);
    }

    /** A cell of words: never run. */
    public SheetCsv text(String text) {
        cells.add(FORMULA.matcher(text).lookingAt() ? "'" + text : text);
        return this;
    }

    /** A cell of a number, an amount or a date that we wrote: as it is. */
    public SheetCsv figure(String text) {
        cells.add(text);
        return this;
    }

    public SheetCsv end() {
        RecordCsv.line(cells, out);
        cells.clear();
        return this;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
