package weekwright.render;

import io.pebbletemplates.pebble.extension.AbstractExtension;
import io.pebbletemplates.pebble.extension.Filter;
import io.pebbletemplates.pebble.template.EvaluationContext;
import io.pebbletemplates.pebble.template.EvaluationContextImpl;
import io.pebbletemplates.pebble.template.PebbleTemplate;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import weekwright.base.Hours;
import weekwright.base.Money;

/**
 * The filters of the templates: {@link Formats} and {@link Chances} by name, against the frame's day and currency. Nothing
 * (null) comes out as nothing.
 */
final class FormatFilters extends AbstractExtension {
    private final Map<String, Filter> filters = new LinkedHashMap<>();

    FormatFilters() {
        add("hours", (f, v) -> Formats.hours(minutes(v)));
        add("hoursShort", (f, v) -> Formats.hoursShort(minutes(v)));
        add("money", (f, v) -> f.money(minor(v)));
        add("moneyExact", (f, v) -> f.moneyExact(minor(v)));
        add("dateShort", (f, v) -> f.dateShort((LocalDate) v));
        add("dateLong", (f, v) -> f.dateLong((LocalDate) v));
        add("dateBrief", (f, v) -> f.dateBrief((LocalDate) v));
        add("away", (f, v) -> f.away((LocalDate) v));
        add("dayMonth", (f, v) -> Formats.dayMonth((LocalDate) v));
        add("weekday", (f, v) -> Formats.weekday((LocalDate) v));
        add("monthYear", (f, v) -> Formats.monthYear((LocalDate) v));
        add("percent", (f, v) -> Chances.percent(((Number) v).doubleValue()));
        add(
                "names",
                (f, v) ->
                        Formats.list(((List<?>) v).stream().map(String::valueOf).toList()));
        add("sentence", (f, v) -> Formats.sentence(String.valueOf(v)));
        filters.put("count", new Counting(Formats::count));
        filters.put("counted", new Counting(Formats::counted));
    }

    @Override
    public Map<String, Filter> getFilters() {
        return filters;
    }

    private void add(String name, BiFunction<Formats, Object, String> words) {
        filters.put(name, new Filter() {
            @Override
            public List<String> getArgumentNames() {
                return List.of();
            }

            @Override
            public Object apply(
                    Object input, Map<String, Object> args, PebbleTemplate self, EvaluationContext context, int line) {
                return input == null ? "" : words.apply(formats(context), input);
            }
        });
    }

    /** A number with the words that agree with it: {@code 3 | count("picture", "pictures")}. */
    private record Counting(Words words) implements Filter {
        interface Words {
            String of(long number, String one, String many);
        }

        @Override
        public List<String> getArgumentNames() {
            return List.of("one", "many");
        }

        @Override
        public Object apply(
                Object input, Map<String, Object> args, PebbleTemplate self, EvaluationContext context, int line) {
            return words.of(
                    ((Number) input).longValue(), String.valueOf(args.get("one")), String.valueOf(args.get("many")));
        }
    }

    /** Inside a macro the frame is out of sight; the outermost scopes hold it. */
    private static Formats formats(EvaluationContext context) {
        Object seen = context.getVariable(Templates.FORMATS);
        if (seen instanceof Formats formats) {
            return formats;
        }
        return ((EvaluationContextImpl) context)
                .getScopeChain().getGlobalScopes().stream()
                        .map(scope -> scope.get(Templates.FORMATS))
                        .filter(Formats.class::isInstance)
                        .map(Formats.class::cast)
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("no formats in the template's scope"));
    }

    private static long minutes(Object value) {
        return value instanceof Hours hours ? hours.minutes() : ((Number) value).longValue();
    }

    private static long minor(Object value) {
        return value instanceof Money money ? money.minor() : ((Number) value).longValue();
    }
}
