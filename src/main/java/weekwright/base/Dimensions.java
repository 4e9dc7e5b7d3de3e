package weekwright.base;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a quantity is built from, as it was measured: {@code 6 × 150 × 200 mm × 4.20 m}, {@code 46 m2 ÷ 150 mm},
 * {@code 0.25 m3 × lead}, {@code 24 ft every 6 in}, several joined by +. The text is kept; what it makes is worked out
 * exactly and rounded once.
 */
public record Dimensions(String text) {
    private static final int PLACES = 4;
    private static final int MOST_CHARACTERS = 300;
    private static final BigDecimal MOST = new BigDecimal("999999999999");

    /**
     * What dimensions make.
     *
     * @param amount in the unit asked for, to four places (half even); what is counted is rounded up to whole ones
     * @param before a count before it was rounded up, to two places; empty where nothing was rounded up
     */
    public record Made(Quantity amount, String before) {}

    /** Reads {@code x}, {@code *} and {@code ×} alike, and writes them one way. */
    public static Dimensions parse(String text, Reading reading) throws Refused {
        if (text.strip().length() > MOST_CHARACTERS) {
            throw new Refused("is longer than " + MOST_CHARACTERS + " characters", "put the rest on another line");
        }
        return new Dimensions(
                DimensionParser.read(text, reading).stream().map(Product::text).collect(Collectors.joining(" + ")));
    }

    /**
     * A length as it was typed into a field of its own.
     *
     * @param unit the one that a bare figure is in there
     */
    public static Dimensions length(String text, String unit, Reading reading) throws Refused {
        Dimensions read = in(text, unit, reading);
        if (!read.isOneLength()) {
            throw new Refused("is not one length", "write it with its unit, such as 150 mm or 6 in");
        }
        return read;
    }

    /** As they were typed; a bare figure alone is in this unit. */
    public static Dimensions in(String text, String unit, Reading reading) throws Refused {
        Dimensions read = parse(text, reading);
        List<Product> products = read.products();
        boolean bare = products.size() == 1
                && products.get(0).factors().size() == 1
                && products.get(0).factors().get(0).bare();
        return bare ? parse(text + " " + unit, reading) : read;
    }

    /**
     * How much it makes of a unit.
     *
     * @param unit a unit of length, area, volume or weight; any other word is counted
     * @throws Refused where it makes something else, such as an area for a volume
     */
    public Made make(String unit) throws Refused {
        Measure wanted = Measure.ofLine(unit);
        Ratio total = Ratio.ZERO;
        List<Product> products = products();
        for (Product product : products) {
            total = total.plus(product.in(wanted, unit, products.size() == 1));
        }
        Ratio amount = total.dividedBy(wanted.factor());
        boolean counted = wanted.sameKind(Measure.PIECE);
        BigDecimal rounded =
                counted ? amount.rounded(0, RoundingMode.CEILING) : amount.rounded(PLACES, RoundingMode.HALF_EVEN);
        if (rounded.compareTo(MOST) > 0) {
            throw new Refused("makes more than " + MOST.toPlainString(), "look at its units");
        }
        return new Made(
                new Quantity(rounded),
                counted && !amount.isWhole()
                        ? amount.rounded(2, RoundingMode.HALF_EVEN).toPlainString()
                        : "");
    }

    /**
     * Every figure with the unit that it was read in, where one of them has none of its own and is a length; else empty:
     * "6 pc × 150 mm × 200 mm × 4.20 m".
     */
    public String readAs(String unit) {
        List<Product> products = products();
        List<String> read = products.stream()
                .map(product -> product.readAs(Measure.ofLine(unit)))
                .toList();
        if (read.stream().allMatch(String::isEmpty)) {
            return "";
        }
        return IntStream.range(0, read.size())
                .mapToObj(i -> read.get(i).isEmpty() ? products.get(i).text() : read.get(i))
                .collect(Collectors.joining(" + "));
    }

    /** Whether it is one length, such as a thickness or a diameter, and no sum or product. */
    public boolean isOneLength() {
        return isOne(1);
    }

    /** Whether it is one area. */
    public boolean isOneArea() {
        return isOne(2);
    }

    private boolean isOne(int length) {
        List<Product> products = products();
        return products.size() == 1
                && products.get(0).factors().size() == 1
                && products.get(0).kind().sameKind(new Measure(Ratio.ONE, length, 0));
    }

    /** The usual unit of what it makes, where the line names none; empty where only a unit says what is meant. */
    public Optional<String> usualUnit(boolean imperial) {
        if (products().stream().anyMatch(Product::open)) {
            return Optional.empty();
        }
        Measure kind = products().get(0).kind();
        if (kind.mass() != 0) {
            return kind.mass() == 1 && kind.length() == 0 ? Optional.of(imperial ? "lb" : "kg") : Optional.empty();
        }
        return switch (kind.length()) {
            case 0 -> Optional.of("pc");
            case 1 -> Optional.of(imperial ? "ft" : "m");
            case 2 -> Optional.of(imperial ? "ft2" : "m2");
            case 3 -> Optional.of(imperial ? "bf" : "m3");
            default -> Optional.empty();
        };
    }

    /** "6 × 150 × 200 mm × 4.20 m = 0.756 m³"; only the dimensions where the unit does not fit them. */
    public String said(String unit) {
        String plain = raised(text);
        try {
            Made made = make(unit);
            return plain + " = " + (made.before().isEmpty() ? "" : made.before() + ", so ")
                    + (made.amount().text() + " " + raised(unit)).strip();
        } catch (Refused refused) {
            return plain;
        }
    }

    /** Powers of lengths as they are printed: m³, ft². */
    private static String raised(String text) {
        return text.replaceAll("\\b(mm|cm|m|in|ft|yd)2\\b", "$1²").replaceAll("\\b(mm|cm|m|in|ft|yd)3\\b", "$1³");
    }

    private List<Product> products() {
        try {
            return DimensionParser.read(text, Reading.file(0));
        } catch (Refused e) {
            throw new IllegalStateException("dimensions hold \"" + text + "\", which " + e.getMessage(), e);
        }
    }

    @Override
    public String toString() {
        return text;
    }
}
