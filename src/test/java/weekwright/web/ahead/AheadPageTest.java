package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.build.CrewMemberStore;
import weekwright.build.StageStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class AheadPageTest {
    private static Visitor.Reply drawn(ServerFixture server, String who) throws InterruptedException {
        Visitor visitor = server.as(who);
        visitor.get("/ahead");
        server.app().forecasts().orElseThrow().await();
        return visitor.get("/ahead");
    }

    @Test
    void the_first_visit_gets_the_frame_at_once_and_a_link_to_look_again() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply first = server.as("ilse").get("/ahead");
            assertThat(first.status()).isEqualTo(200);
            assertThat(first.page().select("[data-moving]").attr("data-moving")).isEqualTo("true");
            assertThat(first.page().select("main a[href=/ahead]").text()).isEqualTo("Look again");
        }
    }

    @Test
    void the_drawn_forecast_answers_in_five_sentences_one_picture_and_its_table() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = drawn(server, "ilse");
            System.out.println(page.text());
            assertThat(page.page().select("[data-moving]").attr("data-moving")).isEqualTo("false");
            assertThat(page.page().select("h1").text()).matches("Weir is done about \\w+ ?\\d* December\\.");
            assertThat(page.page().select(".answer h2").eachText()).hasSize(4);
            assertThat(page.page().select("figure svg.ahead-wide, figure svg[class~=ahead-wide]")).hasSize(1);
            assertThat(page.page().select("details.figures caption").eachText())
                    .containsExactly("Stages", "Fridays", "Purchases");
            assertThat(page.page().select("dl.title-block div").eachText())
                    .contains("From 400 futures drawn", "Seed 1");
        }
    }
}
