package weekwright.base;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The columns of a record type, taken from its components: one list for the store, the plain files and the forms. A
 * component {@code seasonFrom} is the column {@code season_from}. An {@code Optional} component may be empty; so may a
 * String (empty text), a Boolean (no) and Words (none); anything else must be given. Immutable, made once per type.
 *
 * @param <R> a record whose components have a {@link Codec}
 */
public final class Shape<R extends Record> {
    private static final Map<Class<?>, Shape<?>> MADE = new ConcurrentHashMap<>();
    private static final int LINE_MOST = 200;
    private static final int LINES_MOST = 20_000;

    private final Class<R> type;
    private final Constructor<R> constructor;
    private final List<Field> fields;

    /**
     * One column.
     *
     * @param name as in files and store
     * @param optional the component is an Optional
     * @param ref the table whose ids it holds, or empty
     */
    public record Field(
            String name,
            RecordComponent component,
            Class<?> valueType,
            boolean optional,
            Optional<String> ref,
            Codec<Object> codec) {
        /** Whether nothing may stand in it. */
        public boolean mayBeEmpty() {
            return optional || valueType == String.class || valueType == Boolean.class || valueType == Words.class;
        }

        /** The value of this column in a record, without the Optional around it. */
        public Optional<Object> value(Record row) {
            try {
                Object value = component.getAccessor().invoke(row);
                return optional ? ((Optional<?>) value).map(v -> (Object) v) : Optional.of(value);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("cannot read " + component, e);
            }
        }

        /** The text of this column of a record, empty where nothing stands in it and for a plain no. */
        public String text(Record row, int moneyDigits) {
            Optional<Object> value = value(row);
            if (!optional && value.equals(Optional.of(false))) {
                return "";
            }
            return value.map(v -> codec.text(v, moneyDigits)).orElse("");
        }

        /**
         * Reads one text.
         *
         * @return the component's value, or empty when it was refused: then a fault was added
         */
        public Optional<Object> parse(String text, Reading reading, Problems problems) {
            boolean lines = component.isAnnotationPresent(Lines.class);
            try {
                String clean = Text.checked(text, lines);
                if (clean.isBlank()) {
                    if (!mayBeEmpty()) {
                        throw new Refused("is missing", "it has to be given");
                    }
                    return Optional.of(optional ? Optional.empty() : emptyValue());
                }
                Object value = codec.parse(clean, reading);
                checkBounds(value, lines, reading);
                return Optional.of(optional ? Optional.of(value) : value);
            } catch (Refused refused) {
                problems.add(Problem.fault(name, text.strip(), refused));
                return Optional.empty();
            }
        }

        private Object emptyValue() {
            return valueType == String.class ? "" : valueType == Boolean.class ? Boolean.FALSE : Words.NONE;
        }

        private void checkBounds(Object value, boolean lines, Reading reading) throws Refused {
            Bounds bounds = component.getAnnotation(Bounds.class);
            if (value instanceof String text) {
                double most = bounds == null ? lines ? LINES_MOST : LINE_MOST : bounds.max();
                if (text.codePointCount(0, text.length()) > most) {
                    throw new Refused("is too long", "write at most " + (int) most + " characters");
                }
                return;
            }
            if (bounds == null) {
                return;
            }
            double number = number(value, reading);
            if (number < bounds.min()) {
                throw new Refused("is under " + plain(bounds.min()), "write " + range(bounds));
            }
            if (number > bounds.max()) {
                throw new Refused("is over " + plain(bounds.max()), "write " + range(bounds));
            }
        }

        private static double number(Object value, Reading reading) {
            if (value instanceof Quantity quantity) {
                return quantity.doubleValue();
            }
            if (value instanceof Hours hours) {
                return hours.minutes() / 60.0;
            }
            if (value instanceof Money money) {
                return BigDecimal.valueOf(money.minor(), reading.moneyDigits()).doubleValue();
            }
            return ((Number) value).doubleValue();
        }

        private static String range(Bounds bounds) {
            if (Double.isInfinite(bounds.max())) {
                return plain(bounds.min()) + " or more";
            }
            return plain(bounds.min()) + " to " + plain(bounds.max());
        }

        private static String plain(double number) {
            return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        }
    }

    private Shape(Class<R> type) {
        this.type = type;
        RecordComponent[] components = type.getRecordComponents();
        try {
            constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException("no canonical constructor in " + type, e);
        }
        List<Field> list = new ArrayList<>();
        for (RecordComponent component : components) {
            list.add(field(component));
        }
        fields = List.copyOf(list);
    }

    @SuppressWarnings("unchecked")
    public static <R extends Record> Shape<R> of(Class<R> type) {
        return (Shape<R>) MADE.computeIfAbsent(type, t -> new Shape<>(type));
    }

    @SuppressWarnings("unchecked")
    private static Field field(RecordComponent component) {
        boolean optional = component.getType() == Optional.class;
        Class<?> valueType = optional
                ? (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                : boxed(component.getType());
        Column column = component.getAnnotation(Column.class);
        Ref ref = component.getAnnotation(Ref.class);
        return new Field(
                column == null ? columnName(component.getName()) : column.value(),
                component,
                valueType,
                optional,
                Optional.ofNullable(ref).map(Ref::value),
                (Codec<Object>) Codec.of(valueType));
    }

    private static Class<?> boxed(Class<?> type) {
        return type == int.class ? Integer.class : type == boolean.class ? Boolean.class : type;
    }

    private static String columnName(String component) {
        return component.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    public Class<R> type() {
        return type;
    }

    public List<Field> fields() {
        return fields;
    }

    public List<String> names() {
        return fields.stream().map(Field::name).toList();
    }

    public Optional<Field> field(String name) {
        return fields.stream().filter(f -> f.name().equals(name)).findFirst();
    }

    /**
     * Reads a whole record from texts by column name; a column that is absent reads as empty.
     *
     * @return the record, or empty when any column was refused: then each refusal was added as a fault
     */
    public Optional<R> parse(Map<String, String> texts, Reading reading, Problems problems) {
        Object[] values = new Object[fields.size()];
        boolean whole = true;
        for (int i = 0; i < values.length; i++) {
            Field field = fields.get(i);
            Optional<Object> value = field.parse(texts.getOrDefault(field.name(), ""), reading, problems);
            whole &= value.isPresent();
            values[i] = value.orElse(null);
        }
        return whole ? Optional.of(make(values)) : Optional.empty();
    }

    /** The texts of a record by column name, in column order. */
    public Map<String, String> texts(R row, int moneyDigits) {
        Map<String, String> texts = new LinkedHashMap<>();
        fields.forEach(field -> texts.put(field.name(), field.text(row, moneyDigits)));
        return texts;
    }

    /**
     * Makes a record of stored values.
     *
     * @param stored by column: a Long, a String, or null for nothing
     */
    public R fromStored(List<Object> stored) {
        Object[] values = new Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            Field field = fields.get(i);
            Object one = stored.get(i);
            if (one == null && !field.optional()) {
                throw new IllegalStateException("nothing stored in " + type.getSimpleName() + "." + field.name());
            }
            Object value = one == null ? null : field.codec().fromStored(one);
            values[i] = field.optional() ? Optional.ofNullable(value) : value;
        }
        return make(values);
    }

    /** The stored form of each column: a Long, a String, or null for nothing. */
    public List<Object> toStored(R row) {
        List<Object> stored = new ArrayList<>(fields.size());
        for (Field field : fields) {
            stored.add(field.value(row).map(field.codec()::stored).orElse(null));
        }
        return stored;
    }

    /** The record with one column set to another component value. */
    public R with(R row, String name, Object value) {
        Object[] values = new Object[fields.size()];
        for (int i = 0; i < values.length; i++) {
            Field field = fields.get(i);
            Optional<Object> old = field.value(row);
            values[i] = field.name().equals(name) ? value : field.optional() ? old : old.orElse(null);
        }
        return make(values);
    }

    private R make(Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot make " + type.getSimpleName(), e);
        }
    }
}
