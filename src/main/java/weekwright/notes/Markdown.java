package weekwright.notes;

import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;
import weekwright.build.Project.Quotes;

/**
 * Markdown (CommonMark with tables, struck-out text, task lists and footnotes) to HTML that may stand in a page whoever
 * wrote it. HTML in the text is shown as text; then a list of what may pass is held against the outcome, because the
 * parser's own filter of addresses has been got round with character references. A text made to keep the parser busy is
 * shown as it was typed. Straight quotation marks are set as the project has chosen; one behind a backslash stays. Holds nothing; safe for use from several threads.
 */
public final class Markdown {
    /** Marks in one unbroken run, or in all, from which on a text is shown as typed: nesting costs their square. */
    private static final int RUN_MOST = 200;

    /** Each one opened in another costs the parser a step of its stack. */
    private static final int COMMENTS_MOST = 100;

    private static final int BRACKETS_MOST = 4_000;
    private static final Pattern RUN = Pattern.compile("([*_~`\\[\\]()!<>#|^\\\\]|> ?)\\1{" + RUN_MOST + "}");
    private static final Pattern DEEP = Pattern.compile("(?m)^(?:[ \\t]*[>*+-][ \\t]*){60}");
    private static final Pattern LINK =
            Pattern.compile("(?i)(?:https?://|mailto:)[^\\s\\\\]*|#[^\\s\\\\]*|/(?![/\\\\])[^\\s\\\\]*");
    private static final Pattern PHOTO = Pattern.compile("/?photos/([\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd}._-]{0,199})");
    private static final Pattern REFERENCE =
            Pattern.compile("\\[([^\\[\\]]*)\\]\\(<?(" + NoteLinks.ADDRESS.pattern() + ")>?\\)");
    private static final String GONE = " (no longer there)";
    private static final Pattern FOOTNOTE = Pattern.compile("fn(?:ref)?-[0-9]{1,4}(?:-[0-9]{1,4})?");

    /** A note's own title is the page's h1, so its headings begin at h2. */
    private static final PolicyFactory POLICY = new HtmlPolicyBuilder()
            .allowElements(
                    "p",
                    "em",
                    "strong",
                    "del",
                    "ul",
                    "ol",
                    "li",
                    "blockquote",
                    "pre",
                    "code",
                    "hr",
                    "br",
                    "table",
                    "thead",
                    "tbody",
                    "tr",
                    "sup",
                    "section",
                    "div",
                    "h5",
                    "h6")
            .allowElements((name, attributes) -> "h" + Math.min(6, name.charAt(1) - '0' + 1), "h1", "h2", "h3", "h4")
            .allowElements("a")
            .allowUrlProtocols("http", "https", "mailto")
            .allowAttributes("href")
            .matching((element, attribute, value) -> LINK.matcher(value.strip()).matches() ? value.strip() : null)
            .onElements("a")
            .requireRelsOnLinks("nofollow", "noopener")
            .allowElements("img")
            .allowAttributes("src")
            .matching((element, attribute, value) -> photo(value).orElse(null))
            .onElements("img")
            .allowAttributes("alt")
            .onElements("img")
            .allowElements("span")
            .allowAttributes("class")
            .matching(false, "tick done", "tick open", "footnotes", "footnote-ref", "footnote-backref")
            .onElements("span", "div", "section", "a")
            .allowAttributes("id")
            .matching(FOOTNOTE)
            .onElements("sup", "li")
            .allowElements(
                    (name, attributes) -> {
                        // the parser writes how a column stands in an attribute that HTML has given up
                        attributes.replaceAll(word -> word.equals("align") ? "class" : "to-" + word);
                        return name;
                    },
                    "th",
                    "td")
            .allowAttributes("align")
            .matching(false, "left", "right", "center")
            .onElements("th", "td")
            .allowAttributes("start")
            .matching(Pattern.compile("[0-9]{1,9}"))
            .onElements("ol")
            .disallowWithoutAttributes("img")
            .toFactory();

    private Markdown() {}

    /** HTML as the specification of CommonMark has it: HTML in the text passes, nothing is cleaned. Never for a page. */
    static String asSpecified(String text) {
        return NoteParser.asSpecified().html(text);
    }

    /** HTML of a note's text whose references show their words. */
    public static String html(String text) {
        return html(text, NoteLinks.NONE, Quotes.AS_TYPED);
    }

    /** HTML of a note's text. */
    public static String html(String text, NoteLinks links, Quotes quotes) {
        if (isTooBusy(text)) {
            return asTyped(text);
        }
        try {
            NoteParser parser = NoteParser.of(quotes);
            Document document = parser.parse(text);
            name(document, links);
            parser.apostrophes(document);
            return POLICY.sanitize(parser.render(document));
        } catch (StackOverflowError nested) {
            // the parser goes as deep as the text is nested; what it was at is thrown away whole
            return asTyped(text);
        }
    }

    private static String asTyped(String text) {
        return "<pre>" + escaped(text) + "</pre>";
    }

    /** A picture of the project within a text; the alternative is empty where none is written. */
    public record Picture(String file, String alternative) {}

    /** The pictures of the project that a text shows, in their order. */
    public static List<Picture> pictures(String text) {
        if (!text.contains("![") || isTooBusy(text)) {
            return List.of();
        }
        try {
            return shown(NoteParser.of(Quotes.AS_TYPED).parse(text));
        } catch (StackOverflowError nested) {
            // such a text is shown as it was typed
            return List.of();
        }
    }

    private static List<Picture> shown(Document document) {
        return NoteParser.all(document).stream()
                .filter(Image.class::isInstance)
                .map(Image.class::cast)
                .flatMap(image -> photo(image.getUrl().toString())
                        .map(src -> new Picture(
                                src.substring("/photos/".length()),
                                image.getText().toString().strip()))
                        .stream())
                .toList();
    }

    /** Those of a note's pictures that its text does not show: they stand under it. */
    public static List<Photo> under(String text, List<Photo> photos) {
        Set<String> within = pictures(text).stream().map(Picture::file).collect(Collectors.toSet());
        return photos.stream().filter(photo -> !within.contains(photo.file())).toList();
    }

    /** Gives every reference the name of what it points to; where that is gone, its words stand and say so. */
    private static void name(Document document, NoteLinks links) {
        for (Node node : NoteParser.all(document)) {
            if (!(node instanceof Link link)
                    || !NoteLinks.ADDRESS.matcher(link.getUrl()).matches()) {
                continue;
            }
            String url = link.getUrl().toString();
            String words = link.getText().isBlank()
                    ? url.replace(':', ' ')
                    : link.getText().toString();
            Optional<NoteLinks.Target> target = links.at(url);
            String shown = target.map(NoteLinks.Target::name).orElse(words + GONE);
            String address = target.map(NoteLinks.Target::address).orElse("");
            if (address.isEmpty()) {
                link.insertBefore(new Text(BasedSequence.of(shown)));
                link.unlink();
            } else {
                link.removeChildren();
                link.appendChild(new Text(BasedSequence.of(shown)));
                link.setUrl(BasedSequence.of(address));
            }
        }
    }

    /** The text with its references as their words alone: named as today, or said to be gone. */
    private static String plain(String text, NoteLinks links) {
        return REFERENCE.matcher(text).replaceAll(match -> {
            String words = match.group(1).isBlank() ? match.group(2).replace(':', ' ') : match.group(1);
            return Matcher.quoteReplacement(
                    links.at(match.group(2)).map(NoteLinks.Target::name).orElse(words + GONE));
        });
    }

    /** The first words of a text without its marks, for lists; cut after a word, at most so many letters. */
    public static String opening(String text, int letters, NoteLinks links, Quotes quotes) {
        int look = Math.min(text.length(), 500 + 10 * letters);
        String opening = opening(plain(text.substring(0, look), links) + text.substring(look), letters);
        return NoteParser.of(quotes).quoted(opening);
    }

    /** The first words of a text without its marks, for lists; cut after a word, at most so many letters. */
    public static String opening(String text, int letters) {
        // marks are a small part of a text: so much of it holds the first letters
        int most = Math.min(text.length(), 500 + 10 * letters);
        String plain = text.substring(0, most)
                .replaceAll("(?m)^\\s*(#+|>|[-*+]|[0-9]+[.)]|\\|.*)\\s*", "")
                .replaceAll("!\\[[^\\]]*\\]\\([^)]*\\)", "")
                .replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1")
                .replaceAll("[*_`~]", "")
                .replaceAll("\\s+", " ")
                .strip();
        if (plain.codePointCount(0, plain.length()) <= letters) {
            return most < text.length() ? plain + " …" : plain;
        }
        String cut = plain.substring(0, plain.offsetByCodePoints(0, letters));
        int blank = cut.lastIndexOf(' ');
        return (blank > letters / 2 ? cut.substring(0, blank) : cut) + " …";
    }

    private static Optional<String> photo(String src) {
        var match = PHOTO.matcher(src.strip());
        return match.matches() && !match.group(1).contains("..")
                ? Optional.of("/photos/" + match.group(1))
                : Optional.empty();
    }

    private static boolean isTooBusy(String text) {
        long brackets = text.chars().filter(c -> c == '[' || c == ']').count();
        return brackets > BRACKETS_MOST
                || text.split("<!--", -1).length > COMMENTS_MOST
                || RUN.matcher(text).find()
                || DEEP.matcher(text).find();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&#34;");
    }
}
