package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.RoundingMode;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What dimensions make. Every figure from outside has its source in the row above it. */
class DimensionsTest {
    private static Dimensions typed(String text) throws Refused {
        return Dimensions.parse(text, Reading.form(2));
    }

    private static String made(String text, String unit) throws Refused {
        return typed(text).make(unit).amount().text();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // sections and lengths, worked by hand
                "6 × 150 × 200 mm × 4.20 m | m3 | 0.756",
                "6x150x200mmx4,2m | m3 | 0.756",
                "2 × 160 × 160 mm × 3.1 m + 4 × 100 × 200 mm × 2 m | m3 | 0.3187",
                "6 × 4.20 m | m | 25.2",
                "6 × 4.20 m + 3 × 2 m | m | 31.2",
                "150 mm × 4 m | m2 | 0.6",
                // board feet, thickness × width in inches × length in feet ÷ 12 (definition of the board foot, NIST
                // Handbook
                // 44, appendix C)
                "2 in × 6 in × 12 ft | bf | 12",
                "6 × 8 in × 20 ft | bf | 80",
                "2 in × 9 1/2 in × 11 ft | bf | 17.4167",
                "1.5 in × 7.25 in × 10 ft | bf | 9.0625",
                "12 × 12 in × 30 ft | bf | 360",
                // 1000 board feet are 2.36 cubic metres, a cubic metre 424 board feet (FAO, Appendix II of its manual
                // of
                // forest measures T0269E, printed to three figures); recomputed from the inch of 0.0254 m
                "1000 bf | m3 | 2.3597",
                "1 m3 | bf | 423.776",
                // a cord of 128 cubic feet is 3.625 m3 (as above)
                "1 cord | m3 | 3.6246",
                "1 cord | ft3 | 128",
                "1 ft3 | l | 28.3168",
                // from the exact inch, foot, yard and pound (NIST SP 811, 2008, appendix B)
                "1 in | mm | 25.4",
                "1 yd | m | 0.9144",
                "1 lb | g | 453.5924",
                "1 m | ft | 3.2808",
                "5 ft 6 in | in | 66",
                "5' 6 1/2\" | in | 66.5",
                "1/3 ft × 3 | ft | 1",
                // a slab of 10 ft × 10 ft × 4 in, by the definition of the yard
                "10 × 10 ft × 4 in | yd3 | 1.2346",
                // weights: lead 11 340, copper 8 940, cast iron 7 200, bronze 8 800, steel 7 850 kg/m3 (engineering
                // tables)
                "0.25 m3 × lead | kg | 2835",
                "0.25 m3 × 11340 kg/m3 | lb | 6250.1051",
                "ball 0.20 m × cast-iron | kg | 30.1593",
                "0.004 m3 × bronze | kg | 35.2",
                "100 × round 8 mm × 75 mm × copper | kg | 3.3703",
                // the same tables by the cubic foot: 708, 558, 490 lb
                "1 ft3 × lead | lb | 707.9331",
                "1 ft3 × copper | lb | 558.106",
                "1 ft3 × steel | lb | 490.0595",
                // timber by name; which of them are from memory, DensityTest says. Green white oak weighs 62.9 lb a
                // cubic foot, 1 008 kg a cubic metre (Wood Handbook FPL-GTR-190, 2010:
                // specific gravity 0.60 on the green volume, 68 % moisture); dry at 12 % 762 kg (0.68)
                "1 m3 × green-oak | kg | 1008",
                "1 ft3 × green-oak | lb | 62.9274",
                "1 m3 × dry-oak | kg | 761.6",
                // what covers: worked by hand
                "46 m2 ÷ 150 mm | m | 306.6667",
                "46 m2/0.115 m | m | 400",
                "9 m2 × 60 pc/m2 | pc | 540",
                "12 l ÷ 0.25 l | tin | 48",
                // bags of ready mix, 0.60 cubic feet from 80 lb: 33.33 cubic feet make 55.6, so 56 (makers' figure,
                // common
                // practice, no source)
                "33.333 ft3 ÷ 0.60 ft3 | bag | 56",
                // a row has one fastener more than spaces, a closed ring as many; the count is rounded up (worked by
                // hand)
                "24 ft every 6 in | pc | 49",
                "100 cm every 7 cm | pc | 16",
                "2 × 24 ft every 6 in | pc | 98",
                "around 3.6 m every 300 mm | pc | 12",
                "0 m every 5 cm | pc | 1",
                // Hoppus: (girth in inches ÷ 4)² × length in feet ÷ 144; the log holds 4/π of that, a Hoppus foot is
                // 1.273
                // cubic feet or 0.03605 m3 (FAO, as above; recomputed 1.2732395 and 0.03605413)
                "girth 48 in × 10 ft | hft | 10",
                "girth 48 in × 10 ft | ft3 | 12.7324",
                "1 hft | ft3 | 1.2732",
                "1000 hft | m3 | 36.0541",
                "girth 120 cm × 4 m | m3 | 0.4584",
                "girth 120 cm × 4 m | hft | 12.7133",
                // a board under an inch counts as an inch in the tally of hardwood (rules of the American hardwood
                // trade,
                // from memory): 3/4 × 8 in × 10 ft are 6.667 so, 5 as measured; from an inch on both are the same
                "tally 3/4 in × 8 in × 10 ft | bf | 6.6667",
                "3/4 in × 8 in × 10 ft | bf | 5",
                "12 × tally 19 mm × 8 in × 10 ft | bf | 80",
                "tally 1 1/2 in × 8 in × 10 ft | bf | 10",
                // softwood is tallied on its nominal size (common practice): a foot of 1 × 4 is 0.3333, of the planed
                // board 0.2188
                "1 in × 4 in × 1 ft | bf | 0.3333",
                "0.75 in × 3.5 in × 1 ft | bf | 0.2188",
                // and so nails of a row by their weight
                "24 ft every 6 in × 12 g | kg | 0.588"
            })
    void dimensions_make_a_quantity_exactly(String text, String unit, String amount) throws Refused {
        assertThat(made(text, unit)).isEqualTo(amount);
    }

    /**
     * Logs: Doyle and Scribner from their formulas, as many tables print them; International 1/4 inch from Michigan Compiled
     * Laws 290.401 (1941), the factor 0.904762 and half an inch in 4 feet; 16 in × 14 ft from the volume library of the
     * United States Forest Service (scrib.f: 151.21).
     */
    @ParameterizedTest
    @CsvSource({
        "6,8,2,6.22,7.55",
        "8,8,8,15.28,16.52",
        "8,16,16,30.56,38.72",
        "10,16,36,55,64.64",
        "12,8,32,42.88,44.03",
        "12,12,48,64.32,69.31",
        "12,16,64,85.76,96.92",
        "14,16,100,122.84,135.57",
        "16,16,144,166.24,180.59",
        "18,12,147,161.97,168.82",
        "20,16,256,272,289.74",
        "24,16,400,403.04,424.37",
        "28,16,576,559.36,584.48",
        "30,16,676,647,674.08",
        "36,16,1024,947.84,981.12"
    })
    void the_three_log_scales_agree_with_their_tables(
            int inches, int feet, String doyle, String scribner, String international) throws Refused {
        String log = inches + " in × " + feet + " ft";
        assertThat(made("doyle " + log, "bf")).isEqualTo(doyle);
        assertThat(toHundredths("scribner " + log)).isEqualTo(scribner);
        assertThat(toHundredths("international " + log)).isEqualTo(international);
    }

    private static String toHundredths(String log) throws Refused {
        return new Quantity(typed(log).make("bf").amount().value().setScale(2, RoundingMode.HALF_UP)).text();
    }

    @Test
    void a_log_that_is_no_multiple_of_four_feet_counts_its_rest_with_the_small_end() throws Refused {
        assertThat(toHundredths("international 16 in × 14 ft")).isEqualTo("151.21");
    }

    @Test
    void logs_under_four_inches_hold_no_boards() throws Refused {
        assertThat(made("doyle 2 in × 16 ft", "bf")).isEqualTo("0");
        assertThat(made("scribner 3 in × 16 ft", "bf")).isEqualTo("0");
        assertThat(made("international 3.9 in × 16 ft", "bf")).isEqualTo("0");
        assertThat(made("3 × doyle 8 in × 16 ft", "bf")).isEqualTo("48");
        assertThat(made("doyle 203.2 mm × 4.8768 m", "bf")).isEqualTo("16");
    }

    /** Doyle passes International between 29 and 30 inches: the tables of both. */
    @Test
    void doyle_is_the_meanest_scale_for_small_logs_and_the_most_generous_for_large_ones() throws Refused {
        assertThat(typed("doyle 29 in × 16 ft").make("bf").amount())
                .isLessThan(typed("international 29 in × 16 ft").make("bf").amount());
        assertThat(typed("doyle 30 in × 16 ft").make("bf").amount())
                .isGreaterThan(typed("international 30 in × 16 ft").make("bf").amount());
    }

    @Test
    void the_text_is_kept_in_one_way_of_writing() throws Refused {
        assertThat(typed("6x150 * 200mm X 4,20 M").text()).isEqualTo("6 × 150 × 200 mm × 4.20 m");
        assertThat(typed("5'6½\"+2 feet").text()).isEqualTo("5 ft 6 1/2 in + 2 ft");
        assertThat(typed("46 m²/150mm").text()).isEqualTo("46 m2 ÷ 150 mm");
        assertThat(typed("Around 24ft every 6\"").text()).isEqualTo("around 24 ft every 6 in");
        String canonical = typed("100x round 8mm x75mm x copper").text();
        assertThat(canonical).isEqualTo("100 × round 8 mm × 75 mm × copper");
        assertThat(Dimensions.parse(canonical, Reading.file(2)).text()).isEqualTo(canonical);
        assertThat(Dimensions.parse("12 l ÷ 0.25 l/m2", Reading.file(2)).text()).isEqualTo("12 l ÷ 0.25 l/m2");
    }

    @Test
    void the_dimensions_are_said_with_what_they_make() throws Refused {
        assertThat(typed("6x150x200 mm x 4.20 m").said("m3")).isEqualTo("6 × 150 × 200 mm × 4.20 m = 0.756 m³");
        assertThat(typed("33.333 ft3 / 0.60 ft3").said("bag")).isEqualTo("33.333 ft³ ÷ 0.60 ft³ = 55.56, so 56 bag");
        assertThat(typed("2 m").said("m3")).isEqualTo("2 m");
    }

    @Test
    void the_usual_unit_is_taken_only_where_nothing_else_can_be_meant() throws Refused {
        assertThat(typed("150 mm × 200 mm × 4 m").usualUnit(false)).isEqualTo(Optional.of("m3"));
        assertThat(typed("2 in × 6 in × 12 ft").usualUnit(true)).isEqualTo(Optional.of("bf"));
        assertThat(typed("0.2 m3 × lead").usualUnit(true)).isEqualTo(Optional.of("lb"));
        assertThat(typed("24 ft every 6 in").usualUnit(true)).isEqualTo(Optional.of("pc"));
        assertThat(typed("6 × 150 × 200 mm × 4 m").usualUnit(false)).isEmpty();
        assertThat(typed("2 × 6 × 12").usualUnit(true)).isEmpty();
        assertThat(typed("12").usualUnit(true)).isEqualTo(Optional.of("pc"));
        assertThat(typed("girth 48 in × 10 ft").usualUnit(false)).isEqualTo(Optional.of("m3"));
    }

    /** A figure without a unit takes that of the figure after it as long as a length is missing; what is left is pieces. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 × 150 × 200 mm × 4.20 m | m3 | 6 pc × 150 mm × 200 mm × 4.20 m",
                "150 × 200 mm × 4.20 m | m3 | 150 mm × 200 mm × 4.20 m",
                "6 × 8 in × 20 ft | bf | 6 in × 8 in × 20 ft",
                "10 × 10 ft × 4 in | yd3 | 10 ft × 10 ft × 4 in",
                "6 × 4.20 m | m2 | 6 m × 4.20 m",
                "6 × 4.20 m | m | ''",
                "6 × 150 mm × 200 mm × 4.20 m | m3 | ''",
                "2 × 160 × 160 mm × 3.1 m + 100 mm × 200 mm × 2 m | m3 | 2 pc × 160 mm × 160 mm × 3.1 m + 100 mm × 200"
                        + " mm × 2 m"
            })
    void a_bare_figure_is_said_in_the_unit_that_it_was_read_in(String text, String unit, String read) throws Refused {
        assertThat(typed(text).readAs(unit)).isEqualTo(read);
    }

    @Test
    void a_field_of_one_length_takes_its_own_unit_where_none_is_typed() throws Refused {
        Reading form = Reading.form(2);
        assertThat(Dimensions.length("150", "mm", form).text()).isEqualTo("150 mm");
        assertThat(Dimensions.length("1½", "in", form).text()).isEqualTo("1 1/2 in");
        assertThat(Dimensions.length("6 in", "mm", form).text()).isEqualTo("6 in");
        assertThat(Dimensions.length("5' 6\"", "mm", form).text()).isEqualTo("5 ft 6 in");
        for (String wrong : new String[] {"3 × 4 m", "2 m + 1 m", "6 kg", "round 3 mm", "24 ft every 6 in"}) {
            assertThatThrownBy(() -> Dimensions.length(wrong, "mm", form))
                    .as(wrong)
                    .hasMessage("is not one length; write it with its unit, such as 150 mm or 6 in");
        }
        assertThat(Dimensions.in("46", "m2", form).isOneArea()).isTrue();
        assertThat(Dimensions.in("8 m × 5.75 m", "m2", form).text()).isEqualTo("8 m × 5.75 m");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "6 × | breaks off where a figure must stand; write such as 6 × 150 × 200 mm × 4.20 m",
                "six boards | cannot be read from \"six boards\" on; write such as 6 × 150 × 200 mm × 4.20 m",
                "6 4 m | cannot be read from \"4 m\" on; write such as 6 × 150 × 200 mm × 4.20 m",
                "-2 m | cannot be read from \"-2 m\" on; write such as 6 × 150 × 200 mm × 4.20 m",
                "2 ell | has the unit \"ell\", which is not known; write mm, cm, m, in, ft, yd, their squares and"
                        + " cubes such as m2, l, bf, kg, lb, pc, or two such as kg/m3",
                "1,200 mm × 3 m | has 1,200, which can be read as 1.200 or as 1200; write 1200, or 1.2000 with the"
                        + " point",
                "3/0 in | divides by 0; write a fraction such as 3/4",
                "4 m ÷ 0 m | divides by 0; write how much one covers",
                "4 m every 0 cm | has a spacing of 0; write a spacing over 0",
                "4 m every 3 | has \"3\" where a length must stand; write it with its unit, such as 150 mm or 6 in",
                "around 4 m | has no spacing after around; write such as around 24 ft every 6 in",
                "doyle 12 in | has no length after the log's diameter; write such as doyle 12 in × 16 ft",
                "doyle 12 × 16 ft | has \"12\" where a length must stand; write it with its unit, such as 150 mm or 6"
                        + " in",
                "doyle 12 m × 16 ft | names a log over 200 ft or 200 in; look at its units",
                "tally 3/4 in | has no width and length after tally; write such as tally 3/4 in × 8 in × 10 ft",
                "tally 3/4 in × 8 × 10 ft | has \"8\" where a length must stand; write it with its unit, such as 150 mm"
                        + " or 6 in",
                "girth 48 × 10 ft | has \"48\" where a length must stand; write it with its unit, such as 150 mm or 6"
                        + " in",
                "5 ft 6 m | has a figure after the feet that is not in inches; write such as 5 ft 6 in"
            })
    void what_cannot_be_read_says_where_and_what_to_write(String text, String message) {
        assertThatThrownBy(() -> typed(text)).hasMessage(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2 m | m3 | makes a length, and m3 is a volume; write two lengths more, such as × 4.20 m, or"
                        + " another unit",
                "200 mm × 4 m | m3 | makes an area, and m3 is a volume; write one length more, such"
                        + " as × 4.20 m, or another unit",
                "2 m3 | m | makes a volume, and m is a length; leave two lengths out, divide by it, or write"
                        + " another unit",
                "2 m3 | kg | makes a volume, and kg is a weight; multiply by the density, such as × 7850"
                        + " kg/m3 or × steel",
                "2 m3 + 2 m | m3 | has \"2 m\", which makes a length, and m3 is a volume; write two lengths more, such"
                        + " as × 4.20 m, or another unit",
                "2 m | kg | makes a length, and kg is a weight; write length × width × height × density",
                "2 m | bag | makes a length, and bag is a count; write another unit, or divide by what one" + " covers",
                // two bare figures before feet or metres are likelier inches or millimetres: asked, not guessed
                "2 × 6 × 12 ft | bf | has 2 × 6 before 12 ft, which can be read as 2 in × 6 in or as 2 ft × 6 ft; write"
                        + " each with its unit, such as 2 in × 6 in × 12 ft",
                "8 × 50 × 150 × 4 m | m3 | has 50 × 150 before 4 m, which can be read as 50 mm × 150 mm or as 50 m ×"
                        + " 150 m; write each with its unit, such as 50 mm × 150 mm × 4 m",
                "2 × 6 × 12 | bf | makes a count, and bf is a volume; write every length with its unit, such as 150 mm"
                        + " × 200 mm × 4.20 m",
                "999999999999 m3 × lead | g | makes more than 999999999999; look at its units"
            })
    void what_makes_something_else_than_the_unit_is_refused(String text, String unit, String message) {
        assertThatThrownBy(() -> typed(text).make(unit)).hasMessage(message);
    }

    @Test
    void a_long_text_is_refused_before_it_is_read() {
        assertThatThrownBy(() -> typed("1 m + ".repeat(60) + "1 m"))
                .hasMessage("is longer than 300 characters; put the rest on another line");
        assertThatThrownBy(() -> typed("1 m+".repeat(40) + "1 m"))
                .hasMessage("has more than 30 parts; put the rest on another line");
    }
}
