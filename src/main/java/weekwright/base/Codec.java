package weekwright.base;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * How a value of one type is read from text, written as text and kept in the store. In the store a value is a Long or a
 * String; nothing else.
 *
 * @param <T> the value's type, never Optional
 */
public interface Codec<T> {

    /** Reads a text that is not empty. */
    T parse(String text, Reading reading) throws Refused;

    String text(T value, int moneyDigits);

    /** A Long or a String. */
    Object stored(T value);

    T fromStored(Object stored);

    /** The codec of a column type; enums are their words in lower case with {@code -} for {@code _}, read in any case. */
    @SuppressWarnings("unchecked")
    static <T> Codec<T> of(Class<T> type) {
        if (type.isEnum()) {
            return (Codec<T>) enumCodec(type.asSubclass(Enum.class));
        }
        Codec<?> codec = Codecs.BY_TYPE.get(type);
        if (codec == null) {
            throw new IllegalArgumentException("no codec for " + type.getName());
        }
        return (Codec<T>) codec;
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Codec<?> enumCodec(Class<? extends Enum> type) {
        Enum[] constants = type.getEnumConstants();
        String words = Arrays.stream(constants).map(Codec::word).collect(Collectors.joining(", "));
        return Codecs.kept(
                (text, reading) -> {
                    for (Enum constant : constants) {
                        if (word(constant).equalsIgnoreCase(text.strip())) {
                            return constant;
                        }
                    }
                    throw new Refused("is not a known word here", "write one of " + words);
                },
                constant -> word((Enum<?>) constant));
    }

    /** The word by which an enum constant stands in files and in the store. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
