package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.OakMill.row;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import weekwright.base.Problem;
import weekwright.base.Problems;

class MaterialRulesTest {
    /** A whole line to be bought, but for what is said otherwise. */
    private static List<String> line(String... columns) {
        List<String> all = new ArrayList<>(List.of(
                "id", "m", "task", "shaft.3", "item", "Oak", "quantity", "2", "unit", "pc", "price_likely", "40"));
        all.addAll(List.of(columns));
        return said(MaterialRules::check, row(Material.class, all.toArray(String[]::new)));
    }

    private static List<String> stock(String... columns) {
        List<String> all = new ArrayList<>(List.of("id", "y", "item", "Oak", "quantity", "2", "unit", "pc"));
        all.addAll(List.of(columns));
        return said(MaterialRules::check, row(StockItem.class, all.toArray(String[]::new)));
    }

    private static <R> List<String> said(BiConsumer<R, Problems> rules, R row) {
        Problems problems = new Problems();
        rules.accept(row, problems);
        return problems.list().stream().map(Problem::text).toList();
    }

    @Test
    void a_whole_line_and_a_whole_thing_have_nothing_to_say() {
        assertThat(line()).isEmpty();
        assertThat(stock()).isEmpty();
    }

    @Test
    void names_are_needed_and_three_figures_rise() {
        assertThat(line("item", "", "price_low", "41", "price_high", "39"))
                .containsExactly(
                        "item: is missing; write what is needed",
                        "price_low: \"41\" is over the likely 40; write 40 or less",
                        "price_high: \"39\" is under the likely 40; write 40 or more");
        assertThat(line("lead_low", "3"))
                .containsExactly("lead_likely: is missing beside low or high; write the likely one, or leave out all");
        assertThat(stock("item", "", "ready_high", "3"))
                .containsExactly(
                        "item: is missing; write what lies there",
                        "ready_likely: is missing beside low or high; write the likely one, or leave out all");
    }

    @Test
    void a_percent_under_one_was_perhaps_meant_as_a_share() {
        assertThat(line("waste", "0.1", "deposit", "0.3"))
                .containsExactly(
                        "waste: \"0.1\" is read as 0.1 %; if a share was meant, write 10",
                        "deposit: \"0.3\" is read as 0.3 %; if a share was meant, write 30");
    }

    @Test
    void nothing_is_promised_or_comes_before_it_is_ordered() {
        assertThat(line("ordered", "2026-11-02", "promised", "2026-11-01", "received", "2026-10-31"))
                .containsExactly(
                        "promised: \"2026-11-01\" is before ordered 2026-11-02; write 2026-11-02 or later, or change ordered",
                        "received: \"2026-10-31\" is before ordered 2026-11-02; write 2026-11-02 or later, or change ordered");
        assertThat(line("ordered", "2026-11-02", "promised", "2026-11-02", "received", "2026-11-02"))
                .isEmpty();
    }

    @Test
    void what_is_to_be_bought_without_quantity_or_price_costs_nothing_and_that_is_remarked() {
        String quantity = "quantity: is missing, so the line costs nothing; write how much is needed";
        String price = "price_likely: is missing, so the line costs nothing; write what one costs";
        assertThat(line("quantity", "", "price_likely", "")).containsExactly(quantity, price);
        assertThat(line("quantity", "", "price_likely", "", "source", "own")).isEmpty();
        assertThat(line("quantity", "", "price_likely", "", "stock", "rope")).isEmpty();
        assertThat(line("quantity", "", "price_likely", "", "received", "2026-11-02"))
                .isEmpty();
    }

    @Test
    void dimensions_that_make_another_quantity_are_told() {
        assertThat(line("unit", "m3", "quantity", "1.3", "dimensions", "12 × 50 × 400 mm × 5 m"))
                .containsExactly(
                        "quantity: \"1.3\" is not the 1.2 m3 that the dimensions make; write 1.2, or change the"
                                + " dimensions");
    }

    @Test
    void wet_wood_without_a_day_counts_as_ready() {
        assertThat(stock("moisture", "wet"))
                .containsExactly(
                        "ready_likely: is missing though it is wet, so it counts as ready; write the days until it"
                                + " is dry, or have them worked out on its sheet");
        assertThat(stock("moisture", "wet", "ready_likely", "200")).isEmpty();
    }
}
