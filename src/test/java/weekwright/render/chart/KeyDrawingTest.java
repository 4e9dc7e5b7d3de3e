package weekwright.render.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.render.chart.KeyDrawing.Part;
import weekwright.render.chart.KeyDrawing.Standing;
import weekwright.testkit.Requirement;

class KeyDrawingTest {
    private static final List<Part> PARTS = List.of(
            new Part("pit", "Wheel pit masonry", 1, Standing.DONE),
            new Part("shaft", "Wheel shaft", 2, Standing.IN_HAND),
            new Part("roof", "Roof", 3, Standing.TO_COME));

    private static String inked(String svg) {
        return KeyDrawing.read(svg).orElseThrow().inked(PARTS, "The mill");
    }

    @Test
    void groups_named_after_a_stage_take_its_standing_whatever_their_case_and_dividers() {
        String text = inked("<svg xmlns='http://www.w3.org/2000/svg' xmlns:i='urn:i' viewBox='0 0 10 20'>"
                + "<g id='pit'><path d='M0 0L1 1'/></g><g i:label='wheel-SHAFT'><rect x='1' width='2' height='3'/></g>"
                + "<g id='other'><circle r='2'/></g></svg>");
        assertThat(text)
                .isEqualTo("<svg class=\"key-drawing\" role=\"img\" viewBox=\"0 0 10 20\" aria-label=\"The mill\">"
                        + "<g class=\"part done\" data-number=\"1\"><path d=\"M0 0L1 1\"/></g>"
                        + "<g class=\"part in-hand\" data-number=\"2\"><rect height=\"3\" width=\"2\" x=\"1\"/></g>"
                        + "<g><circle r=\"2\"/></g></svg>");
    }

    @Test
    void nothing_but_groups_shapes_and_geometry_is_kept() throws Exception {
        String text =
                inked("<svg xmlns='http://www.w3.org/2000/svg' xmlns:x='http://www.w3.org/1999/xlink' width='10mm'"
                        + " height='5mm'"
                        + " onload='a()'><script>b()</script><style>*{fill:url(http://away.example)}</style><image"
                        + " x:href='http://away.example/p.png'/><use"
                        + " x:href='#pit'/><foreignObject><p>c</p></foreignObject><a x:href='javascript:d()'><path d='M1"
                        + " 1'/></a><text>e</text><path d='M0 0' style='fill:red' onclick='f()' fill='url(#g)' class='h'"
                        + " id='pit'/><rect width='1\" onload=\"g()' height='2'/><animate attributeName='d'/></svg>");
        assertThat(text)
                .isEqualTo("<svg class=\"key-drawing\" role=\"img\" viewBox=\"0 0 10 5\" aria-label=\"The mill\">"
                        + "<path class=\"part done\" data-number=\"1\" d=\"M0 0\"/><rect height=\"2\"/></svg>");
        assertThat(new Drawing(text).all("path")).hasSize(1);
    }

    @Test
    void what_is_no_drawing_is_not_read() {
        assertThat(KeyDrawing.read("<html/>")).isEmpty();
        assertThat(KeyDrawing.read("not xml")).isEmpty();
        assertThat(KeyDrawing.read("<svg xmlns='http://www.w3.org/2000/svg'/>")).isEmpty();
        assertThat(KeyDrawing.read("<svg viewBox='0 0 1 url(x)'/>")).isEmpty();
        assertThat(KeyDrawing.read("<svg viewBox='0 0 1 1'><g></svg>")).isEmpty();
        assertThat(KeyDrawing.read("<svg viewBox='0 0 1 1'/><svg viewBox='0 0 1 1'/>"))
                .isEmpty();
        assertThat(KeyDrawing.read("<svg viewBox='0 0 1 1'>" + "<g>".repeat(10_000)))
                .isEmpty();
        assertThat(KeyDrawing.read("<svg viewBox='0 0 1 1'" + " x='1'".repeat(50_000) + "/>"))
                .isEmpty();
        assertThat(KeyDrawing.read("x".repeat(KeyDrawing.MOST_CHARACTERS + 1))).isEmpty();
    }

    /** Outside files and growing entities need a document type; none is read. */
    @Test
    @Requirement({"1.5.1"})
    void a_document_type_is_refused() {
        assertThat(KeyDrawing.read("<!DOCTYPE svg [<!ENTITY e SYSTEM 'file:///etc/hostname'>]>"
                        + "<svg viewBox='0 0 1 1'><path d='&e;'/></svg>"))
                .isEmpty();
    }
}
