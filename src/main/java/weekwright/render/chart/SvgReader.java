package weekwright.render.chart;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the elements of an XML text and nothing else: no entities but the five of XML, no document type, no file outside.
 * Text between elements is passed over.
 */
final class SvgReader {
    /** An element without the prefix of its namespace; attributes keep theirs. */
    record Element(String name, Map<String, String> attributes, List<Element> children) {}

    private static final Pattern PASSED_OVER =
            Pattern.compile("<!--.*?-->|<!\\[CDATA\\[.*?]]>|<\\?.*?\\?>", Pattern.DOTALL);
    private static final Pattern TAG = Pattern.compile(
            "<(/?)([A-Za-z_][A-Za-z0-9_.:-]*+)((?:\\s++[A-Za-z_][A-Za-z0-9_.:-]*+\\s*+=\\s*+(?:\"[^\"<]*+\"|'[^'<]*+')){0,200}+)\\s*+(/?)>");
    private static final Pattern ATTRIBUTE =
            Pattern.compile("([A-Za-z_][A-Za-z0-9_.:-]*+)\\s*+=\\s*+(?:\"([^\"]*+)\"|'([^']*+)')");
    private static final int MOST_DEPTH = 200;

    private SvgReader() {}

    /** The outermost element; empty where tags do not match or anything else is no plain XML. */
    static Optional<Element> read(String text) {
        Deque<Element> open = new ArrayDeque<>();
        Element root = null;
        int at = 0;
        for (int next = text.indexOf('<'); next >= 0; next = text.indexOf('<', at)) {
            Matcher other = PASSED_OVER.matcher(text).region(next, text.length());
            if (other.lookingAt()) {
                at = other.end();
                continue;
            }
            Matcher tag = TAG.matcher(text).region(next, text.length());
            if (!tag.lookingAt() || root != null && open.isEmpty()) {
                return Optional.empty();
            }
            at = tag.end();
            String name = tag.group(2).substring(tag.group(2).indexOf(':') + 1);
            if (!tag.group(1).isEmpty()) {
                if (open.isEmpty() || !open.pop().name().equals(name)) {
                    return Optional.empty();
                }
                continue;
            }
            Element element = new Element(name, attributes(tag.group(3)), new ArrayList<>());
            if (open.isEmpty()) {
                root = element;
            } else {
                open.peek().children().add(element);
            }
            if (tag.group(4).isEmpty()) {
                open.push(element);
            }
            if (open.size() > MOST_DEPTH) {
                return Optional.empty();
            }
        }
        return open.isEmpty() ? Optional.ofNullable(root) : Optional.empty();
    }

    private static Map<String, String> attributes(String text) {
        Map<String, String> attributes = new TreeMap<>();
        Matcher one = ATTRIBUTE.matcher(text);
        while (one.find()) {
            String value = one.group(2) == null ? one.group(3) : one.group(2);
            attributes.putIfAbsent(one.group(1), plain(value));
        }
        return attributes;
    }

    private static String plain(String value) {
        return value.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&apos;", "'")
                .replace("&amp;", "&");
    }
}
