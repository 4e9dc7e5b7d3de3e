package weekwright.render.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import weekwright.render.Templates;
import weekwright.render.chart.AheadPicture.Cash;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Notch;
import weekwright.render.chart.AheadPicture.Pointers;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Slot;
import weekwright.render.chart.AheadPicture.Stage;

class AheadPictureTest {
    /** The Monday four weeks before that of 25 November 2026. */
    private static final LocalDate WIDE_FIRST = LocalDate.of(2026, 10, 26);

    private static final LocalDate UPRIGHT_FIRST = LocalDate.of(2026, 11, 16);
    /** Drawn lengths are rounded to a tenth of a pixel. */
    private static final double ROUNDED = 0.06;

    private static Drawing wide(Model model) throws Exception {
        return new Drawing(new AheadPicture(model, MillYear.FORMATS, AheadPane.PLAIN).wide());
    }

    private static Drawing upright(Model model) throws Exception {
        return new Drawing(new AheadPicture(model, MillYear.FORMATS, AheadPane.PLAIN).upright());
    }

    /** 24 weeks on 1200 pixels, from 4. */
    private static double wideX(String iso) {
        return 4 + ChronoUnit.DAYS.between(WIDE_FIRST, LocalDate.parse(iso)) * 1200 / 168.0;
    }

    static List<Model> models() {
        List<Stage> crowd = new ArrayList<>(MillYear.stages());
        crowd.add(MillYear.begun(
                "Roof timbers <& tiles>",
                "2026-11-02",
                "2026-12-05",
                "2026-12-12",
                "2026-12-24",
                new Notch("rafters", MillYear.day("2026-12-01")),
                new Notch("purlins", MillYear.day("2026-12-03")),
                new Notch("ridge", MillYear.day("2026-12-04"))));
        crowd.add(MillYear.begun("Loft stair", "2026-11-09", "2026-12-04", "2026-12-05", "2026-12-07"));
        crowd.add(MillYear.begun("Grain bin", "2026-11-20", "2026-11-27", "2026-11-28", "2026-12-02"));
        return List.of(
                MillYear.model(),
                MillYear.model(crowd),
                MillYear.model(List.of()),
                new Model(
                        MillYear.TODAY,
                        DayOfWeek.FRIDAY,
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        0,
                        new Cash(0, 0, List.of(), List.of(), List.of()),
                        Pointers.NONE));
    }

    static Stream<String> drawings() {
        return models().stream()
                .map(m -> new AheadPicture(m, MillYear.FORMATS, AheadPane.PLAIN))
                .flatMap(p -> Stream.of(p.wide(), p.medium(), p.upright()));
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void every_drawing_is_well_formed_small_and_has_no_inline_style(String text) throws Exception {
        Drawing drawing = new Drawing(text);
        assertThat(text.getBytes(StandardCharsets.UTF_8).length).isLessThan(150_000);
        assertThat(text)
                .doesNotContain(" style=")
                .doesNotContain("<style")
                .doesNotContain("NaN")
                .doesNotContain("Infinity");
        assertThat(drawing.all("title").get(0).getTextContent())
                .startsWith("Stages, Fridays and money on one line of weeks");
        assertThat(drawing.all("svg").get(0).getAttribute("aria-labelledby"))
                .isEqualTo(drawing.all("title").get(0).getAttribute("id") + " "
                        + drawing.all("desc").get(0).getAttribute("id"));
    }

    @ParameterizedTest
    @MethodSource("models")
    void the_same_figures_give_the_same_text(Model model) {
        AheadPicture once = new AheadPicture(model, MillYear.FORMATS, AheadPane.PLAIN);
        AheadPicture again = new AheadPicture(model, MillYear.FORMATS, AheadPane.PLAIN);
        assertThat(once.wide()).isEqualTo(again.wide());
        assertThat(once.upright()).isEqualTo(again.upright());
    }

    @Test
    void pegs_stand_on_the_day_of_the_even_chance_at_half_depth() throws Exception {
        List<Element> pegs = wide(MillYear.model()).of("circle", "peg");
        assertThat(pegs).hasSize(2);
        assertThat(Drawing.number(pegs.get(0), "cx")).isCloseTo(wideX("2026-12-09"), within(ROUNDED));
        assertThat(Drawing.number(pegs.get(1), "cx")).isCloseTo(wideX("2027-03-02"), within(ROUNDED));
        assertThat(Drawing.number(pegs.get(0), "cy")).isEqualTo(57 + 11.5);
    }

    @Test
    void the_cut_leaves_the_upper_edge_at_one_in_ten_and_meets_the_lower_one_at_nine_in_ten() throws Exception {
        double[] shaft = Drawing.points(
                wide(MillYear.model()).of("polygon", "timber-line").get(0));
        // upper left, P10 on top, P50 at half depth, P90 at the foot, lower left
        assertThat(shaft[2]).isCloseTo(wideX("2026-12-03"), within(ROUNDED));
        assertThat(shaft[3]).isEqualTo(57);
        assertThat(shaft[4]).isCloseTo(wideX("2026-12-09"), within(ROUNDED));
        assertThat(shaft[5]).isEqualTo(68.5);
        assertThat(shaft[6]).isCloseTo(wideX("2026-12-19"), within(ROUNDED));
        assertThat(shaft[7]).isEqualTo(80);
        assertThat(shaft[0]).isEqualTo(4);
    }

    @Test
    void a_stage_begins_with_the_cut_its_forerunner_ends_with() {
        Timber before = new Timber(new double[] {0, 0, 0}, new double[] {10, 16, 26});
        Timber after = new Timber(new double[] {10, 16, 26}, new double[] {40, 50, 60});
        for (double day = 0; day < 40; day += 0.5) {
            double woodBefore = Math.max(0, 1 - before.upperEdge(day));
            double woodAfter = Math.max(0, after.lowerEdge(day));
            assertThat(woodBefore + woodAfter).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void a_timber_that_runs_past_the_sheet_is_cut_off_there_with_a_break_line() throws Exception {
        Drawing drawing = wide(MillYear.model());
        double[] sluice = Drawing.points(drawing.of("polygon", "timber-line").get(3));
        for (int i = 0; i < sluice.length; i += 2) {
            assertThat(sluice[i]).isBetween(4.0, 1204.0);
        }
        // the shaft and the sluice began before the sheet; the hurst frame and the sluice go on after it
        assertThat(drawing.of("polyline", "break-line")).hasSize(4);
        assertThat(drawing.texts()).contains("about 8 May 2027", "about 3 May 2027");
    }

    @Test
    void frames_stand_on_their_fridays_and_fill_as_far_as_they_are_shot() throws Exception {
        Drawing drawing = wide(MillYear.model());
        List<Element> frames = drawing.of("rect", "frame");
        assertThat(frames).hasSize(24);
        Element first = frames.get(4);
        assertThat(Drawing.number(first, "x") + 15).isCloseTo(wideX("2026-11-27"), within(ROUNDED));
        List<Element> fills = drawing.of("rect", "frame-fill");
        // two safe, one close, one at risk, one from the bank
        assertThat(fills).hasSize(5);
        assertThat(Drawing.number(fills.get(2), "height")).isEqualTo(12 * .25);
        assertThat(drawing.of("rect", "at-risk")).hasSize(1);
        assertThat(drawing.of("rect", "out")).hasSize(4);
        assertThat(drawing.texts()).contains("close", "at risk", "bank").doesNotContain("open");
    }

    @Test
    void the_stair_begins_at_the_reserve_and_rises_on_each_order_day_by_what_it_costs() throws Exception {
        Drawing drawing = wide(MillYear.model());
        double[] stair = Drawing.points(drawing.of("polyline", "stair").get(0));
        double reserve = Drawing.number(drawing.of("line", "reserve").get(0), "y1");
        assertThat(stair[0]).isCloseTo(wideX("2026-11-25"), within(ROUNDED));
        assertThat(stair[1]).isEqualTo(reserve);
        assertThat(stair[2]).isCloseTo(wideX("2026-12-04"), within(ROUNDED));
        assertThat(stair[6]).isCloseTo(wideX("2027-01-25"), within(ROUNDED));
        assertThat(stair[10]).isCloseTo(wideX("2027-03-12"), within(ROUNDED));
        double oak = stair[3] - stair[5];
        double gudgeons = stair[7] - stair[9];
        assertThat(oak / gudgeons).isCloseTo(518 / 164.0, within(0.02));
        // the reserve lies a tenth of the band above its foot, the band ends 6 % above the highest need
        assertThat((532 - reserve) / (532 - 340)).isCloseTo(0.1, within(0.001));
        double highest = stair[stair.length - 1];
        assertThat((reserve - 340) / (reserve - highest)).isCloseTo(1.06, within(0.001));
    }

    @Test
    void a_gap_is_as_long_as_what_is_missing_and_says_it() throws Exception {
        Drawing drawing = wide(MillYear.model());
        List<Element> gaps = drawing.of("line", "gap");
        // an upright and two end bars for each of the two purchases that are short
        assertThat(gaps).hasSize(6);
        double perEuro = (532 - 340) / (bandHigh() - bandLow());
        assertThat(Drawing.number(gaps.get(0), "y2") - Drawing.number(gaps.get(0), "y1"))
                .isCloseTo(25_000 * perEuro, within(2 * ROUNDED));
        assertThat(drawing.texts()).contains("short €250", "short €1,800", "Oak for the rims €5,180");
    }

    private static double bandHigh() {
        // the stair ends at 3,000 + 5,180 + 1,640 + 3,900; the band 6 % above the reserve's distance to it
        return 300_000 + 1_072_000 * 1.06;
    }

    private static double bandLow() {
        return 300_000 - 1_072_000 * 1.06 / 9;
    }

    @Test
    void the_short_field_covers_just_the_days_on_which_the_even_chance_lies_under_the_stair() {
        MoneyBand band = new MoneyBand(MillYear.cash(), WIDE_FIRST, MillYear.TODAY, 168);
        MoneyBand.Plane plain = new MoneyBand.Plane() {
            @Override
            public double x(double day, double minor) {
                return day;
            }

            @Override
            public double y(double day, double minor) {
                return minor;
            }
        };
        List<double[]> fields = band.shortFields(plain);
        for (double day = 30.25; day < 168; day += 0.5) {
            double at = day;
            boolean covered = fields.stream().anyMatch(f -> f[0] <= at && at <= f[2]);
            double even = band.fanAt(day, f -> f.p50());
            assertThat(covered).as("day %s", day).isEqualTo(even < band.stairAt(day));
        }
        assertThat(fields).isNotEmpty();
    }

    @Test
    void the_fan_and_the_median_begin_today_with_the_money_there_is() throws Exception {
        Drawing drawing = wide(MillYear.model());
        double[] middle = Drawing.points(drawing.of("polyline", "fan-middle").get(0));
        double[] past = Drawing.points(drawing.of("polyline", "cash-past").get(0));
        assertThat(middle[0]).isCloseTo(wideX("2026-11-25"), within(ROUNDED));
        assertThat(past[past.length - 2]).isEqualTo(middle[0]);
        assertThat(past[past.length - 1]).isEqualTo(middle[1]);
        assertThat(drawing.texts()).contains("€7,740", "reserve €3,000");
    }

    @Test
    void today_is_a_line_through_the_whole_sheet_and_in_hand_ends_after_its_last_friday() throws Exception {
        Drawing drawing = wide(MillYear.model());
        assertThat(Drawing.number(drawing.of("line", "today-line").get(0), "x1"))
                .isCloseTo(wideX("2026-11-25"), within(ROUNDED));
        Element inHand = drawing.of("line", "dimension").get(0);
        assertThat(Drawing.number(inHand, "x1")).isCloseTo(wideX("2026-11-25"), within(ROUNDED));
        assertThat(Drawing.number(inHand, "x2")).isCloseTo(wideX("2026-12-18") + 15, within(ROUNDED));
        assertThat(drawing.texts()).contains("4 weeks in hand");
    }

    @Test
    void each_sentence_finds_its_letter_again() throws Exception {
        assertThat(wide(MillYear.model()).of("text", "balloon-letter").stream()
                        .map(Element::getTextContent)
                        .sorted())
                .containsExactly("A", "B", "C", "D", "E");
        assertThat(upright(MillYear.model()).of("text", "balloon-letter").stream()
                        .map(Element::getTextContent)
                        .sorted())
                .containsExactly("A", "B", "C", "D", "E");
    }

    @Test
    void a_purchase_that_is_covered_carries_its_letter_beside_its_name() throws Exception {
        Model model = MillYear.model();
        Cash covered = new Cash(
                model.cash().now(),
                model.cash().reserve(),
                model.cash().past(),
                model.cash().fan(),
                List.of(new AheadPicture.Purchase("Gudgeons", MillYear.day("2026-12-04"), 100_000, 0)));
        Model other = new Model(
                model.today(),
                model.slotDay(),
                model.stages(),
                model.slots(),
                List.of(),
                model.inHandTo(),
                model.weeksInHand(),
                covered,
                model.pointers());
        for (Drawing drawing : List.of(wide(other), upright(other))) {
            assertThat(drawing.of("text", "balloon-letter").stream().map(Element::getTextContent))
                    .contains("D", "E");
            assertThat(drawing.of("line", "gap")).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void letters_of_the_lying_pictures_do_not_run_into_each_other(Model model) throws Exception {
        lettersStandFree(wide(model));
        lettersStandFree(new Drawing(new AheadPicture(model, MillYear.FORMATS, AheadPane.PLAIN).medium()));
    }

    private static void lettersStandFree(Drawing drawing) {
        List<Element> texts = drawing.all("text").stream()
                .filter(t -> !Drawing.has(t, "balloon-letter"))
                .toList();
        for (int i = 0; i < texts.size(); i++) {
            Box one = Drawing.box(texts.get(i));
            for (int j = i + 1; j < texts.size(); j++) {
                assertThat(one.meets(Drawing.box(texts.get(j))))
                        .as(texts.get(i).getTextContent() + " on "
                                + texts.get(j).getTextContent())
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("models")
    void where_letters_clash_tasks_go_first_and_the_even_chance_never(Model model) throws Exception {
        Drawing drawing = wide(model);
        int pegs = drawing.of("circle", "peg").size();
        long pegDays = drawing.of("text", "landing").stream()
                .filter(t -> !t.getTextContent().startsWith("about"))
                .count();
        assertThat(pegDays).isEqualTo(pegs);
    }

    @ParameterizedTest
    @MethodSource("drawings")
    void no_letter_is_smaller_than_twelve_pixels(String text) throws Exception {
        for (Element one : new Drawing(text).all("text")) {
            assertThat(one.getAttribute("class")).startsWith("letters");
            assertThat(one.getAttribute("font-size")).isEmpty();
        }
        String sheet = Templates.packed().css("base").orElseThrow();
        List<String> sizes = Pattern.compile("\\.letters[^{]*\\{[^}]*?([0-9.]+)px")
                .matcher(sheet)
                .results()
                .map(r -> r.group(1))
                .toList();
        assertThat(sizes).isNotEmpty().allMatch(s -> Double.parseDouble(s) >= 12);
    }

    @Test
    void more_than_five_timbers_keep_those_in_hand_and_next_and_name_the_rest() throws Exception {
        Model crowd = models().get(1);
        Drawing drawing = wide(crowd);
        assertThat(drawing.of("polygon", "timber")).hasSize(5);
        assertThat(drawing.texts())
                .contains("Wheel shaft", "Sluice and leat", "Roof timbers <& tiles>", "Loft stair", "Grain bin")
                .doesNotContain("Waterwheel");
        assertThat(new AheadPicture(crowd, MillYear.FORMATS, AheadPane.PLAIN)
                        .offSheet()
                        .replace('\u00a0', ' '))
                .isEqualTo("Off this sheet: Wheel pit masonry, done 21 August; Waterwheel about 2 March 2027; "
                        + "Hurst frame about 3 May 2027; Gearing later than the forecast reaches");
    }

    @Test
    void the_upright_picture_runs_down_seven_pixels_a_day_with_three_timbers() throws Exception {
        Drawing drawing = upright(MillYear.model());
        assertThat(drawing.of("polygon", "timber")).hasSize(3);
        Element peg = drawing.of("circle", "peg").get(0);
        double days = ChronoUnit.DAYS.between(UPRIGHT_FIRST, MillYear.day("2026-12-09"));
        assertThat(Drawing.number(peg, "cy")).isCloseTo(46 + days * 7.1, within(ROUNDED));
        Element today = drawing.of("line", "today-line").get(0);
        assertThat(Drawing.number(today, "y1")).isCloseTo(46 + 9 * 7.1, within(ROUNDED));
        Element frame = drawing.of("rect", "frame").get(1);
        assertThat(Drawing.number(frame, "y") + 8.5).isCloseTo(46 + 11 * 7.1, within(ROUNDED));
        assertThat(drawing.textSaying("9 Dec")).isNotNull();
    }

    @Test
    void the_tables_hold_every_stage_day_and_purchase() {
        List<AheadPicture.Table> tables = new AheadPicture(MillYear.model(), MillYear.FORMATS, AheadPane.PLAIN)
                .tables(LocalDate.of(2029, 11, 25));
        assertThat(tables).extracting(AheadPicture.Table::caption).containsExactly("Stages", "Fridays", "Purchases");
        assertThat(tables.get(0).rows()).hasSize(6);
        assertThat(tables.get(0).rows().get(1).stream().map(c -> c.replace('\u00a0', ' ')))
                .containsExactly("Wheel shaft", "in hand since 14 Sep", "3 Dec", "9 Dec", "19 Dec");
        assertThat(tables.get(0).rows().get(5).stream().map(c -> c.replace('\u00a0', ' ')))
                .containsExactly("Gearing", "to come", "after 25 Nov 2029", "after 25 Nov 2029", "after 25 Nov 2029");
        assertThat(tables.get(1).rows()).hasSize(24);
        assertThat(tables.get(1).rows().stream()
                        .map(row -> row.subList(5, 7).stream()
                                .map(c -> c.replace('\u00a0', ' '))
                                .toList())
                        .filter(tied -> !tied.equals(List.of("", ""))))
                .containsExactly(List.of("Wheel shaft, 28 Nov", ""), List.of("", "Oak for the rims"));
        assertThat(tables.get(2).rows().get(1).stream().map(c -> c.replace('\u00a0', ' ')))
                .containsExactly("Gudgeons", "25 Jan 2027", "€1,640", "covered");
        assertThat(tables)
                .allSatisfy(t ->
                        assertThat(t.rows()).allMatch(r -> r.size() == t.heads().size()));
    }

    @Test
    void a_name_is_only_ever_text() throws Exception {
        Model model = models().get(1);
        assertThat(wide(model).textSaying("Roof timbers <& tiles>")).isNotNull();
        Slot odd = new Slot(MillYear.day("2026-11-27"), "\"><script>", "", Safety.SAFE, 1);
        Model other = new Model(
                MillYear.TODAY,
                DayOfWeek.FRIDAY,
                List.of(),
                List.of(odd),
                List.of(),
                Optional.empty(),
                0,
                MillYear.cash(),
                Pointers.NONE);
        assertThat(wide(other).text).doesNotContain("<script").contains("&quot;&gt;&lt;script&gt;");
    }

    /** The picture of so many weeks from a day, every thing of it leading somewhere. */
    private static AheadPicture pane(Model model, String first, int weeks) {
        List<String> slots =
                model.slots().stream().map(slot -> "/slot/" + slot.day()).toList();
        List<String> stages = model.stages().stream().map(stage -> "/stage").toList();
        List<String> purchases =
                model.cash().purchases().stream().map(one -> "/purchase").toList();
        List<Optional<AheadPicture.Range>> before = model.stages().stream()
                .map(stage -> Optional.of(MillYear.range("2026-11-27", "2026-12-18", "2027-01-29")))
                .toList();
        return new AheadPicture(
                model,
                MillYear.FORMATS,
                new AheadPane(Optional.of(MillYear.day(first)), weeks, before, stages, slots, purchases));
    }

    @Test
    void three_full_years_take_less_than_150_kilobytes() throws Exception {
        AheadPicture picture = pane(MillYear.threeYears(), "2026-11-23", 156);
        assertThat(new Drawing(picture.wide()).all("a").size()).isGreaterThan(156);
        for (String text : List.of(picture.wide(), picture.medium(), picture.upright())) {
            assertThat(text.getBytes(StandardCharsets.UTF_8).length).isBetween(20_000, 150_000);
        }
    }

    static Stream<Arguments> panes() {
        return models().stream()
                .flatMap(model -> Stream.of("2025-06-02", "2026-09-28", "2026-11-23", "2027-03-01", "2031-01-06")
                        .flatMap(first -> AheadPane.SPANS.stream().map(weeks -> Arguments.of(model, first, weeks))));
    }

    @ParameterizedTest
    @MethodSource("panes")
    void any_weeks_can_be_drawn_and_nothing_but_letters_stands_beyond_their_edges(Model model, String first, int weeks)
            throws Exception {
        AheadPicture picture = pane(model, first, weeks);
        for (String text : List.of(picture.wide(), picture.medium(), picture.upright())) {
            Drawing drawing = new Drawing(text);
            String[] view = drawing.all("svg").get(0).getAttribute("viewBox").split(" ");
            double width = Double.parseDouble(view[2]);
            double height = Double.parseDouble(view[3]);
            assertThat(text.getBytes(StandardCharsets.UTF_8).length).isLessThan(150_000);
            assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
            for (String shape : List.of("polygon", "polyline")) {
                for (Element one : drawing.all(shape)) {
                    double[] points = Drawing.points(one);
                    for (int i = 0; i < points.length; i += 2) {
                        assertThat(points[i]).as(shape).isBetween(-5.0, width + 5);
                        assertThat(points[i + 1]).as(shape).isBetween(-5.0, height + 5);
                    }
                }
            }
            for (Element one : drawing.all("circle")) {
                assertThat(Drawing.number(one, "cx")).isBetween(-5.0, width + 5);
                assertThat(Drawing.number(one, "cy")).isBetween(-5.0, height + 5);
            }
            for (Element one : drawing.of("rect", "reach")) {
                assertThat(Drawing.number(one, "x")).isBetween(-9.0, width);
                assertThat(Drawing.number(one, "width")).isGreaterThan(0);
            }
        }
    }

    @Test
    void each_thing_says_its_sentence() throws Exception {
        Drawing drawing = new Drawing(pane(MillYear.model(), "2026-10-26", 24).wide());
        List<String> said = drawing.of("a", "thing").stream()
                .map(one -> one.getAttribute("aria-label").replace('\u00a0', ' '))
                .toList();
        assertThat(said)
                .contains(
                        "Wheel shaft is done about 9 December, four chances in five from 3 December to 19"
                                + " December. Before: 18 December, four chances in five from 27 November to 29"
                                + " January 2027.",
                        "Friday 20 November: no. 46, Episode 46 is out.",
                        "Friday 27 November: no. 47, Episode 47, safe, 75 % of it shot.",
                        "8 January 2027: nothing is planned.");
    }

    @Test
    void what_was_said_before_is_a_dotted_cut_with_an_open_peg() throws Exception {
        Drawing drawing = new Drawing(pane(MillYear.model(), "2026-10-26", 24).wide());
        List<Element> pegs = drawing.of("circle", "ghost-peg");
        // of every stage but the one that is done
        assertThat(pegs).hasSize(4);
        assertThat(Drawing.number(pegs.get(0), "cx")).isCloseTo(wideX("2026-12-18"), within(ROUNDED));
        double[] cut = Drawing.points(drawing.of("polygon", "ghost").get(0));
        assertThat(cut[0]).isCloseTo(wideX("2026-11-27"), within(ROUNDED));
    }
}
