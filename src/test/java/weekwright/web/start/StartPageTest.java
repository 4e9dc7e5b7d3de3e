package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.build.StageStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class StartPageTest {
    @Test
    void an_empty_folder_offers_three_ways_to_begin() {
        try (ServerFixture server = ServerFixture.empty()) {
            Visitor visitor = server.stranger();
            Visitor.Reply first = visitor.get("/");
            assertThat(first.to()).isEqualTo("/ahead");
            Visitor.Reply page = visitor.get("/start");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.page().select("h1").text()).isEqualTo("This folder holds no project yet.");
            assertThat(page.page().select("h2").eachText())
                    .containsExactly("A new project", "From plain files", "A copy of the sample");
            assertThat(page.text()).contains(server.app().folder().path().toString());
        }
    }

    @Test
    void a_copy_of_the_sample_is_made_in_the_folder() {
        try (ServerFixture server = ServerFixture.empty()) {
            Visitor visitor = server.stranger();
            Visitor.Reply copied = visitor.form(visitor.get("/start")).press("sample");
            assertThat(copied.status()).isEqualTo(303);
            assertThat(copied.to()).isEqualTo("/ahead");
            assertThat(server.app().folder().isProject()).isTrue();
            assertThat(server.db().read(StageStore.TABLE::count)).isGreaterThan(7);
        }
    }

    @Test
    void where_a_project_stands_the_start_is_over() {
        try (ServerFixture server = ServerFixture.small()) {
            for (String path : new String[] {"/start", "/start/new", "/start/files"}) {
                Visitor.Reply reply = server.as("ilse").get(path);
                assertThat(reply.status()).as(path).isEqualTo(303);
                assertThat(reply.to()).isEqualTo("/ahead");
            }
        }
    }
}
