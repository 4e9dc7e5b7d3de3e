package weekwright.files.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Nearest;
import weekwright.base.Place;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Rows;
import weekwright.base.Shape;
import weekwright.base.Words;

/** Records of one type as CSV: the columns are the record's components (RFC 4180, UTF-8). */
public final class RecordCsv {
    private static final Set<String> NEEDED_TEXTS = Set.of("title", "name", "item", "what", "hazard");

    private static final Pattern DECIMAL_HOURS = Pattern.compile("\\+?[0-9]{1,6}\\.[0-9]{1,6}");

    private static final Set<Class<?>> TEXTS = Set.of(String.class, Words.class, Id.class);

    private RecordCsv() {}

    /**
     * What was read of one file.
     *
     * @param rows those without a fault
     * @param ids all texts of the column id, also of rows with a fault, so that references to them are not unknown
     * @param whole whether every record could be looked at; if not, ids may be missing
     */
    public record Result<R extends Record>(Rows<R> rows, List<String> ids, boolean whole) {
        /** Of a file that is not there. */
        public static <R extends Record> Result<R> none() {
            return new Result<>(Rows.none(), List.of(), true);
        }
    }

    /** A rule that keeps the row as it was read. */
    static <R> BiFunction<R, Problems, R> keeping(BiConsumer<R, Problems> rule) {
        return (row, problems) -> {
            rule.accept(row, problems);
            return row;
        };
    }

    /**
     * Reads a text. Column order is free, names are exact; a column that may be empty may be absent.
     *
     * @param rule checks one row and returns it as it is to be kept
     */
    public static <R extends Record> Result<R> read(
            Shape<R> shape,
            String file,
            String text,
            Reading reading,
            BiFunction<R, Problems, R> rule,
            Problems problems) {
        Optional<CsvText> parsed = CsvText.parse(file, text, problems);
        if (parsed.isEmpty()) {
            return new Result<>(Rows.none(), List.of(), false);
        }
        List<String> header = parsed.get().header().cells();
        boolean readable = header(shape, file, parsed.get().header(), problems);
        List<R> rows = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        List<String> ids = new ArrayList<>();
        boolean whole = readable;
        for (CsvText.Line line : parsed.get().records()) {
            if (line.cells().size() != header.size()) {
                String counts = "has " + cells(line.cells().size()) + ", the header has " + header.size();
                problems.add(Problem.fault("", "", counts, "write as many as the header")
                        .at(file, line.line()));
                whole = false;
                continue;
            }
            Map<String, String> texts = new HashMap<>();
            for (int i = 0; i < header.size(); i++) {
                texts.putIfAbsent(header.get(i), line.cells().get(i));
            }
            Optional.ofNullable(texts.get("id")).map(String::strip).ifPresent(ids::add);
            if (readable) {
                row(shape, texts, reading, rule, new Place(file, line.line()), problems)
                        .ifPresent(row -> {
                            rows.add(row);
                            places.add(new Place(file, line.line()));
                        });
            }
        }
        return new Result<>(new Rows<>(rows, places), ids, whole);
    }

    private static String cells(int count) {
        return count == 1 ? "1 cell" : count + " cells";
    }

    /** Reads one row's texts and checks it; its problems get their place. */
    static <R extends Record> Optional<R> row(
            Shape<R> shape,
            Map<String, String> texts,
            Reading reading,
            BiFunction<R, Problems, R> rule,
            Place place,
            Problems problems) {
        Problems found = new Problems();
        Optional<R> row = shape.parse(texts, reading, found);
        for (Shape.Field field : shape.fields()) {
            if (field.valueType() == Hours.class) {
                wholeMinutes(field.name(), texts.getOrDefault(field.name(), ""), found);
            }
        }
        Optional<R> kept = row.map(read -> rule.apply(read, found));
        found.list().forEach(problem -> problems.add(place.of(problem)));
        return found.hasFaults() ? Optional.empty() : kept;
    }

    /** Hours in files: at most two decimals; what is no whole minute is told how it is read (rule 101). */
    private static void wholeMinutes(String column, String text, Problems problems) {
        String plain = text.strip();
        if (plain.indexOf('.') < 0 || !DECIMAL_HOURS.matcher(plain).matches()) {
            return;
        }
        BigDecimal given = new BigDecimal(plain).stripTrailingZeros();
        if (given.scale() > 2) {
            problems.fault(column, plain, "has more than two decimal places", "write at most two");
            return;
        }
        try {
            Hours hours = Hours.ofDecimal(given);
            if (new BigDecimal(hours.text()).compareTo(given) != 0) {
                problems.remark(column, plain, "is read as " + hours.minutes() + " minutes", "write " + hours.text());
            }
        } catch (Refused e) {
            // too large: told by the reading of the column itself
        }
    }

    /** @return whether the rows can be read: no column is unknown, twice or missing that has to be there */
    private static boolean header(Shape<?> shape, String file, CsvText.Line header, Problems problems) {
        Problems found = new Problems();
        Set<String> seen = new LinkedHashSet<>();
        for (String name : header.cells()) {
            if (shape.field(name).isEmpty()) {
                String read = name.isBlank() ? "" : name;
                String rule = name.isBlank() ? "has a column without a name" : "is not a column of " + file;
                String remedy = Nearest.remedy(name, shape.names(), "write one of " + String.join(",", shape.names()));
                found.fault("", read, rule, name.isBlank() ? "name it or take it out" : remedy);
            } else if (!seen.add(name)) {
                found.fault("", name, "stands twice in the header", "keep one of the columns");
            }
        }
        for (Shape.Field field : shape.fields()) {
            boolean needed = !field.mayBeEmpty() || NEEDED_TEXTS.contains(field.name());
            if (needed && !seen.contains(field.name())) {
                found.fault("", field.name(), "is missing in the header", "add the column");
            }
        }
        found.list().forEach(problem -> problems.add(problem.at(file, header.line())));
        return !found.hasFaults();
    }

    /** Records as CSV in canonical form: comma, CRLF, quotes only where needed, a header in any case. */
    public static <R extends Record> String write(Shape<R> shape, List<R> rows, int moneyDigits) {
        StringBuilder out = new StringBuilder();
        line(shape.names(), out);
        for (R row : rows) {
            line(List.copyOf(shape.texts(row, moneyDigits).values()), out);
        }
        return out.toString();
    }

    /**
     * As {@link #write} for a spreadsheet, by {@link SheetCsv}. It does not come back unchanged; numbers and dates stay.
     */
    public static <R extends Record> String forSpreadsheet(Shape<R> shape, List<R> rows, int moneyDigits) {
        SheetCsv sheet = new SheetCsv(shape.names().toArray(String[]::new));
        for (R row : rows) {
            for (Shape.Field field : shape.fields()) {
                String text = field.text(row, moneyDigits);
                if (TEXTS.contains(field.valueType())) {
                    sheet.text(text);
                } else {
                    sheet.figure(text);
                }
            }
            sheet.end();
        }
        return sheet.toString();
    }

    static void line(List<String> cells, StringBuilder out) {
        for (int i = 0; i < cells.size(); i++) {
            out.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
        }
        out.append("\r\n");
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
