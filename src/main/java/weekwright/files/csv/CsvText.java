package weekwright.files.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import weekwright.base.Problem;
import weekwright.base.Problems;

/**
 * The records of one CSV text (RFC 4180), each with the physical line of its start, also after line breaks inside
 * quotes. The first line decides between comma and semicolon. Lines end with CRLF, LF or CR; empty lines are skipped.
 *
 * @param header the cells of the first record
 * @param records the others
 */
public record CsvText(Line header, List<Line> records) {
    private static final int MOST_RECORDS = 200_000;
    private static final int MOST_COLUMNS = 200;
    private static final int MOST_LINE = 1_000_000;

    /** One record. */
    public record Line(int line, List<String> cells) {}

    /** @return empty when the text cannot be taken apart: then a fault with its line was added */
    static Optional<CsvText> parse(String file, String text, Problems problems) {
        Optional<Problem> fault = firstLine(text);
        if (fault.isPresent()) {
            problems.add(fault.get().at(file, 1));
            return Optional.empty();
        }
        return parse(file, text, new Quotes(text, divider(text), true), problems);
    }

    /** As above, whatever the first line is; cells are parted by this sign, and a quote inside a cell without quotes stays. */
    public static Optional<CsvText> parse(String file, String text, char divider, Problems problems) {
        return parse(file, text, new Quotes(text, divider, false), problems);
    }

    private static Optional<CsvText> parse(String file, String text, Quotes quotes, Problems problems) {
        Optional<Problem> fault = quotes.walk();
        if (fault.isPresent()) {
            problems.add(fault.get().at(file, Math.max(fault.get().line(), 1)));
            return Optional.empty();
        }
        List<Line> lines = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(quotes.divider)
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                lines.add(new Line(quotes.starts.get(lines.size()), record.toList()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory", e);
        }
        if (lines.isEmpty()) {
            problems.add(Problem.fault("", "", "has no header", "write the columns' names into the first line")
                    .at(file, 0));
            return Optional.empty();
        }
        return Optional.of(new CsvText(lines.get(0), List.copyOf(lines.subList(1, lines.size()))));
    }

    private static String firstOf(String text) {
        return text.lines().findFirst().orElse("");
    }

    private static char divider(String text) {
        String first = firstOf(text);
        return first.indexOf(';') >= 0 && first.indexOf(',') < 0 ? ';' : ',';
    }

    private static Optional<Problem> firstLine(String text) {
        String first = firstOf(text);
        if (first.startsWith("sep=")) {
            return Optional.of(Problem.fault("", first, "is no header", "take this line out; the header decides"));
        }
        if (first.indexOf('\t') >= 0) {
            return Optional.of(Problem.fault("", "", "is divided by tabs", "save it as CSV with commas"));
        }
        return Optional.empty();
    }

    /** Walks through the text once: where records start, whether quotes stand as RFC 4180 has them, and the limits. */
    private static final class Quotes {
        private final String text;
        private final char divider;
        private final boolean strict;
        private final List<Integer> starts = new ArrayList<>();
        private int at;
        private int line = 1;

        Quotes(String text, char divider, boolean strict) {
            this.text = text;
            this.divider = divider;
            this.strict = strict;
        }

        Optional<Problem> walk() {
            while (at < text.length()) {
                if (lineEnd()) {
                    continue;
                }
                starts.add(line);
                if (starts.size() > MOST_RECORDS) {
                    return fault(line, "is past the " + MOST_RECORDS + " lines that are read", "split the file");
                }
                Optional<Problem> fault = record();
                if (fault.isPresent()) {
                    return fault;
                }
            }
            return Optional.empty();
        }

        /** One record up to and with its line end. */
        private Optional<Problem> record() {
            int start = at;
            int cells = 1;
            while (true) {
                Optional<Problem> fault = at < text.length() && text.charAt(at) == '"' ? quoted() : plain();
                if (fault.isPresent()) {
                    return fault;
                }
                if (at - start > MOST_LINE) {
                    return fault(line, "is longer than " + MOST_LINE + " characters", "shorten it");
                }
                if (at >= text.length() || lineEnd()) {
                    return Optional.empty();
                }
                at++;
                if (++cells > MOST_COLUMNS) {
                    return fault(line, "has more than " + MOST_COLUMNS + " cells", "look at the dividers");
                }
            }
        }

        private Optional<Problem> quoted() {
            int opened = line;
            at++;
            while (at < text.length()) {
                if (text.charAt(at) == '"') {
                    if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
                        at += 2;
                        continue;
                    }
                    at++;
                    return at >= text.length() || atEnd()
                            ? Optional.empty()
                            : fault(opened, "has text after a closing quote", "write a quote inside quotes twice");
                }
                if (!lineEnd()) {
                    at++;
                }
            }
            return fault(opened, "opens a quote that is never closed", "close it");
        }

        private Optional<Problem> plain() {
            while (at < text.length() && !atEnd()) {
                if (strict && text.charAt(at) == '"') {
                    return fault(
                            line,
                            "has a quote in a cell without quotes around it",
                            "put quotes around the whole cell and write the inner one twice");
                }
                at++;
            }
            return Optional.empty();
        }

        private boolean atEnd() {
            char c = text.charAt(at);
            return c == divider || c == '\n' || c == '\r';
        }

        /** Steps over one line end, if one is here. */
        private boolean lineEnd() {
            char c = text.charAt(at);
            if (c != '\n' && c != '\r') {
                return false;
            }
            at += c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n' ? 2 : 1;
            line++;
            return true;
        }

        private static Optional<Problem> fault(int line, String rule, String remedy) {
            return Optional.of(Problem.fault("", "", rule, remedy).at("", line));
        }
    }
}
