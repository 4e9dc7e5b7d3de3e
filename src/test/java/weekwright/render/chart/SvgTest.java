package weekwright.render.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SvgTest {
    @Test
    void lengths_are_rounded_to_a_tenth_and_carry_no_idle_zeros() {
        assertThat(Svg.number(12)).isEqualTo("12");
        assertThat(Svg.number(12.04)).isEqualTo("12");
        assertThat(Svg.number(12.06)).isEqualTo("12.1");
        assertThat(Svg.number(-0.04)).isEqualTo("0");
        assertThat(Svg.number(1200)).isEqualTo("1200");
    }

    @Test
    void text_and_attributes_are_escaped_and_what_xml_does_not_know_becomes_a_space() throws Exception {
        String text = new Svg("one", "a\"b", 10, 10, "<title> & 'more'", "")
                .text("letters", 1, 2, "middle", "a<b\u0001c")
                .done();
        Drawing drawing = new Drawing(text);
        assertThat(drawing.all("title").get(0).getTextContent()).isEqualTo("<title> & 'more'");
        assertThat(drawing.texts()).containsExactly("a<b c");
        assertThat(drawing.all("svg").get(0).getAttribute("class")).isEqualTo("a\"b");
    }

    @Test
    void a_mark_is_not_read_aloud() throws Exception {
        Drawing drawing =
                new Drawing(Svg.mark("tally", 10, 10).rect("box", 1, 1, 2, 2).done());
        assertThat(drawing.all("svg").get(0).getAttribute("aria-hidden")).isEqualTo("true");
        assertThat(drawing.all("title")).isEmpty();
    }

    @Test
    void groups_must_match() {
        assertThatThrownBy(() -> Svg.mark("a", 1, 1).end()).hasMessage("no open group");
        assertThatThrownBy(() -> Svg.mark("a", 1, 1).group("b").done()).hasMessage("1 groups are still open");
    }

    /** Advance widths as the font files state them: "Oak" is 788 + 545 + 514 thousandths in Archivo 400. */
    @Test
    void a_line_of_letters_is_as_wide_as_its_font_says() {
        assertThat(Lettering.TEXT.width("Oak", 10)).isCloseTo(18.47, within(1e-9));
        assertThat(Lettering.BOLD.width("A", 1_000)).isEqualTo(717);
        assertThat(Lettering.HEAD.width("~", 1_000)).isEqualTo(688);
    }
}
