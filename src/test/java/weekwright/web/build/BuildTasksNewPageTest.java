package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTasksNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_task_is_added_to_a_stage_with_what_it_follows() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/new?stage=gate");
        assertThat(ilse.form(page).value("stage")).isEqualTo("gate");
        Visitor.Reply refused = ilse.form(page)
                .with("title", "")
                .with("low", "5")
                .with("likely", "x")
                .with("after.0", "gate.2")
                .with("hazards", "lift")
                .with("company", "alone")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("\"x\" is not a number; write 12 or 2.5");
        assertThat(refused.page().select("input[name=hazards][checked]").eachAttr("value"))
                .containsExactly("lift");
        assertThat(refused.page().select("details[open] summary").eachText())
                .contains("How sure you are, or like the last one", "Hazards, and who has to be about");
        Visitor.Reply more = ilse.form(refused).with("likely", "6").send();
        assertThat(more.troubles())
                .containsExactly(
                        "is missing; write what is done, such as Raise the wheel shaft",
                        "is missing: alone is less company than by, which lift asks for; write why less is enough, or"
                                + " set company to by");
        Visitor.Reply saved = ilse.form(more)
                .with("title", "Hang the winch")
                .with("company", "")
                .send();
        Visitor.Reply task = ilse.follow(saved);
        assertThat(task.page().select(".flash p").text()).isEqualTo("The task is added.");
        assertThat(task.page()
                        .select("section[aria-labelledby=links-head] tbody th a")
                        .eachText())
                .containsExactly("Hang the gate");
    }

    @Test
    void one_number_is_enough() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "Oil the straps")
                .with("likely", "2,5")
                .send());
        assertThat(saved.page().select("h1").text()).isEqualTo("Oil the straps");
        assertThat(saved.page().select(".facts dd").eachText()).contains("2½ hours");
    }

    @Test
    void another_link_keeps_what_is_typed_and_saves_nothing() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply more = ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "Fit the sill board")
                .with("after.0", "gate.1")
                .with("share.0", "0.5")
                .press("link");
        assertThat(more.status()).isEqualTo(200);
        assertThat(ilse.form(more).value("title")).isEqualTo("Fit the sill board");
        assertThat(ilse.form(more).value("after.0")).isEqualTo("gate.1");
        assertThat(more.page().select("[id=after.1]").size()).isEqualTo(1);
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("after.1", "weir.3")
                .with("wait_likely.1", "3")
                .send());
        assertThat(saved.page()
                        .select("section[aria-labelledby=links-head] tbody tr")
                        .eachText())
                .anyMatch(row -> row.startsWith("Plane the gate boards once 50 % is done"))
                .anyMatch(row -> row.startsWith("Lime cures then 3 days"));
    }

    @Test
    void faults_of_a_link_stand_at_its_row() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "Fit the sill board")
                .with("after.0", "gate.1")
                .with("share.0", "1.5")
                .with("wait_low.0", "9")
                .with("wait_likely.0", "3")
                .with("after.1", "gate.1")
                .with("share.2", "0.5")
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "\"1.5\" is not a share; write 0 to 1, such as 0.5",
                        "\"9\" is over the likely 3; write 3 or less",
                        "names the same task as a row above; name each task once",
                        "is missing beside its share or wait; choose the task, or empty the row");
        assertThat(refused.page().select("[id=share.0]").attr("aria-invalid")).isEqualTo("true");
        assertThat(refused.page().select("[id=wait_low.0]").attr("aria-invalid"))
                .isEqualTo("true");
        assertThat(refused.page().select("[id=after.1]").attr("aria-invalid")).isEqualTo("true");
    }

    @Test
    void the_hours_of_a_finished_task_are_copied() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/new?stage=gate");
        assertThat(page.page().select("#like option").eachText())
                .containsExactly("Choose one", "Weir: Dig the footing");
        Visitor.Reply copied = ilse.form(page)
                .with("title", "Dig the second footing")
                .with("like", "weir.1")
                .press("like");
        assertThat(copied.page().select(".flash p").text())
                .isEqualTo("“Dig the footing” took 19½ hours. Look at it, then save.");
        assertThat(ilse.form(copied).value("likely")).isEqualTo("19.5");
        assertThat(ilse.form(copied).value("title")).isEqualTo("Dig the second footing");
    }

    @Test
    void rule_119_a_word_of_the_title_proposes_a_hazard_once_and_company_follows() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply asked = ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "Pour the gudgeons")
                .with("likely", "4")
                .send();
        assertThat(asked.status()).isEqualTo(200);
        assertThat(asked.page().select(".flash p").text())
                .isEqualTo("Not saved yet: the title speaks of molten metal, which is ticked under Hazards now. Take it"
                        + " out if it is not so, then save.");
        assertThat(ilse.form(asked).value("hazards")).isEqualTo("melt");
        assertThat(asked.page().select("#company-hint").text())
                .isEqualTo("By the hazards as they stand: another person beside.");
        Visitor.Reply saved = ilse.follow(ilse.form(asked).without("hazards").send());
        assertThat(saved.page().select(".task-caution").size()).isZero();
    }

    @Test
    void pieces_and_waits_are_read_as_they_are_told() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "Drive the pegs")
                .with("kind", "pieces")
                .with("likely", "0.25")
                .send();
        assertThat(refused.troubles())
                .containsExactly("is missing; write how many pieces there are, or choose hours of work");
        Visitor.Reply saved =
                ilse.follow(ilse.form(refused).with("pieces", "12").send());
        assertThat(saved.page().select(".facts dd").eachText()).contains("3 hours for 12 pieces");
        Visitor.Reply wait = ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "Oil dries")
                .with("kind", "wait")
                .with("hands", "2")
                .send();
        assertThat(wait.troubles())
                .containsExactly(
                        "is missing; write the days that the wait takes",
                        "\"2\" belongs to work, and this is a wait; leave it empty, or make it work");
    }

    @Test
    void bad_numbers_and_days_are_each_told_at_their_field() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/new?stage=gate"))
                .with("title", "\u200b")
                .with("stage", "")
                .with("low", "NaN")
                .with("likely", "1e5")
                .with("high", "1.234")
                .with("pieces", "0")
                .with("hands", "-1")
                .with("season_from", "02-30")
                .with("not_before", "2026-02-29")
                .with("fail", "150")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id"))
                .contains("stage", "low", "likely", "high", "pieces", "hands", "season_from", "not_before", "fail");
        assertThat(refused.troubles())
                .contains(
                        "is missing; it has to be given",
                        "\"NaN\" is not a number; write 12 or 2.5",
                        "\"1e5\" is not a number; write 12 or 2.5",
                        "\"1.234\" can be read as 1.234 or as 1234; write 1234, or 1.2340 with the point",
                        "\"150\" is over 100; write 0 to 100");
    }
}
