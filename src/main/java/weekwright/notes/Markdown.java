package weekwright.notes;

import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ext.footnotes.FootnoteExtension;
import com.vladsch.flexmark.ext.gfm.strikethrough.StrikethroughExtension;
import com.vladsch.flexmark.ext.gfm.tasklist.TaskListExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/**
 * Markdown (CommonMark with tables, struck-out text, task lists and footnotes) to HTML that may stand in a page whoever
 * wrote it. HTML in the text is shown as text; then a list of what may pass is held against the outcome, because the
 * parser's own filter of addresses has been got round with character references. A text made to keep the parser busy is
 * shown as it was typed. Holds nothing; safe for use from several threads.
 */
public final class Markdown {
    /** Marks in one unbroken run, or in all, from which on a text is shown as typed: nesting costs their square. */
    private static final int RUN_MOST = 200;

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

    private static final DataHolder OPTIONS = new MutableDataSet()
            .set(
                    Parser.EXTENSIONS,
                    List.of(
                            TablesExtension.create(),
                            StrikethroughExtension.create(),
                            TaskListExtension.create(),
                            FootnoteExtension.create()))
            .set(TaskListExtension.ITEM_DONE_MARKER, "<span class=\"tick done\">done:</span> ")
            .set(TaskListExtension.ITEM_NOT_DONE_MARKER, "<span class=\"tick open\">to do:</span> ")
            .set(HtmlRenderer.ESCAPE_HTML, true)
            .set(HtmlRenderer.PERCENT_ENCODE_URLS, true)
            .set(HtmlRenderer.SUPPRESSED_LINKS, "(?i)(javascript|data|vbscript):.*")
            .toImmutable();
    private static final Parser PARSER = Parser.builder(OPTIONS).build();
    private static final HtmlRenderer RENDERER = renderer(OPTIONS);

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
                    "th",
                    "td",
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
            .allowAttributes("align")
            .matching(false, "left", "right", "center")
            .onElements("th", "td")
            .allowAttributes("start")
            .matching(Pattern.compile("[0-9]{1,9}"))
            .onElements("ol")
            .disallowWithoutAttributes("img")
            .toFactory();

    private Markdown() {}

    private static HtmlRenderer renderer(DataHolder options) {
        return HtmlRenderer.builder(options)
                .nodeRendererFactory(unused -> new CodeSpans())
                .build();
    }

    /** HTML as the specification of CommonMark has it: HTML in the text passes, nothing is cleaned. Never for a page. */
    static String asSpecified(String text) {
        return renderer(OPTIONS.toMutable().set(HtmlRenderer.ESCAPE_HTML, false).toImmutable())
                .render(PARSER.parse(text));
    }

    /** HTML of a note's text whose references show their words. */
    public static String html(String text) {
        return html(text, NoteLinks.NONE);
    }

    /** HTML of a note's text. */
    public static String html(String text, NoteLinks links) {
        if (isTooBusy(text)) {
            return "<pre>" + escaped(text) + "</pre>";
        }
        Document document = PARSER.parse(text);
        name(document, links);
        return POLICY.sanitize(RENDERER.render(document));
    }

    /** Gives every reference the name of what it points to; where that is gone, its words stand and say so. */
    private static void name(Document document, NoteLinks links) {
        List<Node> nodes = new ArrayList<>();
        document.getDescendants().forEach(nodes::add);
        for (Node node : nodes) {
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
    public static String opening(String text, int letters, NoteLinks links) {
        int look = Math.min(text.length(), 500 + 10 * letters);
        return opening(plain(text.substring(0, look), links) + text.substring(look), letters);
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
                || RUN.matcher(text).find()
                || DEEP.matcher(text).find();
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&#34;");
    }

    /**
     * Code within a line as CommonMark 0.31.2 section 6.1 has it: line ends become blanks, one blank at either end goes
     * unless all are blanks, and blanks within stay. The parser's own renderer folds them.
     */
    private static final class CodeSpans implements NodeRenderer {
        @Override
        public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
            return Set.of(new NodeRenderingHandler<>(Code.class, CodeSpans::write));
        }

        private static void write(Code code, NodeRendererContext context, HtmlWriter html) {
            String text = code.getText().toString().replace('\n', ' ');
            if (text.length() > 1 && text.startsWith(" ") && text.endsWith(" ") && !text.isBlank()) {
                text = text.substring(1, text.length() - 1);
            }
            html.withAttr().tag("code");
            html.text(text);
            html.tag("/code");
        }
    }
}
