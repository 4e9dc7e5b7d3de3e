package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.LinkStore;
import weekwright.build.TaskStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStageTasksEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_tasks_stand_in_rows_with_ten_empty_ones_after_them() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/gate/tasks/edit");
        assertThat(page.page().select("tbody tr").size()).isEqualTo(13);
        Visitor.Form form = SERVER.as("ilse").form(page);
        assertThat(form.value("title.1")).isEqualTo("Hang the gate");
        assertThat(form.value("after.1")).isEqualTo("Lime cures; Plane the gate boards; Forge the straps");
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply more = ilse.form(ilse.get("/build/stages/gate/tasks/edit"))
                .with("title.3", "Fit the rack")
                .press("more");
        assertThat(more.page().select("tbody tr").size()).isEqualTo(23);
        assertThat(ilse.form(more).value("title.3")).isEqualTo("Fit the rack");
    }

    @Test
    void rule_119_words_of_the_titles_propose_hazards_and_somebody_looks_once() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply again = ilse.form(ilse.get("/build/stages/gate/tasks/edit"))
                    .with("title.3", "Pour the bearing")
                    .with("title.4", "Lift the gate")
                    .with("likely.4", "3")
                    .send();
            assertThat(again.status()).isEqualTo(200);
            assertThat(again.page().select(".flash p").text())
                    .isEqualTo(
                            "Not saved yet: the titles speak of 2 dangers, ticked above the table now. Take out what is"
                                    + " not so, then save.");
            assertThat(again.page().select(".proposed label").eachText())
                    .containsExactly(
                            "Row 4, Pour the bearing: Molten metal", "Row 5, Lift the gate: Lifting and rigging");
            Visitor.Reply saved = ilse.follow(
                    ilse.form(again, ".cells-form").with("hazard", "3:melt").send());
            assertThat(saved.page().select(".flash p").text()).startsWith("2 tasks added.");
            assertThat(OakMill.task(server.db(), "gate.4").hazards().text()).isEqualTo("melt");
            assertThat(OakMill.task(server.db(), "gate.5").hazards().text()).isEmpty();
            Visitor.Reply later = ilse.form(ilse.get("/build/stages/gate/tasks/edit"), ".cells-form")
                    .with("likely.4", "4")
                    .send();
            assertThat(later.status()).isEqualTo(303);
        }
    }

    @Test
    void rows_are_added_and_changed_together_and_follow_each_other() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/build/stages/gate/tasks/edit"))
                    .with("likely.1", "7")
                    .with("title.3", "Fit the rack")
                    .with("likely.3", "2,5")
                    .with("after.3", "5; hang the gate")
                    .with("title.4", "Cast the pinion")
                    .with("kind.4", "wait")
                    .with("likely.4", "21")
                    .send());
            assertThat(saved.page().select(".flash p").text()).isEqualTo("2 tasks added, 1 task changed.");
            assertThat(ilse.get("/build/tasks/gate.4")
                            .page()
                            .select("section[aria-labelledby=links-head] tbody th")
                            .eachText())
                    .containsExactly("Cast the pinion", "Hang the gate");
            assertThat(OakMill.task(server.db(), "gate.2")
                            .likely()
                            .orElseThrow()
                            .text())
                    .isEqualTo("7");
            assertThat(OakMill.find(server.db(), TaskStore.TABLE, "gate.1").version())
                    .isEqualTo(1);
        }
    }

    @Test
    void each_fault_stands_at_its_cell_and_nothing_is_saved() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/stages/gate/tasks/edit"))
                .with("likely.0", "x")
                .with("after.0", "Nobody knows")
                .with("title.3", "")
                .with("likely.3", "3")
                .with("title.4", "Oil dries")
                .with("kind.4", "drying")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("tbody .error").eachText())
                .containsExactly(
                        "\"x\" is not a number; write 12 or 2.5",
                        "\"Nobody knows\" is no task's title; write a title, or the number of a row",
                        "\"drying\" is not a known word here; write one of work, wait");
        Visitor.Reply more = ilse.form(refused)
                .with("likely.0", "9")
                .with("low.0", "10")
                .with("after.0", "")
                .with("kind.4", "wait")
                .send();
        assertThat(more.page().select("tbody .error").eachText())
                .containsExactly(
                        "\"10\" is over the likely 9; write 9 or less",
                        "is missing; write what is done, such as Raise the wheel shaft",
                        "is missing; write the days that the wait takes");
        assertThat(more.page().select("[aria-invalid=true]").eachAttr("id"))
                .containsExactly("low.0", "title.3", "likely.4");
        assertThat(SERVER.db().read(TaskStore.TABLE::count)).isEqualTo(6);
    }

    @Test
    void rule_36_a_ring_is_refused_with_the_ring_written_out_and_the_entry_kept() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/stages/weir/tasks/edit"))
                .with("after.0", "3")
                .send();
        assertThat(refused.page().select("tbody .error").eachText())
                .containsExactly("Dig the footing → Set the sill stones → Lime cures → Dig the footing is a ring: each"
                        + " waits for the one before it; take one of these links out");
        assertThat(ilse.form(refused).value("after.0")).isEqualTo("3");
    }

    @Test
    void rule_36_new_rows_that_wait_for_each_other_or_for_themselves_are_refused() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply ring = ilse.form(ilse.get("/build/stages/gate/tasks/edit"))
                .with("title.3", "Fit the rack")
                .with("after.3", "Cast the pinion")
                .with("title.4", "Cast the pinion")
                .with("after.4", "Fit the rack")
                .send();
        assertThat(ring.page().select("tbody .error").eachText())
                .containsExactly(
                        "Fit the rack → Cast the pinion → Fit the rack is a ring: each waits for the one before"
                                + " it; take one of these links out");
        Visitor.Reply self =
                ilse.form(ring).with("after.3", "").with("after.4", "5").send();
        assertThat(self.page().select("tbody .error").eachText())
                .containsExactly("\"5\" is this row itself; name a task that comes before it");
        assertThat(SERVER.db().read(TaskStore.TABLE::count)).isEqualTo(6);
    }

    @Test
    void a_block_of_200_rows_is_pasted_looked_at_and_saved() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            String block = "Task\tHours\tAfter\n"
                    + IntStream.rangeClosed(1, 200)
                            .mapToObj(i -> "Cog " + i + "\t0.75\t" + (i == 1 ? "" : "Cog " + (i - 1)))
                            .collect(Collectors.joining("\n"));
            Visitor.Reply pasted = ilse.form(ilse.get("/build/stages/gate/tasks/edit"))
                    .with("paste", block)
                    .press("paste");
            assertThat(pasted.page().select(".flash p").text())
                    .isEqualTo("200 rows are in the table now. Nothing is saved yet.");
            assertThat(pasted.page().select("tbody tr").size()).isEqualTo(213);
            assertThat(ilse.form(pasted).value("after.202")).isEqualTo("Cog 199");
            Visitor.Reply saved = ilse.follow(ilse.form(pasted).send());
            assertThat(saved.page().select(".flash p").text()).isEqualTo("200 tasks added.");
            assertThat(server.db().read(TaskStore.TABLE::count)).isEqualTo(206);
            assertThat(server.db().read(LinkStore.TABLE::count)).isEqualTo(5 + 199);
        }
    }

    @Test
    void
            a_row_changed_by_somebody_else_is_refused_once_with_theirs_beside_it_and_one_that_was_not_touched_is_left_alone() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/stages/gate/tasks/edit");
            Visitor bram = server.as("bram");
            bram.follow(bram.form(bram.get("/build/tasks/gate.1/edit"))
                    .with("likely", "11")
                    .send());
            Visitor.Reply refused = ilse.form(page).with("hands.0", "2").send();
            assertThat(refused.page().select("tbody .error").eachText())
                    .containsExactly("\"12\" stands where somebody else wrote \"11\" since this table was opened;"
                            + " save once more to put yours in its place");
            assertThat(ilse.form(refused).value("hands.0")).isEqualTo("2");
            ilse.follow(ilse.form(page).with("hands.1", "2").send());
            assertThat(OakMill.task(server.db(), "gate.1")
                            .likely()
                            .orElseThrow()
                            .text())
                    .isEqualTo("11");
            bram.follow(bram.form(bram.get("/build/tasks/gate.1/edit"))
                    .with("likely", "13")
                    .send());
            Visitor.Reply again = ilse.form(refused).send();
            assertThat(again.page().select("tbody .error").eachText())
                    .containsExactly("\"12\" stands where somebody else wrote \"13\" since this table was opened;"
                            + " save once more to put yours in its place");
            assertThat(ilse.form(again).send().status()).isEqualTo(303);
            assertThat(OakMill.task(server.db(), "gate.1")
                            .likely()
                            .orElseThrow()
                            .text())
                    .isEqualTo("12");
        }
    }
}
