package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import weekwright.base.Id;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Stored;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Little story is in hand, and the work that gives some stands on Week, on Episodes and at an empty slot. */
@Timeout(120)
class StoryWorkPagesTest {
    /** The boards of the gate are told by an episode; the pegs are like them and told by none. */
    private static void withPegs(Db db) {
        SmallProject.fill(db);
        db.write("ilse", write -> {
            Task boards = TaskStore.TABLE
                    .find(write, new Id("gate.1"))
                    .map(Stored::value)
                    .orElseThrow();
            return TaskStore.TABLE.insert(write, TaskStore.TABLE.shape().with(boards, "id", new Id("gate.4")));
        });
    }

    @Test
    void a_thin_bank_shows_the_work_that_gives_story_on_week_episodes_and_an_empty_slot() throws Exception {
        try (ServerFixture server = ServerFixture.of(StoryWorkPagesTest::withPegs)) {
            Visitor ilse = server.as("ilse");
            assertThat(ilse.get("/week").page().select(".story-work")).isEmpty();
            server.app().forecasts().orElseThrow().await();
            for (String page : new String[] {"/week", "/episodes", "/episodes/slots/2026-12-18"}) {
                Visitor.Reply reply = ilse.get(page);
                assertThat(reply.page().select(".story-work h2").text())
                        .as(page)
                        .isEqualTo("Story work");
                assertThat(reply.page().select(".story-work a").eachAttr("href"))
                        .as(page)
                        .containsExactly("/build/tasks/gate.4");
                assertThat(reply.page().select(".story-work li small").text())
                        .as(page)
                        .startsWith("about 8 minutes of story; done first it holds ");
                assertThat(reply.page().select(".story-work .caption").text())
                        .as(page)
                        .isEqualTo("Each was put at the front of the order of work, and 400 futures of that were held"
                                + " against as many as things stand, with the same luck. Work with somebody beside and"
                                + " what happens only once is never among it.");
            }
            assertThat(server.as("noor").get("/week").page().select(".story-work"))
                    .isEmpty();
        }
    }
}
