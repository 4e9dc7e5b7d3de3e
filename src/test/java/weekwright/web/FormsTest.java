package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.App;
import weekwright.base.Id;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.db.History;
import weekwright.db.Stored;
import weekwright.render.Templates;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;
import weekwright.web.kit.Access;
import weekwright.web.trial.TrialStage;

class FormsTest {
    private static final String PATH = "/trial/stages/weir";

    @TempDir
    Path folder;

    private App app;
    private Server server;

    @BeforeEach
    void start() throws Exception {
        app = new App(folder, ServerFixture.CLOCK, Templates.packed(), false);
        SmallProject.fill(app.create());
        Routes all = new Routes(app);
        Routes trial = new Routes(
                List.of(new Routes.Line("/trial/stages/{id}", Access.HELPER, true, new TrialStage())), all.others());
        server = Server.start(app, "127.0.0.1", 0, trial);
    }

    @AfterEach
    void stop() {
        server.close();
        app.close();
    }

    private Visitor as(String who) {
        Visitor visitor = new Visitor("http://127.0.0.1:" + server.port());
        visitor.setCookie("who", who);
        return visitor;
    }

    private Stored<Stage> weir() {
        return app.project()
                .orElseThrow()
                .read(r -> StageStore.TABLE.find(r, new Id("weir")))
                .orElseThrow();
    }

    @Test
    void a_form_that_is_accepted_goes_on_by_303_and_says_once_what_was_done() {
        Visitor ilse = as("ilse");
        Visitor.Reply saved =
                ilse.form(ilse.get(PATH), "#chief").with("name", "Weir sill").send();
        assertThat(saved.status()).isEqualTo(303);
        assertThat(saved.to()).isEqualTo(PATH);
        // what a script draws anew or keeps for later is not what somebody sees next
        assertThat(ilse.get(PATH, "Accept", "text/html").page().select(".flash p"))
                .isEmpty();
        assertThat(ilse.follow(saved).page().select(".flash p").text()).isEqualTo("Stage saved.");
        assertThat(ilse.get(PATH).page().select(".flash p").text()).isEmpty();
        assertThat(weir().value().name()).isEqualTo("Weir sill");
        assertThat(app.project()
                        .orElseThrow()
                        .read(r -> History.newest(r, 1))
                        .get(0)
                        .who())
                .isEqualTo("ilse");
    }

    @Test
    void typed_hours_are_read_in_all_their_ways() {
        Visitor ilse = as("ilse");
        for (String typed : List.of("3.5", "3,5", "3:30", "3½", "3 ½")) {
            Visitor.Reply saved = ilse.form(ilse.get(PATH), "#chief")
                    .with("rough_likely", typed)
                    .send();
            assertThat(saved.status()).as(typed).isEqualTo(303);
            assertThat(weir().value().roughLikely().orElseThrow().minutes()).isEqualTo(210);
        }
    }

    @Test
    @Requirement({"2.2.2", "2.1.1"})
    void a_refused_form_is_shown_again_with_what_was_typed_and_every_sentence_at_its_field() {
        Visitor ilse = as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get(PATH), "#chief")
                .with("name", "")
                .with("rough_likely", "3x")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("#chief .trouble .head").text())
                .isEqualTo("Not saved yet. Nothing you typed is lost.");
        assertThat(refused.page().select("#rough_likely").val()).isEqualTo("3x");
        assertThat(refused.page().select("#rough_likely-error").text())
                .isEqualTo("\"3x\" is not hours; write 3.5 or 3:30");
        assertThat(refused.page().select("#hours .trouble")).isEmpty();
        assertThat(weir().version()).isEqualTo(1);
    }

    @Test
    void only_the_form_that_was_refused_shows_its_fault() {
        Visitor ilse = as("ilse");
        Visitor.Reply refused =
                ilse.form(ilse.get(PATH), "#hours").with("hours", "-1").press("hours");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("#hours-error")).hasSize(1);
        assertThat(refused.page().select("#chief .trouble")).isEmpty();
        assertThat(refused.page().select("#name").val()).isEqualTo("Weir");
    }

    @Test
    @Requirement({"8.2.3", "15.3.1", "15.3.3", "15.3.7"})
    void a_field_twice_and_a_field_that_nobody_asked_for_are_faults() {
        Visitor ilse = as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get(PATH), "#chief")
                .with("name", "One", "Two")
                .with("pay", "1")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "was sent twice; send it once",
                        "\"pay\" is not a field of this form; load the page again and fill it in");
        assertThat(weir().version()).isEqualTo(1);
    }

    @Test
    void the_same_form_sent_again_gets_the_first_answer_and_is_done_once_rule_117() throws Exception {
        Visitor ilse = as("ilse");
        Visitor.Form form = ilse.form(ilse.get(PATH), "#chief").with("name", "Weir again");
        ExecutorService threads = Executors.newFixedThreadPool(8);
        List<Callable<Visitor.Reply>> sends = Collections.nCopies(24, form::send);
        for (Future<Visitor.Reply> reply : threads.invokeAll(sends)) {
            assertThat(reply.get().status()).isEqualTo(303);
            assertThat(reply.get().to()).isEqualTo(PATH);
        }
        threads.shutdown();
        assertThat(weir().version()).isEqualTo(2);
    }

    @Test
    void the_same_answer_key_with_other_contents_is_refused() {
        Visitor ilse = as("ilse");
        Visitor.Form form = ilse.form(ilse.get(PATH), "#chief").with("name", "First");
        assertThat(form.send().status()).isEqualTo(303);
        Visitor.Reply refused = form.with("name", "Second").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("This form was sent before with other contents, and that was kept. Look whether it is"
                        + " already there; send this again if it is still wanted.");
        assertThat(refused.page().select("#name").val()).isEqualTo("Second");
        assertThat(weir().value().name()).isEqualTo("First");
    }

    @Test
    void two_who_changed_the_same_row_see_both_versions_and_mine_can_be_saved_over_theirs() {
        Visitor ilse = as("ilse");
        Visitor bram = as("bram");
        Visitor.Form hers = ilse.form(ilse.get(PATH), "#chief");
        Visitor.Form his = bram.form(bram.get(PATH), "#chief");
        hers.with("name", "Weir of Ilse").with("rough_likely", "3.5").send();
        Visitor.Reply conflict =
                his.with("name", "Weir of Bram").with("rough_likely", "3:30").send();
        assertThat(conflict.status()).isEqualTo(409);
        assertThat(conflict.page().select("main tbody tr").eachText())
                .containsExactly("Name Weir Weir of Bram Weir of Ilse");
        assertThat(conflict.page().select("a.button").eachAttr("href")).containsExactly(PATH);
        Visitor.Reply saved = bram.form(conflict).send();
        assertThat(saved.status()).isEqualTo(303);
        assertThat(weir().value().name()).isEqualTo("Weir of Bram");
        assertThat(weir().version()).isEqualTo(3);
    }

    @Test
    void an_edit_of_what_was_deleted_meanwhile_keeps_the_typed_text_on_a_410_page() {
        Visitor ilse = as("ilse");
        app.project()
                .orElseThrow()
                .write(
                        "test",
                        w -> StageStore.TABLE.insert(w, SmallProject.of(Stage.class, "id", "shed", "name", "Shed")));
        Visitor.Form form = ilse.form(ilse.get("/trial/stages/shed"), "#chief").with("name", "Shed roof");
        Visitor.Reply deleted =
                ilse.form(ilse.get("/trial/stages/shed"), "#chief").press("delete");
        assertThat(ilse.follow(deleted).page().select(".flash p").text()).isEqualTo("Stage deleted.");
        Visitor.Reply lost = form.send();
        assertThat(lost.status()).isEqualTo(410);
        assertThat(lost.text())
                .isEqualTo("This is gone Somebody removed it since this page was loaded, so nothing was saved. What you"
                        + " typed stands below. Name Shed roof");
        assertThat(ilse.get("/trial/stages/shed").text()).isEqualTo("Nothing stands here There is no stage shed.");
    }

    @Test
    void posts_without_key_from_elsewhere_or_of_another_kind_are_turned_away() {
        Visitor ilse = as("ilse");
        Visitor.Form form = ilse.form(ilse.get(PATH), "#chief");
        String body = form.body();
        String type = "application/x-www-form-urlencoded";
        Visitor bram = as("bram");
        bram.get(PATH);
        assertThat(bram.post(PATH, body, "Content-Type", type, "Origin", bram.origin())
                        .status())
                .isEqualTo(403);
        assertThat(ilse.post(PATH, body, "Content-Type", type, "Origin", "http://evil.example")
                        .status())
                .isEqualTo(403);
        assertThat(ilse.post(PATH, body, "Content-Type", type, "Origin", "null").status())
                .isEqualTo(403);
        assertThat(ilse.post(PATH, body, "Content-Type", type).status()).isEqualTo(403);
        assertThat(ilse.post(PATH, body, "Content-Type", type, "Sec-Fetch-Site", "cross-site", "Origin", ilse.origin())
                        .status())
                .isEqualTo(403);
        assertThat(ilse.post(PATH, body, "Content-Type", "text/plain", "Origin", ilse.origin())
                        .status())
                .isEqualTo(415);
        assertThat(form.without("answer").send().status()).isEqualTo(422);
        assertThat(weir().version()).isEqualTo(1);
        assertThat(ilse.post(PATH, body, "Content-Type", type, "Referer", "http://evil.example/")
                        .status())
                .isEqualTo(403);
        assertThat(ilse.post(PATH, body, "Content-Type", type, "Referer", ilse.origin() + PATH)
                        .status())
                .isEqualTo(303);
    }

    @Test
    void who_sends_all_of_a_body_that_is_too_large_before_reading_gets_the_answer() throws IOException {
        // twelve megabytes are more than the buffers of both ends hold: a server that hangs up would reset the sender
        byte[] body = "a".repeat(12_000_000).getBytes(StandardCharsets.US_ASCII);
        String head = "POST " + PATH + " HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\nOrigin: http://127.0.0.1:"
                + server.port() + "\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                + body.length + "\r\nConnection: close\r\n\r\n";
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().write(body);
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 413 ").contains("Send at most 1 MB of text.");
        }
    }

    @Test
    @Requirement({"5.2.1"})
    void a_body_over_one_megabyte_is_too_large() {
        Visitor ilse = as("ilse");
        Visitor.Reply reply = ilse.form(ilse.get(PATH), "#chief")
                .with("name", "a".repeat(1_000_001))
                .send();
        assertThat(reply.status()).isEqualTo(413);
        assertThat(reply.text())
                .isEqualTo("Too much at once What was sent is too large. Nothing of it was saved. Send"
                        + " at most 1 MB of text.");
    }

    @Test
    @Requirement({"16.5.1", "16.5.3"})
    void a_failure_of_the_program_tells_a_reference_and_nothing_else() {
        Visitor ilse = as("ilse");
        Visitor.Reply failed = ilse.form(ilse.get(PATH), "#chief").press("fail");
        assertThat(failed.status()).isEqualTo(500);
        assertThat(failed.text())
                .matches("Something in the program failed Nothing of this entry was saved\\. What was saved before is"
                        + " safe\\. Go back and try once more; if it happens again, tell the reference below to"
                        + " whoever looks after the program\\. Reference: [A-Za-z0-9_-]{8}");
        assertThat(failed.body()).doesNotContain("secret", "IllegalState", "weekwright.");
    }

    @Test
    @Requirement({"16.3.4"})
    void a_failure_of_the_program_is_written_down_under_its_reference() {
        PrintStream before = System.err;
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        System.setErr(new PrintStream(written, true, StandardCharsets.UTF_8));
        String reference;
        try {
            Visitor ilse = as("ilse");
            reference = ilse.form(ilse.get(PATH), "#chief").press("fail").text().replaceFirst(".*Reference: ", "");
        } finally {
            System.setErr(before);
        }
        assertThat(written.toString(StandardCharsets.UTF_8).lines())
                .anyMatch(line -> line.endsWith("ERROR web - POST /trial/stages/{id} failed, reference " + reference));
    }

    @Test
    void what_only_the_crew_may_is_refused_to_a_helper() {
        Visitor noor = as("noor");
        Visitor.Reply refused = noor.form(noor.get(PATH), "#chief").press("delete");
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.text()).isEqualTo("Not for you here Only the crew deletes a stage.");
    }

    @Test
    void who_is_not_yet_known_is_asked_first() {
        Visitor stranger = new Visitor("http://127.0.0.1:" + server.port());
        Visitor.Reply asked = stranger.get(PATH);
        assertThat(asked.status()).isEqualTo(303);
        assertThat(asked.to()).isEqualTo("/account?to=" + PATH);
    }
}
