package weekwright.testkit;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;
import weekwright.web.Routes;

/** One address of every kind of page that can be reached by links, found by walking through them. */
public final class EveryPage {
    private EveryPage() {}

    /** The address in {@link Routes} to one page of it that answers; pages that no link leads to are left out. */
    public static Map<String, String> of(ServerFixture server, String crew) {
        List<String> kinds =
                new Routes(server.app()).pages().stream().map(Routes.Line::path).toList();
        Visitor visitor = server.as(crew);
        Map<String, String> found = new LinkedHashMap<>();
        Deque<String> waiting = new ArrayDeque<>();
        kinds.stream().filter(kind -> !kind.contains("{")).forEach(waiting::add);
        while (!waiting.isEmpty()) {
            String path = waiting.remove();
            Optional<String> kind = kind(kinds, path.replaceFirst("\\?.*", ""));
            if (kind.isEmpty() || found.containsKey(kind.get())) {
                continue;
            }
            Visitor.Reply reply = visitor.get(path);
            if (reply.status() != 200) {
                continue;
            }
            found.putIfAbsent(kind.get(), path);
            for (Element link : reply.page().select("a[href]")) {
                String to = link.absUrl("href");
                if (to.startsWith(server.origin() + "/")) {
                    waiting.add(to.substring(server.origin().length()).replaceFirst("#.*", ""));
                }
            }
        }
        return found;
    }

    /** The address with fewest braces that fits. */
    private static Optional<String> kind(List<String> kinds, String path) {
        return kinds.stream()
                .filter(kind -> path.matches(kind.replaceAll("\\{[a-z]+}", "[^/]+")))
                .min(java.util.Comparator.comparingLong(
                        kind -> kind.chars().filter(c -> c == '{').count()));
    }
}
