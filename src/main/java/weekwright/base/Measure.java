package weekwright.base;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A unit: how many metres, kilograms or pieces one of it is, exactly. Conversion factors: the inch is 0.0254 m, the foot
 * 0.3048 m, the pound 0.45359237 kg, each exactly (NIST SP 811, 2008, appendix B); a board foot is 144 cubic inches (NIST
 * Handbook 44, appendix C), a cord 128 cubic feet. A Hoppus foot is what 144 square inches of a squared quarter girth give in a
 * foot: 4/π cubic feet, 0.03605 m³ (FAO, Appendix II of its manual of forest measures T0269E).
 *
 * @param length power of the metre in it: 1 a length, 2 an area, 3 a volume
 * @param mass power of the kilogram
 */
record Measure(Ratio factor, int length, int mass) {
    static final Measure PIECE = new Measure(Ratio.ONE, 0, 0);
    static final Measure METRE = new Measure(Ratio.ONE, 1, 0);
    static final Measure INCH = new Measure(Ratio.of("0.0254"), 1, 0);
    static final Measure FOOT = new Measure(Ratio.of("0.3048"), 1, 0);
    static final Measure BOARD_FOOT = new Measure(Ratio.of("0.002359737216"), 3, 0);

    private static final Map<String, Measure> NAMED = named();
    private static final Map<String, String> OTHER_WORDS = Map.ofEntries(
            Map.entry("'", "ft"),
            Map.entry("′", "ft"),
            Map.entry("\"", "in"),
            Map.entry("″", "in"),
            Map.entry("inch", "in"),
            Map.entry("inches", "in"),
            Map.entry("foot", "ft"),
            Map.entry("feet", "ft"),
            Map.entry("lbs", "lb"),
            Map.entry("litre", "l"),
            Map.entry("litres", "l"),
            Map.entry("bd ft", "bf"),
            Map.entry("board foot", "bf"),
            Map.entry("board feet", "bf"),
            Map.entry("pcs", "pc"));

    private static Map<String, Measure> named() {
        Map<String, Measure> all = new LinkedHashMap<>();
        Map<String, String> lengths = new LinkedHashMap<>();
        lengths.put("mm", "0.001");
        lengths.put("cm", "0.01");
        lengths.put("m", "1");
        lengths.put("in", "0.0254");
        lengths.put("ft", "0.3048");
        lengths.put("yd", "0.9144");
        lengths.forEach((word, metres) -> {
            Ratio one = Ratio.of(metres);
            all.put(word, new Measure(one, 1, 0));
            all.put(word + "2", new Measure(one.times(one), 2, 0));
            all.put(word + "3", new Measure(one.times(one).times(one), 3, 0));
        });
        all.put("l", new Measure(Ratio.of("0.001"), 3, 0));
        all.put("bf", BOARD_FOOT);
        all.put("mbf", new Measure(Ratio.of("2.359737216"), 3, 0));
        all.put(
                "hft",
                new Measure(Ratio.of("0.028316846592").times(Ratio.of("4")).dividedBy(Ratio.PI), 3, 0));
        all.put("cord", new Measure(Ratio.of("3.624556363776"), 3, 0));
        all.put("g", new Measure(Ratio.of("0.001"), 0, 1));
        all.put("kg", new Measure(Ratio.ONE, 0, 1));
        all.put("t", new Measure(Ratio.of("1000"), 0, 1));
        all.put("oz", new Measure(Ratio.of("0.028349523125"), 0, 1));
        all.put("lb", new Measure(Ratio.of("0.45359237"), 0, 1));
        all.put("pc", PIECE);
        return all;
    }

    /** The unit of a word, also of two divided by a stroke (kg/m3); capitals and ² ³ do not matter. */
    static Optional<Measure> find(String word) {
        String plain = plain(word);
        int stroke = plain.indexOf('/');
        if (stroke > 0) {
            Optional<Measure> over = find(plain.substring(0, stroke));
            Optional<Measure> under = find(plain.substring(stroke + 1));
            return over.isPresent() && under.isPresent()
                    ? Optional.of(over.get().per(under.get()))
                    : Optional.empty();
        }
        return Optional.ofNullable(NAMED.get(plain));
    }

    /** The one way to write a unit: m³ and M3 are m3, a stroke after a figure is ft or in. */
    static String plain(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT).replace('²', '2').replace('³', '3');
        return OTHER_WORDS.getOrDefault(plain, plain);
    }

    /** What is not in the list is counted: bags, boards, sheets. */
    static Measure ofLine(String unit) {
        return find(unit).orElse(PIECE);
    }

    Measure per(Measure other) {
        return new Measure(factor.dividedBy(other.factor), length - other.length, mass - other.mass);
    }

    /** How it is written; one of the list. */
    String word() {
        return NAMED.entrySet().stream()
                .filter(one -> one.getValue().equals(this))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** A length in which rooms and logs are measured, not boards. */
    boolean isLarge() {
        return isLength() && factor.compare(FOOT.factor) >= 0;
    }

    boolean isLength() {
        return length == 1 && mass == 0;
    }

    boolean sameKind(Measure other) {
        return length == other.length && mass == other.mass;
    }

    /** "a volume"; for faults. */
    String kind() {
        if (mass == 0) {
            switch (length) {
                case 0:
                    return "a count";
                case 1:
                    return "a length";
                case 2:
                    return "an area";
                case 3:
                    return "a volume";
                default:
                    break;
            }
        }
        return mass == 1 && length == 0 ? "a weight" : "nothing that is sold";
    }
}
