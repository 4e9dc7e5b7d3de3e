package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** Walks the whole program from Ahead by its links, as one of the crew. */
class LinksTest {
    /** Addresses with a query lead on without end (the month before, the week after): so many of each page are followed. */
    private static final int QUERIES = 6;

    @Test
    void every_link_picture_style_and_script_of_every_page_that_can_be_reached_answers() {
        List<String> dead = new ArrayList<>();
        List<String> within = new ArrayList<>();
        Set<String> seen = new HashSet<>(Set.of("/ahead"));
        Map<String, Integer> queries = new HashMap<>();
        Deque<String> waiting = new ArrayDeque<>(seen);
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            while (!waiting.isEmpty()) {
                String path = waiting.remove();
                Visitor.Reply reply = ilse.get(path);
                if (reply.status() != 200 && reply.status() != 303) {
                    dead.add(path + " answers " + reply.status());
                }
                if (!reply.header("content-type").startsWith("text/html")) {
                    continue;
                }
                within.addAll(within(path, reply.page()));
                for (Element link : reply.page().select("[href], [src], form[action]")) {
                    String to = link.hasAttr("href")
                            ? link.absUrl("href")
                            : link.hasAttr("src") ? link.absUrl("src") : link.absUrl("action");
                    if (!to.startsWith(server.origin() + "/")) {
                        continue;
                    }
                    String next = to.substring(server.origin().length()).replaceFirst("#.*", "");
                    String page = next.replaceFirst("\\?.*", "");
                    boolean enough = next.contains("?") && queries.getOrDefault(page, 0) >= QUERIES;
                    if (!enough && seen.add(next)) {
                        queries.merge(page, next.contains("?") ? 1 : 0, Integer::sum);
                        waiting.add(next);
                    }
                }
            }
        }
        assertThat(dead).isEmpty();
        assertThat(within).isEmpty();
        assertThat(seen)
                .contains("/week", "/log", "/build", "/episodes", "/funds", "/notes", "/crew", "/crew/settings")
                .hasSizeGreaterThan(30);
    }

    /**
     * What is wrong within a page: each address of its own leads to something there, one of them is what a browser waits for before
     * it paints (HTML, link type "expect"), and a form that may wait on a device says under which name.
     */
    private static List<String> within(String path, Document page) {
        List<String> wrong = new ArrayList<>();
        for (String to : page.select("[href^=#]").eachAttr("href")) {
            if (to.length() > 1 && page.getElementById(to.substring(1)) == null) {
                wrong.add(path + " has nothing at " + to);
            }
        }
        if (page.select("head link[rel=expect][blocking=render][href=#sheet-whole]")
                .isEmpty()) {
            wrong.add(path + " may be painted before all of it is there");
        }
        if (!page.select("form[data-keep='']").isEmpty()) {
            wrong.add(path + " has a form that waits on a device without a name");
        }
        return wrong;
    }
}
