package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewDaysPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void empty_lists_say_what_belongs_there_and_why() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/days");
        assertThat(page.page().select("main section p.quiet").eachText())
                .contains(
                        "None. A day on which friends come to lift or carry: tasks that need many hands wait for it.",
                        "None. When nothing was done, and why: it tells later what really holds the work up.");
    }

    @Test
    void a_helper_does_not_see_them() {
        assertThat(SERVER.as("noor").get("/crew/days").status()).isEqualTo(403);
        assertThat(SERVER.as("noor").get("/crew/safety").status()).isEqualTo(403);
    }
}
