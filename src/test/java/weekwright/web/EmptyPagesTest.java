package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** A project in which nothing stands yet but one person: every page says what belongs there, and none shows a bare table. */
class EmptyPagesTest {
    /** A person, a first change, what may be shown to the public and the words are there from the beginning. */
    private static final Set<String> NEVER_EMPTY =
            Set.of("/crew/log-ins", "/crew/history", "/notes/public", "/help/words");

    @Test
    void every_page_of_an_empty_project_says_what_belongs_there() {
        try (ServerFixture server = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            Visitor ilse = server.as("ilse");
            List<String> bare = new ArrayList<>();
            for (Routes.Line line : new Routes(server.app()).pages()) {
                if (line.path().contains("{") || line.path().startsWith("/start")) {
                    continue;
                }
                Visitor.Reply reply = ilse.get(line.path());
                if (reply.status() == 303) {
                    continue;
                }
                assertThat(reply.status()).as(line.path()).isEqualTo(200);
                Document page = reply.page();
                for (Element table : page.select("main table")) {
                    if (table.select("tbody tr").isEmpty()) {
                        bare.add(line.path() + " has a table without rows");
                    }
                }
                boolean says = !page.select(
                                "main .empty-sheet, main .quiet, main form[method=post] :is(input:not([type=hidden]),"
                                        + " textarea, select)")
                        .isEmpty();
                if (!says && !NEVER_EMPTY.contains(line.path())) {
                    bare.add(line.path() + " says nothing: "
                            + page.select("main").text());
                }
            }
            assertThat(bare).isEmpty();
        }
    }
}
