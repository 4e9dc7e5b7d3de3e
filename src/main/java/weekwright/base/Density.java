package weekwright.base;

import java.util.Map;
import java.util.Optional;

/**
 * Usual densities by name, in kilograms by the cubic metre. Metals: engineering tables, the middle of what they print
 * (lead 11 340; copper 8 930 to 8 940; rolled steel 7 850; cast iron 6 800 to 7 800; bronze for bearings 8 780 to 8 920;
 * zinc 7 135; aluminium 2 700, Wood Handbook FPL-GTR-190, 2010, page 4-7). Timber, from the same handbook: green is the
 * specific gravity on the green volume and the mean moisture of green wood (tables 4-3 and 4-1), dry the specific gravity
 * at 12 % moisture times 1.12 (table 5-3). Real pieces differ; whoever has to lift one weighs it.
 */
final class Density {
    private static final Map<String, String> BY_NAME = Map.ofEntries(
            Map.entry("lead", "11340"),
            Map.entry("copper", "8940"),
            Map.entry("bronze", "8800"),
            Map.entry("steel", "7850"),
            Map.entry("cast-iron", "7200"),
            Map.entry("zinc", "7135"),
            Map.entry("aluminium", "2700"),
            // 0.60 × 1000 × 1.68; 0.68 × 1000 × 1.12
            Map.entry("green-oak", "1008"),
            Map.entry("dry-oak", "761.6"),
            // 0.55 × 1000 × 1.46; 0.60 × 1000 × 1.12
            Map.entry("green-ash", "803"),
            Map.entry("dry-ash", "672"),
            // 0.48 × 1000 × 1.60; 0.52 × 1000 × 1.12
            Map.entry("green-larch", "768"),
            Map.entry("dry-larch", "582.4"),
            // 0.45 × 1000 × 1.35; 0.48 × 1000 × 1.12
            Map.entry("green-douglas-fir", "607.5"),
            Map.entry("dry-douglas-fir", "537.6"));

    static final String NAMES =
            "lead, copper, bronze, steel, cast-iron, zinc, aluminium, green-oak, dry-oak, green-ash,"
                    + " dry-ash, green-larch, dry-larch, green-douglas-fir, dry-douglas-fir";

    private Density() {}

    static Optional<Ratio> of(String name) {
        return Optional.ofNullable(BY_NAME.get(name)).map(Ratio::of);
    }
}
