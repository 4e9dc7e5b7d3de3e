package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class WeekWordsPageTest {
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.small().drawn();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void a_message_says_when_what_who_what_to_bring_and_lunch() {
        Visitor.Reply page = server.as("ilse").get("/week/words?who=bram&bring=boots&lunch=soup%20at%20noon");
        assertThat(page.page().select("#message").text().lines())
                .startsWith("Bram, your week:")
                .contains("Bring: boots", "Lunch: soup at noon", "Where: Mill lane 3")
                .anyMatch(line -> line.matches("Wed 25.Nov: Set the sill stones.*\\(there too: Ilse\\)\\."));
        assertThat(page.page().select("#message").text()).hasSizeLessThan(900);
    }

    @Test
    void however_much_is_typed_it_stays_under_900_letters_and_says_that_there_is_more() {
        String much = "boots%20".repeat(130);
        String message = server.as("ilse")
                .get("/week/words?bring=" + much)
                .page()
                .select("#message")
                .text();
        assertThat(message).hasSizeLessThan(900).contains("More stands on the sheet in the shop.");
    }

    @Test
    void the_log_of_a_week_stands_in_at_most_five_lines() {
        Visitor.Reply page = server.as("ilse").get("/week/words?week=2026-W46");
        assertThat(page.page().select("#lines").text().lines())
                .containsExactly(
                        "Ilse worked 13½ hours in the week from 9 November.",
                        "Most of it went into \"Set the sill stones\", 13½ hours.",
                        "Nothing was finished.",
                        "Filmed: Set the sill stones.");
        assertThat(server.as("ilse").get("/week/words").page().select("#lines")).isEmpty();
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(server.as("noor").get("/week/words").status()).isEqualTo(403);
    }
}
