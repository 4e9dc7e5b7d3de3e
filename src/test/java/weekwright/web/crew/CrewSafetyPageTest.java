package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewSafetyPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void empty_lists_say_what_belongs_there_and_defer_to_those_who_know() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/safety");
        assertThat(page.page().select("main section p.quiet").get(0).text())
                .isEqualTo(
                        "None yet. What is special about your shop or your machine belongs here; it is printed on the week"
                                + " sheet of each day with that hazard.");
        assertThat(page.text()).contains("Local codes and licensed or qualified people come first");
    }
}
