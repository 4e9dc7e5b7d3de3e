package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.build.Project;
import weekwright.build.SettingsStore;
import weekwright.db.Stale;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** The calculators of a material line; the figures are those of DimensionsTest, with their sources there. */
class CalculatorsTest {
    private static final String PATH = "/build/tasks/gate.2/materials/new";
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final ServerFixture IMPERIAL = ServerFixture.of(db -> {
        SmallProject.fill(db);
        db.write("test", write -> {
            var project = SettingsStore.PROJECT.list(write).get(0);
            try {
                return SettingsStore.PROJECT.update(
                        write,
                        project.row(),
                        project.version(),
                        SettingsStore.PROJECT
                                .shape()
                                .with(project.value(), "units", Optional.of(Project.Units.IMPERIAL)));
            } catch (Stale e) {
                throw new IllegalStateException(e);
            }
        });
    });

    @AfterAll
    static void close() {
        SERVER.close();
        IMPERIAL.close();
    }

    private static final Visitor ILSE = SERVER.as("ilse");
    private static final Visitor FAR_ILSE = IMPERIAL.as("ilse");

    private static Visitor.Reply press(Visitor ilse, String button, Map<String, String> fields) {
        Visitor.Form form = ilse.form(ilse.get(PATH));
        fields.forEach(form::with);
        return form.press(button);
    }

    /** "board_thick=50; board_wide=200" as fields. */
    private static Map<String, String> fields(String text) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (String one : text.split("; ")) {
            fields.put(one.substring(0, one.indexOf('=')), one.substring(one.indexOf('=') + 1));
        }
        return fields;
    }

    private static final String LINE = "In the line now, not saved yet: ";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boards | board_count=6; board_thick=150; board_wide=200; board_long=4.2; board_as=m3 |"
                        + " 6 × 150 mm × 200 mm × 4.2 m | m3 | 6 × 150 mm × 200 mm × 4.2 m = 0.756 m³.",
                "boards | board_thick=50; board_wide=200; board_long=3.6; board_as=bf | 50 mm × 200 mm × 3.6 m | bf |"
                        + " 50 mm × 200 mm × 3.6 m = 15.2559 bf. As measured 15.2559 board feet; at least an inch thick,"
                        + " as hardwood is often tallied, 15.2559.",
                "logs | log_across=300; log_long=4; log_scale=international | international 300 mm × 4 m | bf |"
                        + " international 300 mm × 4 m = 72.5455 bf. By the three scales in board feet: Doyle 50.0427,"
                        + " Scribner 67.7355, International 72.5455.",
                "logs | log_count=2; log_across=120 cm; log_long=4; log_scale=hoppus | 2 × girth 120 cm × 4 m | hft |"
                        + " 2 × girth 120 cm × 4 m = 25.4266 hft. 25.4266 Hoppus feet, 0.9167 m³ in all.",
                "logs | log_across=1200; log_long=4; log_scale=girth | girth 1200 mm × 4 m | m3 |"
                        + " girth 1200 mm × 4 m = 0.4584 m³. 12.7133 Hoppus feet, 0.4584 m³ in all.",
                "area | area=46; area_cover=150 | 46 m2 ÷ 150 mm | m | 46 m² ÷ 150 mm = 306.6667 m.",
                "area | area=8 m x 5.75 m; area_cover=0.05 m2 | 8 m × 5.75 m ÷ 0.05 m2 | pc | 8 m × 5.75 m ÷ 0.05 m² ="
                        + " 920 pc.",
                "area | unit=sheet; area=10; area_cover=2.88 m2 | 10 m2 ÷ 2.88 m2 | sheet | 10 m² ÷ 2.88 m² = 3.47, so"
                        + " 4 sheet.",
                "weight | weight_volume=0.25; weight_of=lead | 0.25 m3 × lead | kg | 0.25 m³ × lead = 2835 kg.",
                "weight | unit=t; weight_volume=200 x 200 mm x 5 m; weight_of=green-oak |"
                        + " 200 × 200 mm × 5 m × green-oak | t | 200 × 200 mm × 5 m × green-oak = 0.2016 t.",
                "row | row_count=2; row_long=24 ft; row_every=6 in | 2 × 24 ft every 6 in | pc | 2 × 24 ft every 6 in"
                        + " = 98 pc.",
                "row | row_long=3.6; row_every=300; row_closed=yes | around 3.6 m every 300 mm | pc | around 3.6 m"
                        + " every 300 mm = 12 pc."
            })
    void each_fills_the_line_in_metric(String button, String typed, String dimensions, String unit, String said) {
        Visitor.Reply reply = press(ILSE, button, fields(typed));
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.page().select(".flash p").text()).isEqualTo(LINE + said);
        Visitor.Form form = ILSE.form(reply);
        assertThat(form.value("dimensions")).isEqualTo(dimensions);
        assertThat(form.value("unit")).isEqualTo(unit);
        assertThat(form.value("quantity")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boards | board_thick=3/4; board_wide=8; board_long=10; board_as=tally | tally 3/4 in × 8 in × 10 ft |"
                        + " bf | tally 3/4 in × 8 in × 10 ft = 6.6667 bf. As measured 5 board feet; at least an inch"
                        + " thick, as hardwood is often tallied, 6.6667.",
                "boards | board_count=10; board_thick=2; board_wide=9 1/2; board_long=11; board_as=bf |"
                        + " 10 × 2 in × 9 1/2 in × 11 ft | bf | 10 × 2 in × 9 1/2 in × 11 ft = 174.1667 bf. As measured"
                        + " 174.1667 board feet; at least an inch thick, as hardwood is often tallied, 174.1667.",
                "logs | log_across=12; log_long=16; log_scale=doyle | doyle 12 in × 16 ft | bf | doyle 12 in × 16 ft ="
                        + " 64 bf. By the three scales in board feet: Doyle 64, Scribner 85.76, International 96.9181.",
                "logs | log_across=48; log_long=10; log_scale=hoppus | girth 48 in × 10 ft | hft | girth 48 in × 10 ft"
                        + " = 10 hft. 10 Hoppus feet, 0.3605 m³ in all.",
                "area | area=9 ft x 12 ft; area_cover=5 | 9 ft × 12 ft ÷ 5 in | ft | 9 ft × 12 ft ÷ 5 in = 259.2 ft.",
                "weight | weight_volume=1; weight_of=copper | 1 ft3 × copper | lb | 1 ft³ × copper = 558.106 lb.",
                "row | row_long=24; row_every=6 | 24 ft every 6 in | pc | 24 ft every 6 in = 49 pc."
            })
    void each_fills_the_line_in_imperial_units(
            String button, String typed, String dimensions, String unit, String said) {
        Visitor.Reply reply = press(FAR_ILSE, button, fields(typed));
        assertThat(reply.page().select(".flash p").text()).isEqualTo(LINE + said);
        Visitor.Form form = FAR_ILSE.form(reply);
        assertThat(form.value("dimensions")).isEqualTo(dimensions);
        assertThat(form.value("unit")).isEqualTo(unit);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boards | board_count=0; board_thick=x; board_wide=2 m x 3 m; board_long=1,234 | \"0\" is no number of"
                        + " pieces; write 1 or more # \"x\" cannot be read from \"x\" on; write such as 6 × 150 × 200 mm ×"
                        + " 4.20 m # \"2 m x 3 m\" is not one length; write it with its unit, such as 150 mm or 6 in #"
                        + " \"1,234\" has 1,234, which can be read as 1.234 or as 1234; write 1234, or 1.2340 with the"
                        + " point",
                "boards | board_thick=5; board_wide=5; board_long=5; board_as=cords | \"cords\" is not one of those"
                        + " here; choose one of the list",
                "logs | log_across=; log_long=-4 | is missing; it has to be given # \"-4\" cannot be read from \"-4\""
                        + " on; write such as 6 × 150 × 200 mm × 4.20 m",
                "logs | log_across=9 m; log_long=4; log_scale=doyle | \"9 m\" names a log over 200 ft or 200 in; look"
                        + " at its units",
                "area | area=3 m; area_cover=2 kg | \"3 m\" makes a length, and m2 is an area; write one length more,"
                        + " such as × 4.20 m, or another unit # \"2 kg\" is neither one width nor one area; write such as"
                        + " 150 mm, or 0.05 m2",
                "area | area=3 m2 + 2 m2; area_cover=0 m2 | \"3 m2 + 2 m2\" is a sum; work out one part after the"
                        + " other, and tick that it is added",
                "area | area=3 m2; area_cover=0 m2 | \"3 m2 ÷ 0 m2\" divides by 0; write how much one covers",
                "weight | weight_volume=2 m | \"2 m\" makes a length, and m3 is a volume; write two lengths more, such"
                        + " as × 4.20 m, or another unit # is missing; choose one of the list",
                "row | row_count=1.5; row_long=4; row_every=0 | \"1.5\" is not a whole number; write digits only, such"
                        + " as 3",
                "row | row_long=4; row_every=0 | \"4 m every 0 mm\" has a spacing of 0; write a spacing over 0",
                "row | sum=yes; dimensions=2 m3; unit=m3; row_long=4; row_every=1 m | \"2 m3 + 4 m every 1 m\" has \"2"
                        + " m3\", which makes a volume, and pc is a count; write another unit, or divide by what one"
                        + " covers"
            })
    void what_cannot_be_worked_out_is_told_at_its_field_and_nothing_typed_is_lost(
            String button, String typed, String said) {
        Map<String, String> fields = fields(typed);
        fields.put("item", "Oak");
        Visitor.Reply reply = press(ILSE, button, fields);
        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.troubles()).containsExactly(said.split(" # "));
        Visitor.Form again = ILSE.form(reply);
        fields.forEach((field, text) -> assertThat(again.value(field)).as(field).isEqualTo(text));
    }

    @Test
    void one_after_the_other_is_added_and_the_line_is_saved_with_the_rest_of_the_form() {
        Visitor.Reply first = press(
                ILSE,
                "boards",
                fields("item=Oak beams; price_likely=900; board_count=2; board_thick=160; board_wide=160;"
                        + " board_long=3.1; board_as=m3"));
        Visitor.Reply second = ILSE.form(first)
                .with("sum", "yes")
                .with("board_count", "4")
                .with("board_thick", "100")
                .with("board_wide", "200")
                .with("board_long", "2")
                .press("boards");
        assertThat(ILSE.form(second).value("item")).isEqualTo("Oak beams");
        Visitor.Reply saved = ILSE.follow(ILSE.form(second).send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("Oak beams is listed. 2 × 160 mm × 160 mm × 3.1 m + 4 × 100 mm × 200 mm × 2 m = 0.3187 m³.");
        Material line = SERVER.db().read(MaterialStore.TABLE::values).stream()
                .filter(one -> one.item().equals("Oak beams"))
                .findFirst()
                .orElseThrow();
        assertThat(line.quantity().orElseThrow().text() + " " + line.unit()).isEqualTo("0.3187 m3");
        Visitor.Form edit = ILSE.form(ILSE.get("/build/materials/" + line.id() + "/edit"))
                .with("weight_volume", "0.3187")
                .with("weight_of", "green-oak");
        Visitor.Reply weighed = edit.press("weight");
        assertThat(ILSE.form(weighed).value("dimensions")).isEqualTo("0.3187 m3 × green-oak");
        assertThat(ILSE.form(weighed).value("unit")).isEqualTo("kg");
    }

    @Test
    void the_page_says_the_unit_of_a_bare_figure_and_which_densities_are_from_memory() {
        Visitor.Reply page = ILSE.get(PATH);
        assertThat(page.page().select("#dimensions-hint").text())
                .contains("A figure without a unit takes that of the figure after it while a length is missing (150 ×"
                        + " 200 mm: both mm); what is left over is a number of pieces.");
        assertThat(page.page()
                        .select(".field:has(#board_thick) .unit, .field:has(#board_long) .unit")
                        .eachText())
                .containsExactly("mm", "m");
        assertThat(page.page().select("#weight_of option:contains(from memory)").eachText())
                .containsExactly("dry oak, 761.6 kg/m³ (from memory)", "dry ash, 672 kg/m³ (from memory)");
        assertThat(page.page().select("details:has(#board_thick)").hasAttr("open"))
                .isFalse();
        assertThat(FAR_ILSE.get(PATH)
                        .page()
                        .select(".field:has(#board_thick) .unit, .field:has(#board_long) .unit")
                        .eachText())
                .containsExactly("in", "ft");
    }

    /** Enter in a field presses the first button of a form: that must not be one of the calculators. */
    @Test
    void enter_saves_the_line() {
        assertThat(ILSE.get(PATH).page().select("main form.form button").first().attr("name"))
                .isEmpty();
    }
}
