package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.OakMill.row;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;

/** Twelve boards of 50 by 400 mm and 5 m are 12 * 0.05 * 0.4 * 5 = 1.2 cubic metres. */
class TakeOffTest {
    private static final String BOARDS = "12 × 50 × 400 mm × 5 m";

    private static Quantity amount(String text) {
        return new Quantity(new BigDecimal(text));
    }

    private static Material line(String quantity, String unit, String lot, String dimensions) {
        return row(
                Material.class,
                "id",
                "oak.1",
                "task",
                "shaft.3",
                "item",
                "Oak boards",
                "quantity",
                quantity,
                "unit",
                unit,
                "lot",
                lot,
                "dimensions",
                dimensions);
    }

    private static Material filled(Optional<Material> before, Material line) {
        Problems problems = new Problems();
        Material filled = TakeOff.filled(before, line, false, problems);
        assertThat(problems.list()).isEmpty();
        return filled;
    }

    private static List<String> faults(Optional<Material> before, Material line) {
        Problems problems = new Problems();
        TakeOff.filled(before, line, false, problems);
        return problems.list().stream().map(Problem::text).toList();
    }

    @Test
    void the_quantity_is_made_of_the_dimensions_where_none_is_typed() {
        assertThat(filled(Optional.empty(), line("", "m3", "", BOARDS)).quantity())
                .contains(amount("1.2"));
        assertThat(filled(Optional.empty(), line("7", "m3", "", "")).quantity()).contains(Quantity.of(7));
    }

    @Test
    void a_quantity_typed_beside_dimensions_that_make_another_is_a_fault_but_for_a_part_of_a_delivery() {
        assertThat(faults(Optional.empty(), line("1.3", "m3", "", BOARDS)))
                .containsExactly(
                        "quantity: \"1.3\" is not the 1.2 m3 that the dimensions make; leave it empty, or leave the"
                                + " dimensions empty");
        assertThat(filled(Optional.empty(), line("1.2", "m3", "", BOARDS)).quantity())
                .contains(amount("1.2"));
        assertThat(filled(Optional.empty(), line("0.4", "m3", "oak.1", BOARDS)).quantity())
                .contains(amount("0.4"));
    }

    @Test
    void a_quantity_from_before_goes_with_changed_dimensions_or_unit() {
        Material before = line("1.2", "m3", "", BOARDS);
        assertThat(filled(Optional.of(before), line("1.2", "m3", "", "6 × 50 × 400 mm × 5 m"))
                        .quantity())
                .contains(amount("0.6"));
        // a board foot is 144 cubic inches of 2.54 cm, 2,359.737 cubic centimetres
        assertThat(filled(Optional.of(before), line("1.2", "bf", "", BOARDS)).quantity())
                .contains(amount("508.5312"));
        assertThat(faults(Optional.of(before), line("1.3", "m3", "", BOARDS))).hasSize(1);
        Material odd = line("1.3", "m3", "", BOARDS);
        assertThat(faults(Optional.of(odd), odd)).hasSize(1);
    }

    @Test
    void dimensions_that_cannot_make_the_unit_are_a_fault() {
        assertThat(faults(Optional.empty(), line("", "kg", "", BOARDS)))
                .hasSize(1)
                .allSatisfy(text -> assertThat(text).startsWith("dimensions: "));
    }

    @Test
    void a_file_s_other_quantity_is_remarked() {
        Problems problems = new Problems();
        TakeOff.check(line("1.3", "m3", "", BOARDS), problems);
        TakeOff.check(line("1.2", "m3", "", BOARDS), problems);
        TakeOff.check(line("0.4", "m3", "oak.1", BOARDS), problems);
        TakeOff.check(line("5", "m3", "", ""), problems);
        assertThat(problems.list())
                .extracting(Problem::text)
                .containsExactly(
                        "quantity: \"1.3\" is not the 1.2 m3 that the dimensions make; write 1.2, or change the"
                                + " dimensions");
    }

    /** 1.2 with 10 in a hundred on top is 1.32. */
    @Test
    void waste_comes_on_top() {
        Material line = line("1.2", "m3", "", "");
        assertThat(TakeOff.withWaste(line)).isEmpty();
        Material wasted = MaterialStore.TABLE.shape().with(line, "waste", Optional.of(Quantity.of(10)));
        assertThat(TakeOff.withWaste(wasted)).contains(amount("1.32"));
    }
}
