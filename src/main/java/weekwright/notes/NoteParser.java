package weekwright.notes;

import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.ext.footnotes.FootnoteExtension;
import com.vladsch.flexmark.ext.gfm.strikethrough.StrikethroughExtension;
import com.vladsch.flexmark.ext.gfm.tasklist.TaskListExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.ext.typographic.TypographicExtension;
import com.vladsch.flexmark.ext.typographic.TypographicQuotes;
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
import com.vladsch.flexmark.util.misc.Extension;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import weekwright.build.Project.Quotes;

/**
 * Reads Markdown (CommonMark with tables, struck-out text, task lists and footnotes) and writes it as HTML that is not
 * cleaned yet, with straight quotation marks set in one way. Safe for use from several threads.
 */
final class NoteParser {
    /** A single mark that has no partner, and no backslash before it. */
    private static final Pattern APOSTROPHE = Pattern.compile("(?<!\\\\)'");

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
    private static final Map<Quotes, NoteParser> ALL = new EnumMap<>(Quotes.class);

    static {
        for (Quotes quotes : Quotes.values()) {
            ALL.put(quotes, new NoteParser(quotes, options(quotes)));
        }
    }

    private final Quotes quotes;
    private final Parser parser;
    private final HtmlRenderer renderer;

    private NoteParser(Quotes quotes, DataHolder options) {
        this.quotes = quotes;
        this.parser = Parser.builder(options).build();
        this.renderer = HtmlRenderer.builder(options)
                .nodeRendererFactory(unused -> new CodeSpans())
                .build();
    }

    static NoteParser of(Quotes quotes) {
        return ALL.get(quotes);
    }

    /** HTML in the text passes. Never for a page. */
    static NoteParser asSpecified() {
        return new NoteParser(
                Quotes.AS_TYPED,
                OPTIONS.toMutable().set(HtmlRenderer.ESCAPE_HTML, false).toImmutable());
    }

    private static DataHolder options(Quotes quotes) {
        return switch (quotes) {
            case AS_TYPED -> OPTIONS;
            case ENGLISH -> quoting("\u201c", "\u201d", "\u2018", "\u2019");
            case GERMAN -> quoting("\u201e", "\u201c", "\u201a", "\u2018");
            case FRENCH -> quoting("\u00ab\u00a0", "\u00a0\u00bb", "\u2039\u00a0", "\u00a0\u203a");
            case SWISS -> quoting("\u00ab", "\u00bb", "\u2039", "\u203a");
        };
    }

    private static DataHolder quoting(String open, String close, String openWithin, String closeWithin) {
        MutableDataSet options = new MutableDataSet(OPTIONS);
        List<Extension> extensions = new ArrayList<>(Parser.EXTENSIONS.get(OPTIONS));
        extensions.add(TypographicExtension.create());
        return options.set(Parser.EXTENSIONS, extensions)
                .set(TypographicExtension.ENABLE_SMARTS, false)
                .set(TypographicExtension.DOUBLE_QUOTE_OPEN, open)
                .set(TypographicExtension.DOUBLE_QUOTE_CLOSE, close)
                .set(TypographicExtension.SINGLE_QUOTE_OPEN, openWithin)
                .set(TypographicExtension.SINGLE_QUOTE_CLOSE, closeWithin)
                .toImmutable();
    }

    Document parse(String text) {
        return parser.parse(text);
    }

    String render(Document document) {
        return renderer.render(document);
    }

    String html(String text) {
        return render(parse(text));
    }

    /** Every node as it stands now, so that some may be put in or taken out on the way. */
    static List<Node> all(Document document) {
        List<Node> nodes = new ArrayList<>();
        document.getDescendants().forEach(nodes::add);
        return nodes;
    }

    /** Sets single marks that have no partner as apostrophes; a double one stays. */
    void apostrophes(Document document) {
        if (quotes == Quotes.AS_TYPED) {
            return;
        }
        for (Node node : all(document)) {
            if (node instanceof Text words) {
                words.setChars(
                        BasedSequence.of(APOSTROPHE.matcher(words.getChars()).replaceAll("\u2019")));
            }
        }
    }

    /** Plain words with their quotation marks set. */
    String quoted(String words) {
        if (quotes == Quotes.AS_TYPED) {
            return words;
        }
        StringBuilder set = new StringBuilder(words);
        List<Mark> marks = new ArrayList<>();
        for (Node node : all(parse(words))) {
            if (node instanceof TypographicQuotes pair) {
                marks.add(new Mark(pair.getOpeningMarker(), pair.getTypographicOpening()));
                marks.add(new Mark(pair.getClosingMarker(), pair.getTypographicClosing()));
            }
        }
        marks.stream()
                .sorted(Comparator.comparing((Mark mark) -> mark.typed().getStartOffset())
                        .reversed())
                .forEach(mark ->
                        set.replace(mark.typed().getStartOffset(), mark.typed().getEndOffset(), mark.shown()));
        return APOSTROPHE.matcher(set).replaceAll("\u2019");
    }

    private record Mark(BasedSequence typed, String shown) {}

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
