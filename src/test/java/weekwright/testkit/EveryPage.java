package weekwright.testkit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import weekwright.web.Routes;

/** One address of every kind of page that can be reached by links, found by walking through them. */
public final class EveryPage {
    private EveryPage() {}

    /** What a page answers: whether it is the page that was asked for, and where its links lead. */
    public record Shown(boolean itself, List<String> links) {}

    /**
     * Opens one page of each kind in {@link Routes}, and says of each which kind it is while it is open.
     *
     * @param more addresses to which the first page of a kind need not lead
     * @return the kinds that no link led to
     */
    public static List<String> walk(
            ServerFixture server, List<String> more, Function<String, Shown> open, Consumer<String> look) {
        List<String> missing = new ArrayList<>(
                new Routes(server.app()).pages().stream().map(Routes.Line::path).toList());
        List<String> kinds = List.copyOf(missing);
        Deque<String> waiting = new ArrayDeque<>();
        kinds.stream().filter(kind -> !kind.contains("{")).forEach(waiting::add);
        waiting.addAll(more);
        Set<String> asked = new HashSet<>();
        while (!waiting.isEmpty()) {
            String path = waiting.remove();
            Optional<String> kind = kind(kinds, path.replaceFirst("\\?.*", ""));
            if (kind.isEmpty() || !missing.contains(kind.get()) || !asked.add(path)) {
                continue;
            }
            Shown shown = open.apply(path);
            if (!shown.itself()) {
                continue;
            }
            missing.remove(kind.get());
            waiting.addAll(shown.links());
            look.accept(kind.get());
        }
        return missing;
    }

    /** An address of every kind to which links lead, by its kind, as this visitor finds them. */
    public static Map<String, String> addresses(ServerFixture server, Visitor visitor) {
        Map<String, String> addresses = new TreeMap<>();
        AtomicReference<String> open = new AtomicReference<>();
        Function<String, Shown> get = path -> {
            open.set(path);
            Visitor.Reply reply = visitor.get(path);
            boolean page = reply.status() == 200 && reply.header("content-type").startsWith("text/html");
            return new Shown(
                    page,
                    !page
                            ? List.of()
                            : reply.page().select("a[href^=/]").eachAttr("href").stream()
                                    .map(link -> link.replaceFirst("#.*", ""))
                                    .toList());
        };
        walk(server, List.of(), get, kind -> addresses.put(kind, open.get()));
        return addresses;
    }

    /** The address with fewest braces that fits. */
    private static Optional<String> kind(List<String> kinds, String path) {
        return kinds.stream()
                .filter(kind -> path.matches(kind.replaceAll("\\{[a-z]+}", "[^/]+")))
                .min(Comparator.comparingLong(
                        kind -> kind.chars().filter(c -> c == '{').count()));
    }
}
