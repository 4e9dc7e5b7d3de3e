package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.site.PublicProject;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class NotesPublicPageTest {
    private static final ServerFixture SERVER = ServerFixture.of(PublicProject::fill);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void it_says_what_is_public_and_what_is_switched_off() {
        Visitor.Reply page = SERVER.as("ilse").get("/notes/public");
        assertThat(page.page().select(".lead").text())
                .isEqualTo("This program serves it to nobody until you open it. Two notes are for everyone today.");
        assertThat(page.text())
                .contains("Switched off: how far each stage is, when the stage in hand is done, the episodes that are"
                        + " out, thanks to those who gave, your drawing, why its date moved, the next purchase, where"
                        + " pledges went.");
        assertThat(SERVER.as("noor").get("/notes/public").status()).isEqualTo(403);
    }

    @Test
    void the_supporters_link_is_made_renewed_and_ended() {
        try (ServerFixture server = ServerFixture.of(PublicProject::fill)) {
            renewed(server);
        }
    }

    private static void renewed(ServerFixture server) {
        PublicProject.switches(server.db(), "open", "yes");
        Visitor ilse = server.as("ilse");
        Visitor.Reply made = ilse.follow(ilse.form(ilse.get("/notes/public")).send());
        String first = made.page().select("section[aria-labelledby=link] a").attr("href");
        Visitor anybody = server.stranger();
        assertThat(anybody.get(first).page().select("h3").eachText()).contains("SUPPORTERS-ONLY");
        assertThat(anybody.get(first).header("cache-control")).isEqualTo("private, no-store");
        Visitor.Reply renewed = ilse.follow(ilse.form(made).send());
        assertThat(renewed.page().select(".flash p").text())
                .isEqualTo("The supporters' address is new; one before it has ended.");
        assertThat(anybody.get(first).status()).isEqualTo(404);
        String second = renewed.page().select("section[aria-labelledby=link] a").attr("href");
        assertThat(anybody.get(second).status()).isEqualTo(200);
        Visitor.Reply ended = ilse.follow(ilse.form(renewed).press("end"));
        assertThat(ended.text()).contains("There is no address, so notes for supporters stand nowhere yet.");
        assertThat(anybody.get(second).status()).isEqualTo(404);
    }
}
