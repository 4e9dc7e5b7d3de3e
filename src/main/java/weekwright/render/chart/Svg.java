package weekwright.render.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * Writes one drawing as SVG text: lengths in pixels of a drawing shown at its own size, rounded to a tenth; colour and
 * line only by class; every text escaped. Not safe for use from several threads.
 */
public final class Svg {
    private final StringBuilder out = new StringBuilder(8_192);
    private int openGroups;

    /**
     * Opens a drawing.
     *
     * @param id stands before the ids of its title and its words; unique on the page
     * @param kind the class of the drawing
     * @param title what it shows, read aloud
     * @param words where the same figures stand as text; empty if the title says it all
     */
    public Svg(String id, String kind, double width, double height, String title, String words) {
        out.append("<svg class=\"")
                .append(escape(kind))
                .append("\" viewBox=\"0 0 ")
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append("\" role=\"img\" aria-labelledby=\"")
                .append(escape(id))
                .append("-title");
        if (!words.isEmpty()) {
            out.append(' ').append(escape(id)).append("-words");
        }
        out.append("\" preserveAspectRatio=\"xMidYMid meet\"><title id=\"")
                .append(escape(id))
                .append("-title\">")
                .append(escape(title))
                .append("</title>");
        if (!words.isEmpty()) {
            out.append("<desc id=\"")
                    .append(escape(id))
                    .append("-words\">")
                    .append(escape(words))
                    .append("</desc>");
        }
    }

    /**
     * Opens a drawing whose things can be touched: what is drawn is not read aloud, the things that follow it are.
     *
     * @see #thing
     */
    static Svg ofThings(String id, double width, double height, String title, String words) {
        Svg svg = new Svg(id, id, width, height, title, words);
        int role = svg.out.indexOf("role=\"img\"");
        svg.out.replace(role, role + "role=\"img\"".length(), "role=\"group\"");
        svg.out.append("<g aria-hidden=\"true\">");
        svg.openGroups++;
        return svg;
    }

    /** A thing to be touched: a link over the place where it is drawn, with its sentence as its name. */
    Svg thing(String href, String sentence, double x, double y, double width, double height) {
        out.append("<a").append(attribute("class", "thing")).append(attribute("href", href));
        out.append(attribute("aria-label", sentence)).append('>');
        rect("reach", x, y, width, height);
        out.append("</a>");
        return this;
    }

    private Svg(String kind, double width, double height) {
        out.append("<svg class=\"")
                .append(escape(kind))
                .append("\" viewBox=\"0 0 ")
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append("\" aria-hidden=\"true\" focusable=\"false\">");
    }

    /** Opens a small mark beside words that say the same: it is not read aloud. */
    public static Svg mark(String kind, double width, double height) {
        return new Svg(kind, width, height);
    }

    public Svg line(String kind, double x1, double y1, double x2, double y2) {
        out.append("<line").append(attribute("class", kind));
        return place("x1", x1).place("y1", y1).place("x2", x2).place("y2", y2).close();
    }

    public Svg rect(String kind, double x, double y, double width, double height) {
        out.append("<rect").append(attribute("class", kind));
        return place("x", x)
                .place("y", y)
                .place("width", Math.max(0, width))
                .place("height", Math.max(0, height))
                .close();
    }

    public Svg circle(String kind, double x, double y, double radius) {
        out.append("<circle").append(attribute("class", kind));
        return place("cx", x).place("cy", y).place("r", radius).close();
    }

    /** A line through the points x, y, x, y …, not closed. */
    public Svg polyline(String kind, double... points) {
        if (points.length == 0) {
            return this;
        }
        out.append("<polyline").append(attribute("class", kind)).append(attribute("points", points(points)));
        return close();
    }

    /** A closed shape with the corners x, y, x, y …. */
    public Svg polygon(String kind, double... points) {
        out.append("<polygon").append(attribute("class", kind)).append(attribute("points", points(points)));
        return close();
    }

    /** Lines that have nothing but their kind in common, each x1, y1, x2, y2: one element, which a browser lays out once. */
    Svg lines(String kind, List<double[]> lines) {
        return path(kind, lines, "");
    }

    /** Closed shapes likewise, each with its corners x, y, x, y …; where they lie over each other nothing shows it. */
    Svg polygons(String kind, List<double[]> shapes) {
        return path(kind, shapes, "Z");
    }

    private Svg path(String kind, List<double[]> parts, String end) {
        if (parts.isEmpty()) {
            return this;
        }
        StringBuilder all = new StringBuilder();
        for (double[] part : parts) {
            all.append('M').append(points(part)).append(end);
        }
        out.append("<path").append(attribute("class", kind)).append(attribute("d", all.toString()));
        return close();
    }

    /** Text whose line stands on y; the anchor is start, middle or end. */
    public Svg text(String kind, double x, double y, String anchor, String text) {
        open("<text", kind, anchor).place("x", x).place("y", y);
        out.append('>').append(escape(text)).append("</text>");
        return this;
    }

    /** Text that reads downwards, its line at x, its start at y. */
    public Svg textDown(String kind, double x, double y, String anchor, String text) {
        open("<text", kind, anchor);
        out.append(attribute("transform", "translate(" + number(x) + " " + number(y) + ") rotate(90)"))
                .append('>')
                .append(escape(text))
                .append("</text>");
        return this;
    }

    /** Opens a group; what follows belongs to it until {@link #end()}. */
    public Svg group(String kind) {
        out.append("<g").append(attribute("class", kind)).append('>');
        openGroups++;
        return this;
    }

    public Svg end() {
        if (openGroups == 0) {
            throw new IllegalStateException("no open group");
        }
        openGroups--;
        out.append("</g>");
        return this;
    }

    /** The whole drawing. */
    public String done() {
        if (openGroups > 0) {
            throw new IllegalStateException(openGroups + " groups are still open");
        }
        return out + "</svg>";
    }

    /** A length with at most one decimal place, {@code 12} rather than {@code 12.0}. */
    public static String number(double value) {
        BigDecimal tenths =
                BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return tenths.signum() == 0 ? "0" : tenths.toPlainString();
    }

    /** Text and attribute values as XML. */
    public static String escape(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 8);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> {
                    // XML 1.0 knows no other control characters and no lone surrogates
                    boolean allowed = c == '\t'
                            || c == '\n'
                            || c >= 0x20 && (c < 0xD800 || c > 0xDFFF) && c < 0xFFFE
                            || c > 0xFFFF;
                    safe.appendCodePoint(allowed ? c : ' ');
                }
            }
        });
        return safe.toString();
    }

    private Svg open(String tag, String kind, String anchor) {
        out.append(tag).append(attribute("class", kind));
        if (!anchor.equals("start")) {
            out.append(attribute("text-anchor", anchor));
        }
        return this;
    }

    private Svg place(String name, double value) {
        out.append(attribute(name, number(value)));
        return this;
    }

    private Svg close() {
        out.append("/>");
        return this;
    }

    private static String points(double[] points) {
        StringBuilder list = new StringBuilder(points.length * 5);
        for (int i = 0; i < points.length; i++) {
            list.append(i == 0 ? "" : i % 2 == 1 ? "," : " ").append(number(points[i]));
        }
        return list.toString();
    }

    private static String attribute(String name, String value) {
        return String.format(Locale.ROOT, " %s=\"%s\"", name, escape(value));
    }
}
