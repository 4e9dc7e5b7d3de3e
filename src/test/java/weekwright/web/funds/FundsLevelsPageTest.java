package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsLevelsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void levels_say_what_arrives_of_a_pledge() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds/levels");
        assertThat(page.page().select("tbody tr").text()).isEqualTo("Plank €5.00 a month 8 % 5 days later");
    }
}
