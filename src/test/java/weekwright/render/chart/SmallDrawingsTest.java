package weekwright.render.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import weekwright.render.chart.AheadPicture.Balance;
import weekwright.render.chart.AheadPicture.Fan;
import weekwright.render.chart.AheadPicture.Stage;

class SmallDrawingsTest {
    private static final double ROUNDED = 0.11;

    static Stream<Stage> stages() {
        return MillYear.stages().stream();
    }

    @ParameterizedTest
    @MethodSource("stages")
    void a_strip_of_any_stage_is_well_formed_and_its_letters_stand_free(Stage stage) throws Exception {
        StageStrip strip = new StageStrip(stage, MillYear.TODAY, MillYear.FORMATS);
        for (String text : strip.drawings().split("(?=<svg )")) {
            Drawing drawing = new Drawing(text);
            assertThat(text).doesNotContain("NaN").doesNotContain(" style=");
            assertThat(drawing.of("polygon", "timber")).hasSize(1);
            List<Element> texts = drawing.all("text");
            for (int i = 0; i < texts.size(); i++) {
                for (int j = i + 1; j < texts.size(); j++) {
                    assertThat(Drawing.box(texts.get(i)).meets(Drawing.box(texts.get(j))))
                            .as(texts.get(i).getTextContent() + " on "
                                    + texts.get(j).getTextContent())
                            .isFalse();
                }
            }
        }
    }

    @Test
    void a_strip_measures_its_days_evenly_and_says_its_landing() throws Exception {
        Stage shaft = MillYear.stages().get(1);
        Drawing drawing = new Drawing(new StageStrip(shaft, MillYear.TODAY, MillYear.FORMATS).wide());
        double[] wood = Drawing.points(drawing.of("polygon", "timber-line").get(0));
        double peg = Drawing.number(drawing.of("circle", "peg").get(0), "cx");
        double today = Drawing.number(drawing.of("line", "today-line").get(0), "x1");
        double perDay = (peg - today) / ChronoUnit.DAYS.between(MillYear.TODAY, MillYear.day("2026-12-09"));
        assertThat(today - wood[0])
                .isCloseTo(perDay * ChronoUnit.DAYS.between(MillYear.day("2026-09-14"), MillYear.TODAY), within(1.0));
        assertThat(wood[6] - today)
                .isCloseTo(perDay * ChronoUnit.DAYS.between(MillYear.TODAY, MillYear.day("2026-12-19")), within(1.0));
        assertThat(drawing.all("title").get(0).getTextContent().replace('\u00a0', ' '))
                .isEqualTo("Wheel shaft: done between 3 and 19 December, even chances by 9 December");
        assertThat(drawing.texts()).contains("9 December", "3 Dec", "19 Dec", "today");
    }

    @Test
    void the_money_alone_keeps_its_stair_and_numbers_it_where_names_have_no_room() throws Exception {
        MoneyPicture picture = new MoneyPicture(MillYear.cash(), MillYear.TODAY, MillYear.FORMATS, 8, 26);
        Drawing wide = new Drawing(picture.wide());
        assertThat(wide.texts()).contains("Oak for the rims €5,180", "short €250", "reserve €3,000");
        assertThat(wide.of("polyline", "stair")).hasSize(1);
        Drawing narrow = new Drawing(picture.narrow());
        assertThat(narrow.of("text", "balloon-letter").stream().map(Element::getTextContent))
                .containsExactly("1", "2", "3");
    }

    /** A rung runs from 6 to 352: what is there of what is needed, as a share of that. */
    @Test
    void a_rung_is_solid_to_what_is_almost_sure_hatched_to_what_may_be_and_pegged_between() throws Exception {
        Drawing rung = new Drawing(Ladder.rung(1_000, 400, 700, 900));
        assertThat(Drawing.number(rung.of("rect", "rung-sure").get(0), "width")).isCloseTo(346 * .4, within(ROUNDED));
        assertThat(Drawing.number(rung.of("rect", "rung-maybe").get(0), "width"))
                .isCloseTo(346 * .5, within(ROUNDED));
        assertThat(Drawing.number(rung.of("circle", "peg").get(0), "cx")).isCloseTo(6 + 346 * .7, within(ROUNDED));
        Drawing paid = new Drawing(Ladder.rung(1_000, 2_000, 3_000, 4_000));
        assertThat(Drawing.number(paid.of("rect", "rung-sure").get(0), "width")).isGreaterThan(346);
        assertThat(paid.of("rect", "rung-maybe")).isEmpty();
        Drawing nothing = new Drawing(Ladder.rung(1_000, -50, -20, 0));
        assertThat(nothing.of("rect", "rung-sure")).isEmpty();
        assertThat(new Drawing(Ladder.blank()).of("rect", "rung-post")).hasSize(2);
    }

    @Test
    void a_tally_shows_estimate_logged_over_and_left_on_one_scale() throws Exception {
        Drawing under = new Drawing(Tally.of(600, 300, 360, 1_000));
        assertThat(Drawing.number(under.of("rect", "tally-estimate").get(0), "width"))
                .isCloseTo(116.4, within(ROUNDED));
        assertThat(Drawing.number(under.of("rect", "tally-logged").get(0), "width"))
                .isCloseTo(58.2, within(ROUNDED));
        assertThat(Drawing.number(under.of("line", "tally-stop").get(0), "x1")).isCloseTo(1 + 128.0, within(ROUNDED));
        assertThat(under.of("rect", "tally-over")).isEmpty();
        Drawing over = new Drawing(Tally.of(600, 900, 0, 1_000));
        assertThat(Drawing.number(over.of("rect", "tally-over").get(0), "x")).isCloseTo(117.4, within(ROUNDED));
        assertThat(Drawing.number(over.of("rect", "tally-over").get(0), "width"))
                .isCloseTo(58.2, within(ROUNDED));
        assertThat(over.of("line", "tally-left")).isEmpty();
    }

    @Test
    void a_reel_fills_one_joined_frame_a_step() throws Exception {
        Drawing reel = new Drawing(Reel.of(1, .5, 0, 0, 0));
        assertThat(reel.of("rect", "reel-frame")).hasSize(5);
        List<Element> done = reel.of("rect", "reel-done");
        assertThat(done).hasSize(2);
        assertThat(Drawing.number(done.get(1), "width"))
                .isCloseTo(Drawing.number(done.get(0), "width") / 2, within(ROUNDED));
    }

    @Test
    void the_bar_of_causes_is_as_long_as_all_shares_together_and_says_them() throws Exception {
        String both = CauseBar.of(List.of(
                new CauseBar.Cause("Ilse's hours", .5),
                new CauseBar.Cause("the oak", .3),
                new CauseBar.Cause("funds", .2)));
        double[] lengths = {458, 298};
        String[] drawings = both.split("(?=<svg )");
        for (int i = 0; i < 2; i++) {
            Drawing bar = new Drawing(drawings[i]);
            List<Element> causes = bar.of("rect", "cause");
            assertThat(causes.stream()
                            .mapToDouble(c -> Drawing.number(c, "width"))
                            .sum())
                    .isCloseTo(lengths[i], within(ROUNDED));
            assertThat(Drawing.number(causes.get(0), "width")).isCloseTo(lengths[i] / 2, within(ROUNDED));
            assertThat(bar.all("title").get(0).getTextContent().replace('\u00a0', ' '))
                    .isEqualTo("Held by: Ilse's hours 50 %, the oak 30 %, funds 20 %");
            assertThat(bar.texts()).containsExactly("1", "2", "3");
        }
    }

    @Test
    void a_line_over_months_puts_equal_steps_at_equal_heights() throws Exception {
        List<Balance> past = List.of(
                new Balance(LocalDate.of(2026, 9, 1), 0),
                new Balance(LocalDate.of(2026, 10, 1), 100),
                new Balance(LocalDate.of(2026, 11, 1), 200));
        List<Fan> fan = List.of(
                new Fan(LocalDate.of(2026, 11, 1), 200, 200, 200, 200, 200),
                new Fan(LocalDate.of(2026, 12, 1), 180, 190, 210, 230, 240));
        Drawing drawing = new Drawing(new LineChart(
                        "supporters",
                        "Supporters",
                        MillYear.TODAY,
                        past,
                        fan,
                        List.of(new LineChart.Level("wanted", 150)),
                        List.of(LocalDate.of(2026, 10, 1)),
                        v -> String.valueOf(Math.round(v)))
                .wide());
        double[] line = Drawing.points(drawing.of("polyline", "cash-past").get(0));
        assertThat(line[1] - line[3]).isCloseTo(line[3] - line[5], within(ROUNDED));
        double level = Drawing.number(drawing.of("line", "reserve").get(0), "y1");
        assertThat(level).isCloseTo((line[3] + line[5]) / 2, within(ROUNDED));
        assertThat(drawing.of("circle", "balloon-ring")).hasSize(1);
        assertThat(drawing.of("polygon", "fan-thin")).hasSize(1);
        assertThat(drawing.texts()).contains("200", "210", "wanted");
    }

    @Test
    void days_said_on_days_lie_to_scale_and_are_told_as_dates() throws Exception {
        List<Fan> said = List.of(
                days(LocalDate.of(2026, 8, 7), "2026-10-01", "2026-11-01", "2026-12-01"),
                days(LocalDate.of(2026, 9, 4), "2026-10-11", "2026-10-31", "2026-11-10"));
        LocalDate landed = LocalDate.of(2026, 10, 31);
        Drawing drawing = new Drawing(LineChart.ofDays(
                        "record",
                        "Said",
                        MillYear.TODAY,
                        said,
                        List.of(new LineChart.Level("landed 31 Oct", landed.toEpochDay())),
                        MillYear.FORMATS)
                .wide());
        double[] even = Drawing.points(drawing.of("polyline", "fan-middle").get(0));
        double[] band = Drawing.points(drawing.of("polygon", "fan-thin").get(0));
        double level = Drawing.number(drawing.of("line", "reserve").get(0), "y1");
        assertThat(even[3]).isCloseTo(level, within(ROUNDED));
        // 1 December is thirty days over 1 November, that one day over 31 October
        double aDay = even[3] - even[1];
        assertThat((even[1] - band[1]) / aDay).isCloseTo(30, within(4.0));
        assertThat(drawing.texts()).contains("landed 31 Oct", "1 Dec").noneMatch(text -> text.matches("[\\d,]{5,}"));
    }

    private static Fan days(LocalDate on, String p10, String p50, String p90) {
        double even = LocalDate.parse(p50).toEpochDay();
        return new Fan(
                on,
                LocalDate.parse(p10).toEpochDay(),
                even,
                even,
                even,
                LocalDate.parse(p90).toEpochDay());
    }

    @Test
    void a_line_without_any_values_is_an_empty_drawing() throws Exception {
        Drawing drawing = new Drawing(
                new LineChart("bank", "Story bank", MillYear.TODAY, List.of(), List.of(), List.of(), List.of(), v -> "")
                        .wide());
        assertThat(drawing.all("polyline")).isEmpty();
        assertThat(drawing.all("title").get(0).getTextContent()).isEqualTo("Story bank");
    }

    @Test
    void a_stage_without_any_date_has_a_strip_that_says_so() throws Exception {
        Stage unknown = new Stage(
                "Stones", "", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        Drawing drawing = new Drawing(new StageStrip(unknown, MillYear.TODAY, MillYear.FORMATS).wide());
        assertThat(drawing.all("title").get(0).getTextContent()).isEqualTo("Stones: later than the forecast reaches");
    }
}
