package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.Task;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTaskSplitPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_task_becomes_two_with_the_hours_and_the_links_of_each() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/tasks/weir.2/split");
            assertThat(page.page().select("#rest-hint").text())
                    .isEqualTo("The whole is 30 hours; the rest stays with the first part.");
            Visitor.Reply refused =
                    ilse.form(page).with("rest", "30").with("second", "").send();
            assertThat(refused.troubles()).containsExactly("is missing; it has to be given");
            Visitor.Reply more =
                    ilse.form(refused).with("second", "Set the upper stones").send();
            assertThat(more.troubles())
                    .containsExactly("\"30\" leaves one of the parts nothing; write more than 0 and less than 30");
            Visitor.Reply part = ilse.follow(ilse.form(more)
                    .with("first", "Set the lower stones")
                    .with("rest", "12")
                    .with("from", "2026-11-10")
                    .send());
            assertThat(part.page().select(".flash p").text())
                    .isEqualTo("It is two tasks now. Materials, shots and lines of the week stay with the first part; 1"
                            + " entry of hours went with this.");
            Task first = OakMill.task(server.db(), "weir.2");
            Task second = OakMill.task(server.db(), "weir.4");
            assertThat(first.likely().orElseThrow().text()).isEqualTo("18");
            assertThat(first.low().orElseThrow().text()).isEqualTo("12");
            assertThat(second.high().orElseThrow().text()).isEqualTo("20");
            assertThat(first.storyMinutes().orElseThrow().text()).isEqualTo("6");
            assertThat(first.started()).contains(LocalDate.of(2026, 11, 9));
            assertThat(second.started()).contains(LocalDate.of(2026, 11, 10));
            assertThat(part.page()
                            .select("section[aria-labelledby=links-head] tbody th")
                            .eachText())
                    .containsExactly("Set the lower stones", "Lime cures");
        }
    }

    @Test
    void a_link_that_asks_for_a_share_goes_to_the_part_in_which_its_share_lies() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.follow(ilse.form(ilse.get("/build/tasks/weir.3/edit"))
                    .with("share.0", "0.3")
                    .send());
            ilse.follow(ilse.form(ilse.get("/build/tasks/weir.2/split"))
                    .with("rest", "15")
                    .send());
            assertThat(ilse.get("/build/tasks/weir.3")
                            .page()
                            .select("section[aria-labelledby=links-head] tbody tr")
                            .first()
                            .text())
                    .startsWith("Set the sill stones, first part once 60 % is done");
        }
    }

    @Test
    void a_task_that_is_done_is_not_split() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/weir.1/split"))
                .with("rest", "4")
                .send();
        assertThat(refused.troubles())
                .containsExactly("\"Dig the footing\" is done since 16 October 2026; open it again first");
    }
}
