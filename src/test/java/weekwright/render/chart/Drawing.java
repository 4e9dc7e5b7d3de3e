package weekwright.render.chart;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A drawing read back as XML, for tests that measure it. */
final class Drawing {
    final String text;
    private final Document document;

    Drawing(String text) throws Exception {
        this.text = text;
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    List<Element> all(String tag) {
        List<Element> list = new ArrayList<>();
        NodeList found = document.getElementsByTagName(tag);
        for (int i = 0; i < found.getLength(); i++) {
            list.add((Element) found.item(i));
        }
        return list;
    }

    /** Elements of a tag whose class holds this word. */
    List<Element> of(String tag, String kind) {
        return all(tag).stream().filter(e -> has(e, kind)).toList();
    }

    static boolean has(Element element, String kind) {
        return Arrays.asList(element.getAttribute("class").split(" ")).contains(kind);
    }

    static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    static double[] points(Element element) {
        return Arrays.stream(element.getAttribute("points").split("[ ,]"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    Element textSaying(String words) {
        return all("text").stream()
                .filter(e -> e.getTextContent().replace('\u00a0', ' ').equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no text \"" + words + "\" among " + texts()));
    }

    List<String> texts() {
        return all("text").stream()
                .map(e -> e.getTextContent().replace('\u00a0', ' '))
                .toList();
    }

    /** The box of a level line of letters, by its class. */
    static Box box(Element text) {
        boolean tall = has(text, "tall");
        double size = tall ? 14 : has(text, "name") ? 15 : has(text, "landing") ? 14.5 : has(text, "tick") ? 12 : 13;
        if (has(text, "name")) {
            size = 15;
        }
        Lettering face = has(text, "name")
                ? Lettering.HEAD
                : has(text, "strong") || has(text, "landing") ? Lettering.BOLD : Lettering.TEXT;
        String anchor = text.getAttribute("text-anchor").isEmpty() ? "start" : text.getAttribute("text-anchor");
        return Box.ofText(face, size, number(text, "x"), number(text, "y"), anchor, text.getTextContent());
    }
}
