package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Densities by name against the figures of their sources, and which of these nobody has read again. */
class DensityTest {
    private static Density named(String name) {
        return Density.all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Wood Handbook FPL-GTR-190 (2010): specific gravity G at a moisture of M percent weighs 1000 × G × (1 + M / 100) kg/m³. Green
     * wood: G on the green volume and the mean moisture (tables 4-3 and 4-1, as the United States Forest Service carries them in
     * its Research Note NRS-38). At 12 %: table 5-3, of which larch and Douglas fir were read with the Oregon State University
     * and white oak 0.68 and white ash 0.60 are from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "green-oak,0.60,68,false",
        "green-ash,0.55,46,false",
        "green-larch,0.48,60,false",
        "green-douglas-fir,0.45,35,false",
        "dry-oak,0.68,12,true",
        "dry-ash,0.60,12,true",
        "dry-larch,0.52,12,false",
        "dry-douglas-fir,0.48,12,false"
    })
    void timber_weighs_what_its_specific_gravity_and_moisture_make(
            String name, BigDecimal gravity, int moisture, boolean remembered) {
        Density density = named(name);
        assertThat(new BigDecimal(density.perCubicMetre()))
                .isEqualByComparingTo(gravity.multiply(BigDecimal.valueOf(10L * (100 + moisture))));
        assertThat(density.remembered()).isEqualTo(remembered);
    }

    /** What engineering tables print, lowest and highest; aluminium 2.7 from the Wood Handbook, page 4-7. */
    @ParameterizedTest
    @CsvSource({
        "lead,11340,11340",
        "copper,8930,8940",
        "cast-iron,6800,7800",
        "steel,7850,7850",
        "bronze,8780,8920",
        "zinc,7135,7135",
        "aluminium,2700,2700"
    })
    void a_metal_lies_within_what_tables_print(String name, BigDecimal low, BigDecimal high) {
        assertThat(new BigDecimal(named(name).perCubicMetre())).isBetween(low, high);
    }

    @Test
    void no_density_is_without_a_check_here() {
        assertThat(Density.all().stream().map(Density::name))
                .containsExactlyElementsOf(List.of(
                        "lead",
                        "copper",
                        "bronze",
                        "steel",
                        "cast-iron",
                        "zinc",
                        "aluminium",
                        "green-oak",
                        "dry-oak",
                        "green-ash",
                        "dry-ash",
                        "green-larch",
                        "dry-larch",
                        "green-douglas-fir",
                        "dry-douglas-fir"));
    }
}
