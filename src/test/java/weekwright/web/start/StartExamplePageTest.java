package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.db.Table;
import weekwright.episodes.EpisodeStore;
import weekwright.history.Thing;
import weekwright.history.Things;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Example rows: in as one change, out as far as nobody made them their own. */
class StartExamplePageTest {
    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void start() {
        server = ServerFixture.of(SmallProject::fillWithOnePerson);
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private List<Integer> counts() {
        return server.db()
                .read(read -> Things.all().stream()
                        .map(Thing::table)
                        .map(table -> table.count(read))
                        .toList());
    }

    private int count(Table<?> table) {
        return server.db().read(table::count);
    }

    private Visitor.Reply press(String act) {
        return ilse.form(ilse.get("/start/example")).press(act);
    }

    @Test
    void the_example_goes_in_as_one_change_and_out_again_without_a_trace() {
        List<Integer> before = counts();
        long version = server.db().version();
        Visitor.Reply build = ilse.follow(press("put"));
        assertThat(build.page().select(".flash p").text())
                .isEqualTo("The example is in. Take it out again whenever you like, under Start.");
        assertThat(build.text()).contains("Example: the sluice gate");
        assertThat(server.db().version()).isEqualTo(version + 1);
        assertThat(ilse.get("/ahead").text()).contains("The example rows are in and counted. Take them out");
        assertThat(ilse.get("/episodes/example.film").text()).contains("Example: the gate goes in");
        Visitor.Reply out = ilse.follow(press("out"));
        assertThat(out.page().select(".flash p").text()).isEqualTo("14 rows of the example are taken out.");
        assertThat(counts()).isEqualTo(before);
        assertThat(ilse.get("/ahead").text()).doesNotContain("example rows");
    }

    @Test
    void what_was_changed_and_what_something_real_hangs_on_stays_and_is_told() {
        press("put");
        ilse.form(ilse.get("/build/tasks/example.2/edit"))
                .with("title", "Forge our rack")
                .send();
        ilse.form(ilse.get("/log"), "form[data-log]")
                .with("task", "other")
                .with("other", "example.1")
                .with("hours", "3")
                .send();
        Visitor.Reply out = ilse.follow(press("out"));
        assertThat(out.page().select(".flash p").text())
                .startsWith("Eleven rows of the example are taken out. What stays: ")
                .contains("task \u201cForge our rack\u201d, which was changed")
                .contains("task \u201cExample: plane six oak boards\u201d, which was changed")
                .contains("stage \u201cExample: the sluice gate\u201d, on which task");
        List<Id> tasks = server.db().read(TaskStore.TABLE::ids);
        assertThat(tasks).extracting(Id::value).containsExactly("example.1", "example.2");
        assertThat(count(EpisodeStore.TABLE)).isZero();
        // what stays is the crew's own from now on
        assertThat(ilse.get("/ahead").text()).doesNotContain("example rows");
        assertThat(press("put").text())
                .contains("\"example\" is there already, from an example that became your own; remove it first, or do"
                        + " without the example");
    }

    @Test
    void it_cannot_be_put_in_twice_and_one_button_takes_the_putting_in_back() {
        var form = ilse.form(ilse.get("/start/example"));
        Visitor.Reply in = ilse.follow(form.press("put"));
        Visitor.Reply twice = form.with("answer", "another-answer-key-0001").press("put");
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.text())
                .contains("some of the example is in already; take it out first, or change what is there");
        ilse.form(in, ".flash form").send();
        assertThat(count(StageStore.TABLE)).isZero();
        assertThat(ilse.get("/start/example").text()).contains("it goes out again as a whole");
    }
}
