package weekwright.render.chart;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import weekwright.render.chart.SvgReader.Element;

/**
 * The crew's own drawing of what they build, inked as its stages are done. Groups named after a stage (by id or label) take
 * the stage's standing; all else is what was there before. Of the file only groups, paths and shapes with their geometry
 * are kept, whatever it holds: no script, link, picture, style, text or reference.
 */
public final class KeyDrawing {
    /** How a stage stands, as it is inked. */
    public enum Standing {
        DONE("done"),
        IN_HAND("in-hand"),
        TO_COME("to-come");

        private final String kind;

        Standing(String kind) {
            this.kind = kind;
        }
    }

    /**
     * A stage of the list beside the drawing.
     *
     * @param id the stage's id
     * @param name its name; a group may carry either
     * @param number its number in the list
     */
    public record Part(String id, String name, int number, Standing standing) {}

    /** Larger files are refused unread. */
    public static final int MOST_CHARACTERS = 500_000;

    private static final int MOST_DEPTH = 40;
    private static final int MOST_SHAPES = 20_000;
    private static final Set<String> SHAPES =
            Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon");
    private static final Set<String> GEOMETRY = Set.of(
            "d",
            "x",
            "y",
            "width",
            "height",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "x1",
            "y1",
            "x2",
            "y2",
            "points",
            "transform");
    private static final Pattern VALUE = Pattern.compile("[0-9a-zA-Z.,+\\-\\s()%]*");
    private static final Pattern BOX = Pattern.compile("[0-9.+\\-eE]+([ ,]+[0-9.+\\-eE]+){3}");
    private static final Pattern LENGTH = Pattern.compile("([0-9]+(\\.[0-9]+)?)(px|mm|cm|in|pt)?");

    private final Element root;
    private final String viewBox;
    private int shapes;

    private KeyDrawing(Element root, String viewBox) {
        this.root = root;
        this.viewBox = viewBox;
    }

    /** Reads an SVG file's text; empty where it is no SVG drawing, too large, or has no size. */
    public static Optional<KeyDrawing> read(String text) {
        if (text.length() > MOST_CHARACTERS) {
            return Optional.empty();
        }
        return SvgReader.read(text)
                .filter(root -> root.name().equals("svg"))
                .flatMap(root -> viewBox(root).map(box -> new KeyDrawing(root, box)));
    }

    /** The drawing with each part inked as it stands; the list beside it says the same in words. */
    public String inked(List<Part> parts, String title) {
        StringBuilder out = new StringBuilder(16_384);
        out.append("<svg class=\"key-drawing\" role=\"img\" viewBox=\"")
                .append(Svg.escape(viewBox))
                .append("\" aria-label=\"")
                .append(Svg.escape(title))
                .append("\">");
        shapes = 0;
        Map<String, Part> named = new HashMap<>();
        for (Part part : parts) {
            named.putIfAbsent(plain(part.name()), part);
        }
        parts.forEach(p -> named.put(plain(p.id()), p));
        children(root, named, out, 0);
        return out.append("</svg>").toString();
    }

    private void children(Element parent, Map<String, Part> named, StringBuilder out, int depth) {
        if (depth > MOST_DEPTH) {
            return;
        }
        for (Element element : parent.children()) {
            String tag = element.name();
            if (tag.equals("g")) {
                out.append("<g");
                attributes(element, named, out);
                out.append('>');
                children(element, named, out, depth + 1);
                out.append("</g>");
            } else if (SHAPES.contains(tag) && shapes < MOST_SHAPES) {
                shapes++;
                out.append('<').append(tag);
                attributes(element, named, out);
                out.append("/>");
            }
        }
    }

    private void attributes(Element element, Map<String, Part> named, StringBuilder out) {
        part(element, named)
                .ifPresent(p -> out.append(" class=\"part ")
                        .append(p.standing().kind)
                        .append("\" data-number=\"")
                        .append(p.number())
                        .append('"'));
        geometry(element, out);
    }

    private static Optional<Part> part(Element element, Map<String, Part> named) {
        return element.attributes().entrySet().stream()
                .filter(a -> a.getKey().equals("id")
                        || a.getKey().equals("label")
                        || a.getKey().endsWith(":label"))
                .map(a -> named.get(plain(a.getValue())))
                .filter(Objects::nonNull)
                .findFirst();
    }

    private static void geometry(Element element, StringBuilder out) {
        element.attributes().forEach((name, value) -> {
            if (GEOMETRY.contains(name) && VALUE.matcher(value).matches()) {
                out.append(' ')
                        .append(name)
                        .append("=\"")
                        .append(Svg.escape(value))
                        .append('"');
            }
        });
    }

    private static Optional<String> viewBox(Element root) {
        String box = root.attributes().getOrDefault("viewBox", "").strip();
        if (BOX.matcher(box).matches()) {
            return Optional.of(box);
        }
        var width = LENGTH.matcher(root.attributes().getOrDefault("width", "").strip());
        var height = LENGTH.matcher(root.attributes().getOrDefault("height", "").strip());
        return width.matches() && height.matches()
                ? Optional.of("0 0 " + width.group(1) + " " + height.group(1))
                : Optional.empty();
    }

    /** Names match whatever their case and whether they are divided by spaces, hyphens or underscores. */
    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }
}
