package weekwright.forecast;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.BeanProperty;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.ContextualDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.engine.Inputs;

/**
 * Forecasts, week sheets and inputs as JSON: ISO dates, null for an empty value, money as decimal text in the currency,
 * chances and other fractions rounded to four places, hours as decimal numbers. Safe for use from several threads.
 */
public final class ForecastJson {
    private static final int PLACES = 4;
    /** Inputs are written as they are: no rounding, so that they read back equal. */
    private static final ObjectMapper EXACT = new ObjectMapper();

    private final ObjectMapper mapper;
    private final ObjectWriter pretty;

    /** @param moneyDigits digits of the currency after the point */
    public ForecastJson(int moneyDigits) {
        SimpleModule module = new SimpleModule();
        module.addSerializer(LocalDate.class, text(LocalDate::toString));
        module.addSerializer(YearMonth.class, text(YearMonth::toString));
        module.addSerializer(Money.class, text(money -> money.text(moneyDigits)));
        module.addSerializer(Optional.class, optional());
        module.addSerializer(Double.class, number(ForecastJson::rounded));
        module.addSerializer(double.class, number(ForecastJson::rounded));
        module.addSerializer(Hours.class, number(hours -> new BigDecimal(hours.text())));
        module.addDeserializer(LocalDate.class, read(parser -> LocalDate.parse(parser.getText())));
        module.addDeserializer(YearMonth.class, read(parser -> YearMonth.parse(parser.getText())));
        module.addDeserializer(
                Money.class,
                read(parser -> new Money(new BigDecimal(parser.getText())
                        .movePointRight(moneyDigits)
                        .longValueExact())));
        module.addDeserializer(
                Hours.class,
                read(parser -> new Hours(new BigDecimal(parser.getText())
                        .multiply(BigDecimal.valueOf(60))
                        .setScale(0, RoundingMode.HALF_UP)
                        .intValueExact())));
        module.addDeserializer(Optional.class, new OptionalReader(null));
        mapper = new ObjectMapper().registerModule(module);
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        pretty = mapper.writer(
                new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
    }

    /** One line. */
    public String text(Record value) {
        return written(mapper.writer(), value);
    }

    /** Indented by two spaces, for people. */
    public String lines(Record value) {
        return written(pretty, value);
    }

    /** Reads back what {@link #text} wrote, with chances as rounded there. */
    public Forecast forecast(String json) {
        try {
            return mapper.readValue(json, Forecast.class);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("not the JSON of a forecast", e);
        }
    }

    /** A list of texts as a JSON array. */
    public static String list(List<String> texts) {
        return written(EXACT.writer(), texts);
    }

    /** The inputs as compressed JSON. */
    public static byte[] packed(Inputs inputs) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(bytes)) {
            EXACT.writeValue(zip, inputs);
        } catch (IOException e) {
            throw new UncheckedIOException("inputs cannot be written as JSON", e);
        }
        return bytes.toByteArray();
    }

    /** Reads back what {@link #packed} wrote. */
    public static Inputs unpacked(byte[] packed) {
        try (GZIPInputStream zip = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return EXACT.readValue(zip, Inputs.class);
        } catch (IOException e) {
            throw new UncheckedIOException("not the compressed JSON of inputs", e);
        }
    }

    /** The rank list of a saved forecast. */
    static String kept(Inputs.Kept kept) {
        return written(EXACT.writer(), kept);
    }

    static Inputs.Kept kept(String json) {
        try {
            return EXACT.readValue(json, Inputs.Kept.class);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("not the JSON of a rank list", e);
        }
    }

    private static String written(ObjectWriter writer, Object value) {
        try {
            return writer.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException("cannot be written as JSON: " + value.getClass(), e);
        }
    }

    private static BigDecimal rounded(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(PLACES, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    private interface Writing<T, R> {
        R of(T value);
    }

    private interface Parsing<T> {
        T of(JsonParser parser) throws IOException;
    }

    private static <T> JsonSerializer<T> text(Writing<T, String> writing) {
        return new JsonSerializer<>() {
            @Override
            public void serialize(T value, JsonGenerator out, SerializerProvider provider) throws IOException {
                out.writeString(writing.of(value));
            }
        };
    }

    private static <T> JsonSerializer<T> number(Writing<T, BigDecimal> writing) {
        return new JsonSerializer<>() {
            @Override
            public void serialize(T value, JsonGenerator out, SerializerProvider provider) throws IOException {
                out.writeNumber(writing.of(value));
            }
        };
    }

    private static <T> JsonDeserializer<T> read(Parsing<T> parsing) {
        return new JsonDeserializer<>() {
            @Override
            public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
                return parsing.of(parser);
            }
        };
    }

    @SuppressWarnings("rawtypes")
    private static JsonSerializer<Optional> optional() {
        return new JsonSerializer<>() {
            @Override
            public void serialize(Optional value, JsonGenerator out, SerializerProvider provider) throws IOException {
                if (value.isEmpty()) {
                    out.writeNull();
                } else {
                    provider.defaultSerializeValue(value.get(), out);
                }
            }
        };
    }

    /** Reads null as an empty Optional; the type inside is known from the record's component. */
    private static final class OptionalReader extends JsonDeserializer<Optional<?>> implements ContextualDeserializer {
        private final JavaType inside;

        OptionalReader(JavaType inside) {
            this.inside = inside;
        }

        @Override
        public JsonDeserializer<?> createContextual(DeserializationContext context, BeanProperty property) {
            return new OptionalReader(property.getType().containedType(0));
        }

        @Override
        public Optional<?> deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            return Optional.of(context.<Object>readValue(parser, inside));
        }

        @Override
        public Optional<?> getNullValue(DeserializationContext context) {
            return Optional.empty();
        }

        @Override
        public Optional<?> getAbsentValue(DeserializationContext context) {
            return Optional.empty();
        }
    }
}
