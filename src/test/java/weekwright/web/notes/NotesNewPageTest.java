package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.FAR;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class NotesNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_note_is_kept_with_stage_and_tasks_chosen_by_name_and_taken_back() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Form form = ilse.form(ilse.get("/notes/new"));
        assertThat(form.value("date")).isEqualTo("2026-11-25");
        assertThat(form.value("author")).isEqualTo("ilse");
        assertThat(form.value("visible")).isEqualTo("crew");
        Visitor.Reply more = form.with("title", "Nine stones")
                .with("text", "All *nine* lie.")
                .with("stage", "weir")
                .with("task.0", "weir.2")
                .press("task");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("task.1", "weir.1")
                .with("visible", "everyone")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The note is kept.");
        assertThat(saved.page().select("h1").text()).isEqualTo("Nine stones");
        assertThat(saved.page().select("aside li").eachText())
                .containsExactly("Stage Weir", "Task Set the sill stones", "Task Dig the footing");
        Visitor.Reply back = ilse.follow(ilse.form(saved, ".flash form").send());
        assertThat(back.text()).doesNotContain("Nine stones");
        assertThat(ilse.get("/notes").page().select("h3").eachText()).doesNotContain("Nine stones");
    }

    @Test
    void every_fault_is_said_at_once_and_what_was_typed_stands() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/notes/new"))
                .with("date", "1926-11-25")
                .with("text", "Half a page.")
                .with("task.0", "weir.99")
                .with("stage", "roof")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write what it is about",
                        "\"roof\" is no stage of this project; choose one of the list",
                        "tasks: \"weir.99\" is no task of this project; choose one of the list",
                        "\"25 November 1926\"" + FAR);
        assertThat(ilse.form(refused).value("text").strip()).isEqualTo("Half a page.");
    }

    @Test
    void show_it_shows_the_page_without_script_and_saves_nothing() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply shown = ilse.form(ilse.get("/notes/new"))
                .with("text", "One of *nine*.\n\n<script>alert(1)</script>")
                .press("show");
        assertThat(shown.status()).isEqualTo(200);
        assertThat(shown.page().select("[data-page-view] em").text()).isEqualTo("nine");
        assertThat(shown.page().select("[data-page-view] script")).isEmpty();
        assertThat(ilse.form(shown).value("text")).contains("One of *nine*.");
    }

    @Test
    void the_page_view_alone_comes_as_a_part_of_a_page() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply part = ilse.form(ilse.get("/notes/new"))
                .with("text", "# Sill\n\nLaid.")
                .press("page");
        assertThat(part.status()).isEqualTo(200);
        assertThat(part.header("content-type")).isEqualTo("text/html;charset=utf-8");
        assertThat(part.body().strip()).isEqualTo("<h2>Sill</h2>\n<p>Laid.</p>");
    }

    @Test
    void two_notes_of_one_day_may_have_one_title_and_it_is_said() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Form form = ilse.form(ilse.get("/notes/new")).with("title", "Frost");
        form.send();
        Visitor.Reply second = ilse.follow(
                ilse.form(ilse.get("/notes/new")).with("title", "frost").send());
        assertThat(second.page().select(".flash p").text())
                .isEqualTo("The note is kept. \"frost\" is the title of another note of that day too; both notes are"
                        + " kept.");
        assertThat(ilse.get("/notes").page().select(".notes-list h3").eachText())
                .contains("Frost", "frost");
    }

    @Test
    void text_from_right_to_left_and_emoji_stay_as_typed() {
        Visitor ilse = SERVER.as("ilse");
        String text = "שלום, **טחנה** 🪵 and 👩🏽‍🔧 work on.";
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/notes/new"))
                .with("title", "טחנת מים 🪵")
                .with("text", text)
                .send());
        assertThat(saved.page().select("article h1").text()).isEqualTo("טחנת מים 🪵");
        assertThat(saved.page().select("article p").last().wholeText()).isEqualTo("שלום, טחנה 🪵 and 👩🏽‍🔧 work on.");
        assertThat(saved.page().select("article").attr("dir")).isEqualTo("auto");
    }

    @Test
    void a_text_that_is_too_long_is_refused_with_its_limit_and_ten_megabytes_are_not_read() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/notes/new"))
                .with("title", "Long")
                .with("text", "x".repeat(200_001))
                .send();
        assertThat(refused.troubles())
                .containsExactly("\"" + "x".repeat(59) + "…\" is too long; write at most 200000 characters");
        Visitor.Reply large = ilse.form(ilse.get("/notes/new"))
                .with("title", "Long")
                .with("text", "x".repeat(10_000_000))
                .send();
        assertThat(large.status()).isEqualTo(413);
        assertThat(large.text())
                .isEqualTo("Too much at once What was sent is too large. Nothing of it was saved. Send at most 1 MB of"
                        + " text.");
    }

    @Test
    void a_reference_in_the_page_view_names_the_task_as_it_is_called_today() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply part = ilse.form(ilse.get("/notes/new"))
                .with("text", "[old words](task:gate.1) [boards](material:mat.1) [x](task:gate.77)")
                .press("page");
        assertThat(part.page().select("p").text()).isEqualTo("Plane the gate boards Oak boards x (no longer there)");
        assertThat(part.page().select("a").eachAttr("href"))
                .containsExactly("/build/tasks/gate.1", "/build/materials/mat.1");
    }

    @Test
    void the_log_of_the_day_is_put_after_what_is_typed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply begun = ilse.form(ilse.get("/notes/new"))
                .with("date", "2026-11-12")
                .with("span", "week")
                .with("money", "yes")
                .with("text", "A dry week.")
                .press("log");
        Visitor.Form form = ilse.form(begun);
        assertThat(form.value("text").strip()).isEqualTo("""
                        A dry week.

                        ## Hours

                        | What | Hours |
                        | --- | ---: |
                        | [Set the sill stones](task:weir.2) | 13½ |

                        ## Spent

                        - Other cost: €86.20""");
        assertThat(form.value("task.0")).isEqualTo("weir.2");
        assertThat(begun.page().select("[data-page-view] td").eachText()).containsExactly("Set the sill stones", "13½");
    }

    @Test
    void a_note_begins_with_the_log_of_a_day_by_its_address() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Form form = ilse.form(ilse.get("/notes/new?day=2026-10-16"));
        assertThat(form.value("date")).isEqualTo("2026-10-16");
        assertThat(form.value("text").strip()).isEqualTo("""
                        ## Hours

                        | What | Hours |
                        | --- | ---: |
                        | [Dig the footing](task:weir.1) | 3½ |

                        ## What landed

                        - [Dig the footing](task:weir.1) is done.""");
        Visitor.Reply none =
                ilse.form(ilse.get("/notes/new")).with("text", "Mine.").press("log");
        assertThat(none.page().select(".flash p").text()).isEqualTo("Nothing is logged for 25 November yet.");
        assertThat(ilse.form(none).value("text").strip()).isEqualTo("Mine.");
    }

    @Test
    void a_draft_is_kept_offered_taken_up_and_gone_once_the_note_is_kept() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply kept = bram.form(bram.get("/notes/new"), ".note-form")
                .with("title", "Half")
                .with("text", "Half a no")
                .with("task.0", "gate.1")
                .press("autosave");
        assertThat(kept.body()).isEqualTo("{\"kept\": true}");
        assertThat(SERVER.as("ilse").get("/notes/new").page().select(".remark-box"))
                .isEmpty();
        Visitor.Reply offered = bram.get("/notes/new");
        assertThat(offered.page().select(".remark-box p").text())
                .isEqualTo("A draft of yours from 25 Nov 2026, 09:00 is kept and not saved.");
        assertThat(bram.form(offered, ".note-form").value("text").strip()).isEmpty();
        Visitor.Form form = bram.form(bram.get("/notes/new?draft=yes"), ".note-form");
        assertThat(form.value("title")).isEqualTo("Half");
        assertThat(form.value("text").strip()).isEqualTo("Half a no");
        assertThat(form.value("task.0")).isEqualTo("gate.1");
        form.with("text", "Half a note, now whole.").send();
        assertThat(bram.get("/notes/new").page().select(".remark-box")).isEmpty();
    }

    @Test
    void a_draft_can_be_thrown_away() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply kept = bram.form(bram.get("/notes/new"), ".note-form")
                .with("text", "No.")
                .press("draft");
        assertThat(kept.page().select(".flash p").text()).isEqualTo("Kept as your draft; no note was changed.");
        bram.form(bram.get("/notes/new"), ".remark-box form").press("forget");
        assertThat(bram.get("/notes/new").page().select(".remark-box")).isEmpty();
    }
}
