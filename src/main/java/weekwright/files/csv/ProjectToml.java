package weekwright.files.csv;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.base.Nearest;
import weekwright.base.Place;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.BuildLog;
import weekwright.build.Emergency;
import weekwright.build.ModelSettings;
import weekwright.build.MoneySettings;
import weekwright.build.OrderSettings;
import weekwright.build.Project;
import weekwright.build.Publishing;
import weekwright.build.Settings;
import weekwright.build.SettingsRules;
import weekwright.build.Weather;

/**
 * {@code project.toml}: the format's number and the settings, one TOML table for each part (TOML 1.0). Dates, times,
 * money and hours are quoted text; whole numbers of money and hours are read too.
 */
public final class ProjectToml {
    public static final String FILE = "project.toml";
    /** The newest format that this program knows. */
    public static final int FORMAT = 1;

    private static final Map<String, Shape<?>> TABLES = new LinkedHashMap<>();
    private static final Set<String> LOWER_CASE = Set.of("weekday", "units", "edit_days", "quotes");

    static {
        TABLES.put("publishing", Shape.of(Publishing.class));
        TABLES.put("weather", Shape.of(Weather.class));
        TABLES.put("orders", Shape.of(OrderSettings.class));
        TABLES.put("money", Shape.of(MoneySettings.class));
        TABLES.put("emergency", Shape.of(Emergency.class));
        TABLES.put("model", Shape.of(ModelSettings.class));
        TABLES.put("build_log", Shape.of(BuildLog.class));
    }

    private final TomlParseResult toml;
    private final Problems problems;
    private Reading reading = Reading.file(2);

    private ProjectToml(TomlParseResult toml, Problems problems) {
        this.toml = toml;
        this.problems = problems;
    }

    /**
     * Reads the settings.
     *
     * @return empty when a fault was added
     */
    public static Optional<Settings> read(String text, Problems problems) {
        TomlParseResult toml = Toml.parse(text);
        if (toml.hasErrors()) {
            toml.errors()
                    .forEach(error -> problems.add(
                            Problem.fault("", "", "cannot be read: " + error.getMessage(), "write key = value lines")
                                    .at(FILE, error.position().line())));
            return Optional.empty();
        }
        Problems found = new Problems();
        Optional<Settings> settings = new ProjectToml(toml, found).settings();
        problems.addAll(found.list());
        return found.hasFaults() ? Optional.empty() : settings;
    }

    private Optional<Settings> settings() {
        if (!format()) {
            return Optional.empty();
        }
        unknownKeys();
        if (toml.get("currency") instanceof String currency) {
            try {
                reading = Reading.file(Money.digits(currency));
            } catch (Refused refused) {
                // told by SettingsRules; amounts are then read with two digits
            }
        }
        Optional<Project> project = part("", toml, Shape.of(Project.class), SettingsRules::check);
        Optional<Publishing> publishing = table("publishing", Shape.of(Publishing.class), SettingsRules::check);
        Optional<Weather> weather = table("weather", Shape.of(Weather.class), SettingsRules::check);
        Optional<OrderSettings> orders = table("orders", Shape.of(OrderSettings.class), (row, found) -> {});
        Optional<MoneySettings> money = table("money", Shape.of(MoneySettings.class), SettingsRules::check);
        Optional<Emergency> emergency = table("emergency", Shape.of(Emergency.class), (row, found) -> {});
        Optional<ModelSettings> model = table("model", Shape.of(ModelSettings.class), (row, found) -> {});
        Optional<BuildLog> log = table("build_log", Shape.of(BuildLog.class), SettingsRules::check);
        if (problems.hasFaults()) {
            return Optional.empty();
        }
        return Optional.of(new Settings(
                project.orElseThrow(),
                publishing.orElseThrow(),
                weather.orElseThrow(),
                orders.orElseThrow(),
                money.orElseThrow(),
                emergency.orElseThrow(),
                model.orElseThrow(),
                log.orElseThrow()));
    }

    private boolean format() {
        Object format = toml.get("format");
        String known = "write format = " + FORMAT;
        if (format == null) {
            problems.add(Problem.fault("format", "", "is missing", known).at(FILE, 1));
        } else if (!(format instanceof Long number)) {
            problems.add(Problem.fault("format", format.toString(), "is not a whole number", known)
                    .at(FILE, line("format")));
        } else if (number > FORMAT) {
            problems.add(Problem.fault(
                            "format",
                            number.toString(),
                            "is newer than this program, which knows format " + FORMAT,
                            "use a newer weekwright")
                    .at(FILE, line("format")));
        } else if (number < 1) {
            problems.add(Problem.fault("format", number.toString(), "is no format", known)
                    .at(FILE, line("format")));
        } else {
            return true;
        }
        return false;
    }

    private void unknownKeys() {
        List<String> top = new ArrayList<>(List.of("format"));
        top.addAll(Shape.of(Project.class).names());
        top.addAll(TABLES.keySet());
        unknownKeys("", toml, top);
        TABLES.forEach((name, shape) -> {
            if (toml.get(name) instanceof TomlTable table) {
                unknownKeys(name + ".", table, shape.names());
            } else if (toml.get(name) != null) {
                problems.add(Problem.fault(name, "", "is not a table", "write [" + name + "] on a line of its own")
                        .at(FILE, line(name)));
            }
        });
    }

    private void unknownKeys(String prefix, TomlTable table, List<String> known) {
        for (String key : table.keySet()) {
            if (!known.contains(key)) {
                problems.add(Problem.fault(
                                "",
                                prefix + key,
                                "is not a key of " + FILE,
                                Nearest.remedy(key, known, "write one of " + String.join(", ", known)))
                        .at(FILE, line(table, key)));
            }
        }
    }

    private <R extends Record> Optional<R> table(String name, Shape<R> shape, Check<R> rule) {
        TomlTable table = toml.get(name) instanceof TomlTable given ? given : Toml.parse("");
        return part(name + ".", table, shape, rule);
    }

    /** Checks one part of the settings. */
    private interface Check<R> {
        void check(R row, Problems problems);
    }

    private <R extends Record> Optional<R> part(String prefix, TomlTable table, Shape<R> shape, Check<R> rule) {
        Map<String, String> texts = new HashMap<>();
        Map<String, Integer> lines = new HashMap<>();
        Problems found = new Problems();
        for (Shape.Field field : shape.fields()) {
            Object value = table.get(List.of(field.name()));
            lines.put(field.name(), value == null ? 0 : line(table, field.name()));
            if (value != null) {
                try {
                    String text = text(field, value);
                    texts.put(field.name(), LOWER_CASE.contains(field.name()) ? text.toLowerCase(Locale.ROOT) : text);
                } catch (Refused refused) {
                    found.add(Problem.fault(field.name(), shown(value), refused));
                }
            }
        }
        if (found.hasFaults()) {
            found.list().forEach(problem -> problems.add(named(prefix, lines, problem)));
            return Optional.empty();
        }
        Optional<R> row = RecordCsv.row(
                shape,
                texts,
                reading,
                (read, faults) -> {
                    rule.check(read, faults);
                    return read;
                },
                Place.NONE,
                found);
        found.list().forEach(problem -> problems.add(named(prefix, lines, problem)));
        return row;
    }

    private static Problem named(String prefix, Map<String, Integer> lines, Problem problem) {
        return new Problem(
                problem.grade(),
                FILE,
                lines.getOrDefault(problem.column(), 0),
                prefix + problem.column(),
                problem.read(),
                problem.rule(),
                problem.remedy());
    }

    private int line(String key) {
        return line(toml, key);
    }

    private static int line(TomlTable table, String key) {
        TomlPosition position = table.inputPositionOf(List.of(key));
        return position == null ? 0 : position.line();
    }

    private static String shown(Object value) {
        return value instanceof TomlArray || value instanceof TomlTable ? "" : String.valueOf(value);
    }

    /** The text of a TOML value as the column's codec reads it; a value of the wrong type is refused. */
    private static String text(Shape.Field field, Object value) throws Refused {
        Class<?> type = field.valueType();
        if (type == Words.class) {
            return words(value);
        }
        if (value instanceof TomlArray || value instanceof TomlTable) {
            throw new Refused("is a list or table, where one value belongs", "write one value");
        }
        if (type == Boolean.class) {
            if (value instanceof Boolean yes) {
                return yes ? "yes" : "no";
            }
            throw new Refused("is not true or false", "write true or false without quotes");
        }
        boolean number = value instanceof Long || value instanceof Double;
        if (type == Quantity.class || type == Integer.class) {
            if (!number) {
                throw new Refused("is not a number", "write it without quotes, such as 12");
            }
            return numberText(value);
        }
        if (type == Money.class || type == Hours.class) {
            if (value instanceof Double) {
                throw new Refused("is not exact", "write it between quotes, such as \"" + numberText(value) + "\"");
            }
            return value.toString();
        }
        if (value instanceof Boolean || number) {
            throw new Refused("is not text", "write it between quotes");
        }
        return value.toString();
    }

    private static String numberText(Object value) throws Refused {
        if (!(value instanceof Double real)) {
            return value.toString();
        }
        if (real.isNaN() || real.isInfinite()) {
            throw new Refused("is not a number", "write such as 12 or 2.5");
        }
        return BigDecimal.valueOf(real).stripTrailingZeros().toPlainString();
    }

    private static String words(Object value) throws Refused {
        if (!(value instanceof TomlArray array)) {
            throw new Refused("is not a list", "write it between [ and ]");
        }
        List<String> words = new ArrayList<>();
        for (Object one : array.toList()) {
            String word = one instanceof Double || one instanceof Long ? numberText(one) : String.valueOf(one);
            if (word.isBlank() || word.contains(" ") || one instanceof TomlArray || one instanceof TomlTable) {
                throw new Refused("holds something that is no single word", "write single words");
            }
            words.add(word);
        }
        return String.join(" ", words);
    }

    /** The settings in canonical form: the keys in the order of the records, only those that hold something. */
    public static String write(Settings settings) {
        int digits = settings.moneyDigits();
        StringBuilder out = new StringBuilder("format = " + FORMAT + "\n");
        keys(Shape.of(Project.class), settings.project(), digits, out);
        section("publishing", Shape.of(Publishing.class), settings.publishing(), digits, out);
        section("weather", Shape.of(Weather.class), settings.weather(), digits, out);
        section("orders", Shape.of(OrderSettings.class), settings.orders(), digits, out);
        section("money", Shape.of(MoneySettings.class), settings.money(), digits, out);
        section("emergency", Shape.of(Emergency.class), settings.emergency(), digits, out);
        section("model", Shape.of(ModelSettings.class), settings.model(), digits, out);
        section("build_log", Shape.of(BuildLog.class), settings.buildLog(), digits, out);
        return out.toString();
    }

    private static <R extends Record> void section(String name, Shape<R> shape, R row, int digits, StringBuilder out) {
        StringBuilder keys = new StringBuilder();
        keys(shape, row, digits, keys);
        if (!keys.isEmpty()) {
            out.append("\n[").append(name).append("]\n").append(keys);
        }
    }

    private static <R extends Record> void keys(Shape<R> shape, R row, int digits, StringBuilder out) {
        for (Shape.Field field : shape.fields()) {
            String text = field.text(row, digits);
            if (!text.isEmpty()) {
                out.append(field.name())
                        .append(" = ")
                        .append(value(field, text))
                        .append('\n');
            }
        }
    }

    private static String value(Shape.Field field, String text) {
        Class<?> type = field.valueType();
        if (type == Quantity.class || type == Integer.class) {
            return text;
        }
        if (type == Boolean.class) {
            return text.equals("yes") ? "true" : "false";
        }
        if (type == Words.class) {
            List<String> words = new ArrayList<>();
            for (String word : text.split(" ")) {
                words.add(field.name().equals("lost") ? word : quoted(word));
            }
            return "[" + String.join(", ", words) + "]";
        }
        return quoted(text);
    }

    private static String quoted(String text) {
        return '"' + Toml.tomlEscape(text).toString() + '"';
    }
}
