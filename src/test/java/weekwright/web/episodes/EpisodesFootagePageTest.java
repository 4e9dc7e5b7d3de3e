package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class EpisodesFootagePageTest {
    @Test
    void without_footage_nothing_is_measured_and_a_month_is_named_rightly() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            assertThat(bram.get("/episodes/footage").page().select(".lead").text())
                    .isEqualTo("What is shot for a finished minute shows once an episode with footage in the log is"
                            + " published.");
            assertThat(bram.get("/episodes/footage?of=soon").status()).isEqualTo(404);
        }
    }

    /**
     * By hand: 45 minutes filmed of the only task that the only published episode, of 18 minutes, tells: 2.5 for one. Nine hours
     * of editing it: half an hour for one. 20 minutes then take 50; the 7 that the straps can give take 17.5, so 18.
     */
    @Test
    void what_was_measured_is_the_default_of_the_next_estimates() {
        try (ServerFixture server = ServerFixture.of(db -> {
            SmallProject.fill(db);
            db.write("test", write -> {
                HoursEntryStore.TABLE.insert(
                        write, hours("f1", "task", "weir.1", "hours", "1", "footage_minutes", "45"));
                HoursEntryStore.TABLE.insert(
                        write, hours("f2", "task", "gate.3", "hours", "1", "footage_minutes", "6.5"));
                HoursEntryStore.TABLE.insert(write, hours("f3", "episode", "ep.10", "as", "edit", "hours", "9"));
                return null;
            });
        })) {
            Visitor bram = server.as("bram");
            assertThat(bram.get("/episodes/footage").page().select("h1").text())
                    .isEqualTo("2.5 minutes of footage for each finished one");
            for (String path : List.of("/episodes/new", "/episodes/ep.12/edit")) {
                Document form = bram.get(path).page();
                assertThat(form.select(".field:has(#minutes) .hint").text())
                        .isEqualTo(
                                "Empty: 20, as the settings of publishing say. That takes about 50 minutes of footage,"
                                        + " 2.5 for each finished one.");
                assertThat(form.select(".field:has(#edit_likely) .hint").text())
                        .isEqualTo("Empty: 24 hours for 20 minutes, as the settings of publishing say. So far it took ½"
                                + " hour for each finished minute.");
            }
            assertThat(bram.get("/build/tasks/gate.3")
                            .page()
                            .select(".facts div:has(dt:containsOwn(Story)) dd")
                            .text())
                    .isEqualTo("7 minutes, of about 18 of footage; filmed so far: 6.5");
        }
    }

    private static HoursEntry hours(String id, String... more) {
        List<String> pairs = new ArrayList<>(List.of("id", id, "date", "2026-10-12", "crew", "bram"));
        pairs.addAll(List.of(more));
        return SmallProject.of(HoursEntry.class, pairs.toArray(String[]::new));
    }
}
