package weekwright.base;

import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.MonthDay;
import java.time.YearMonth;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.function.ToLongFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The codecs of the plain column types, and how one is put together. */
final class Codecs {
    private static final Pattern DAY = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final Pattern TIME = Pattern.compile("([0-9]{1,2}):([0-9]{2})");
    private static final Pattern MONTH = Pattern.compile("([0-9]{4})-([0-9]{2})");
    private static final Pattern MONTH_DAY = Pattern.compile("([0-9]{2})-([0-9]{2})");
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,9}");

    private static final Pattern LARGE = Pattern.compile("[+-]?[0-9]{10,}");

    static final Map<Class<?>, Codec<?>> BY_TYPE = Map.ofEntries(
            Map.entry(String.class, kept((text, r) -> Normalizer.normalize(text, Normalizer.Form.NFC), v -> v)),
            Map.entry(Id.class, kept((text, r) -> Id.parse(text.strip()), Id::value)),
            Map.entry(Words.class, kept((text, r) -> Words.parse(text), Words::text)),
            Map.entry(Quantity.class, kept(Quantity::parse, Quantity::text)),
            Map.entry(Dimensions.class, kept(Dimensions::parse, Dimensions::text)),
            Map.entry(RunTime.class, kept(RunTime::parse, RunTime::text)),
            Map.entry(LocalDate.class, kept((text, r) -> date(text.strip()), LocalDate::toString)),
            Map.entry(LocalTime.class, kept((text, r) -> time(text.strip()), LocalTime::toString)),
            Map.entry(YearMonth.class, kept((text, r) -> month(text.strip()), YearMonth::toString)),
            Map.entry(MonthDay.class, kept((text, r) -> monthDay(text.strip()), Codecs::monthDayText)),
            Map.entry(
                    Hours.class,
                    counted(Hours::parse, (v, d) -> v.text(), Hours::minutes, v -> new Hours(Math.toIntExact(v)))),
            Map.entry(Money.class, counted(Money::parse, Money::text, Money::minor, Money::new)),
            Map.entry(Integer.class, counted((t, r) -> whole(t), (v, d) -> v.toString(), v -> v, Math::toIntExact)),
            Map.entry(
                    Boolean.class, counted((t, r) -> yes(t), (v, d) -> v ? "yes" : "no", v -> v ? 1 : 0, v -> v == 1)));

    private Codecs() {}

    /** Reads one text; the part of a codec that can refuse. */
    interface Parser<T> {
        T parse(String text, Reading reading) throws Refused;
    }

    /** A codec whose values are kept in the store as the text that files have. */
    static <T> Codec<T> kept(Parser<T> parser, Function<T, String> text) {
        return new Parts<>(parser, (value, digits) -> text.apply(value), text::apply, stored -> {
            try {
                return parser.parse((String) stored, Reading.file(0));
            } catch (Refused e) {
                throw new IllegalStateException("the store holds \"" + stored + "\", which " + e.getMessage(), e);
            }
        });
    }

    /** A codec whose values are kept in the store as whole numbers. */
    private static <T> Codec<T> counted(
            Parser<T> parser, BiFunction<T, Integer, String> text, ToLongFunction<T> toLong, LongFunction<T> ofLong) {
        return new Parts<>(parser, text, toLong::applyAsLong, stored -> ofLong.apply(((Number) stored).longValue()));
    }

    private record Parts<T>(
            Parser<T> parser,
            BiFunction<T, Integer, String> textOf,
            Function<T, Object> storedOf,
            Function<Object, T> ofStored)
            implements Codec<T> {
        @Override
        public T parse(String text, Reading reading) throws Refused {
            return parser.parse(text, reading);
        }

        @Override
        public String text(T value, int moneyDigits) {
            return textOf.apply(value, moneyDigits);
        }

        @Override
        public Object stored(T value) {
            return storedOf.apply(value);
        }

        @Override
        public T fromStored(Object stored) {
            return ofStored.apply(stored);
        }
    }

    private static LocalDate date(String text) throws Refused {
        Matcher day = DAY.matcher(text);
        if (!day.matches()) {
            throw new Refused("is not a date", "write year-month-day, such as 2026-03-05");
        }
        try {
            return LocalDate.of(number(day, 1), number(day, 2), number(day, 3));
        } catch (DateTimeException e) {
            throw new Refused("is not a day of the calendar", "write a day that exists, such as 2026-02-28");
        }
    }

    private static LocalTime time(String text) throws Refused {
        Matcher time = TIME.matcher(text);
        if (!time.matches() || number(time, 1) > 23 || number(time, 2) > 59) {
            throw new Refused("is not a time of day", "write hours and minutes, such as 08:30");
        }
        return LocalTime.of(number(time, 1), number(time, 2));
    }

    private static YearMonth month(String text) throws Refused {
        Matcher month = MONTH.matcher(text);
        if (!month.matches() || number(month, 2) < 1 || number(month, 2) > 12) {
            throw new Refused("is not a month", "write year-month, such as 2026-03");
        }
        return YearMonth.of(number(month, 1), number(month, 2));
    }

    private static MonthDay monthDay(String text) throws Refused {
        Matcher day = MONTH_DAY.matcher(text);
        if (!day.matches()) {
            throw new Refused("is not a day of the year", "write month-day, such as 04-15");
        }
        try {
            return MonthDay.of(Month.of(number(day, 1)), number(day, 2));
        } catch (DateTimeException e) {
            throw new Refused("is not a day of the year", "write month-day, such as 04-15");
        }
    }

    /** MonthDay prints itself as {@code --04-15}. */
    private static String monthDayText(MonthDay day) {
        return day.toString().substring(2);
    }

    private static Integer whole(String text) throws Refused {
        if (LARGE.matcher(text.strip()).matches()) {
            throw new Refused("is too large", "write at most nine digits");
        }
        if (!WHOLE.matcher(text.strip()).matches()) {
            throw new Refused("is not a whole number", "write digits only, such as 3");
        }
        return Integer.valueOf(text.strip());
    }

    private static Boolean yes(String text) throws Refused {
        return switch (text.strip()) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new Refused("is neither yes nor empty", "write yes, or leave it empty");
        };
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }
}
