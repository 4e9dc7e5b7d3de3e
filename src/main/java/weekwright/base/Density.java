package weekwright.base;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Usual densities by name, in kilograms by the cubic metre. Metals: engineering tables, the middle of what they print
 * (lead 11 340; copper 8 930 to 8 940; rolled steel 7 850; cast iron 6 800 to 7 800; bronze for bearings 8 780 to 8 920;
 * zinc 7 135; aluminium 2 700, Wood Handbook FPL-GTR-190, 2010, page 4-7). Timber, from the same handbook: green is the
 * specific gravity on the green volume and the mean moisture of green wood (tables 4-3 and 4-1), dry the specific gravity
 * at 12 % moisture times 1.12 (table 5-3). Real pieces differ; whoever has to lift one weighs it.
 *
 * @param name as dimensions call it
 * @param perCubicMetre kilograms
 * @param remembered whether its figure was written from memory and not read again in the source
 */
public record Density(String name, String perCubicMetre, boolean remembered) {
    private static final Map<String, Density> BY_NAME = new LinkedHashMap<>();

    static {
        read("lead", "11340");
        read("copper", "8940");
        read("bronze", "8800");
        read("steel", "7850");
        read("cast-iron", "7200");
        read("zinc", "7135");
        read("aluminium", "2700");
        // 0.60 × 1000 × 1.68; 0.68 × 1000 × 1.12
        read("green-oak", "1008");
        remembered("dry-oak", "761.6");
        // 0.55 × 1000 × 1.46; 0.60 × 1000 × 1.12
        read("green-ash", "803");
        remembered("dry-ash", "672");
        // 0.48 × 1000 × 1.60; 0.52 × 1000 × 1.12
        read("green-larch", "768");
        read("dry-larch", "582.4");
        // 0.45 × 1000 × 1.35; 0.48 × 1000 × 1.12
        read("green-douglas-fir", "607.5");
        read("dry-douglas-fir", "537.6");
    }

    private static void read(String name, String perCubicMetre) {
        BY_NAME.put(name, new Density(name, perCubicMetre, false));
    }

    private static void remembered(String name, String perCubicMetre) {
        BY_NAME.put(name, new Density(name, perCubicMetre, true));
    }

    /** All of them, metals first. */
    public static List<Density> all() {
        return List.copyOf(BY_NAME.values());
    }

    static Optional<Ratio> of(String name) {
        return Optional.ofNullable(BY_NAME.get(name)).map(density -> Ratio.of(density.perCubicMetre));
    }
}
