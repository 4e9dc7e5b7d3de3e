package weekwright.notes;

import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.html.HtmlWriter;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRendererContext;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import java.util.Set;

/**
 * Code within a line as CommonMark 0.31.2 section 6.1 has it: line ends become blanks, one blank at either end goes
 * unless all are blanks, and blanks within stay. The parser's own renderer folds them.
 */
final class CodeSpans implements NodeRenderer {
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
