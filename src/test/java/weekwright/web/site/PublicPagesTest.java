package weekwright.web.site;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.site.PublicProject;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class PublicPagesTest {
    @Test
    void the_log_is_closed_until_the_crew_opens_it_and_then_read_without_an_account() {
        try (ServerFixture server = ServerFixture.of(PublicProject::fill)) {
            Visitor anybody = server.stranger();
            Visitor.Reply closed = anybody.get("/public/index.html");
            assertThat(closed.status()).isEqualTo(404);
            assertThat(closed.text()).contains("There is no public build log here.");
            PublicProject.switches(server.db(), "open", "yes");
            assertThat(anybody.get("/public").to()).isEqualTo("/public/index.html");
            Visitor.Reply page = anybody.get("/public/index.html");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.page().select("h3").eachText()).containsExactly("Sill stones", "Told already");
            assertThat(page.header("cache-control")).isEqualTo("public, max-age=60");
            assertThat(page.body()).doesNotContain("<script").doesNotContain("csrf");
            String style = page.page().select("link[rel=stylesheet]").attr("href");
            Visitor.Reply css = anybody.get("/public/" + style);
            assertThat(css.header("content-type")).isEqualTo("text/css; charset=utf-8");
            assertThat(css.header("cache-control")).isEqualTo("public, max-age=31536000, immutable");
            assertThat(anybody.get("/public/feed.xml").header("content-type"))
                    .isEqualTo("application/atom+xml; charset=utf-8");
            for (String other : new String[] {
                "/public/notes/n.crew.html",
                "/public/notes/n.film.html",
                "/public/supporters/x/index.html",
                "/public/../build.db"
            }) {
                assertThat(anybody.get(other).status()).as(other).isIn(303, 400, 404);
            }
        }
    }

    @Test
    void a_note_is_public_at_once_when_it_is_saved_for_everyone() {
        try (ServerFixture server = ServerFixture.of(PublicProject::fill)) {
            PublicProject.switches(server.db(), "open", "yes");
            Visitor anybody = server.stranger();
            anybody.get("/public/index.html");
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/notes/new"))
                    .with("title", "Tonight")
                    .with("visible", "everyone")
                    .send();
            assertThat(anybody.get("/public/index.html").page().select("h3").eachText())
                    .containsExactly("Tonight", "Sill stones", "Told already");
        }
    }

    /** RFC 9110, sections 8.8.3, 13.1.2 and 15.4.5: what a reader has already is not sent again. */
    @Test
    void a_page_that_a_reader_has_is_not_sent_again_until_it_is_another() {
        try (ServerFixture server = ServerFixture.of(PublicProject::fill)) {
            PublicProject.switches(server.db(), "open", "yes");
            Visitor anybody = server.stranger();
            for (String path : new String[] {"/public/index.html", "/public/feed.xml", "/public/notes/n.all.html"}) {
                String tag = anybody.get(path).header("etag");
                Visitor.Reply again = anybody.get(path, "If-None-Match", "\"other\", W/" + tag);
                assertThat(again.status()).as(path).isEqualTo(304);
                assertThat(again.body()).isEmpty();
                assertThat(again.header("etag")).isEqualTo(tag);
                assertThat(anybody.get(path, "If-None-Match", "\"other\"").status())
                        .isEqualTo(200);
            }
            String tag = anybody.get("/public/index.html").header("etag");
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/notes/new"))
                    .with("title", "Tonight")
                    .with("visible", "everyone")
                    .send();
            Visitor.Reply other = anybody.get("/public/index.html", "If-None-Match", tag);
            assertThat(other.status()).isEqualTo(200);
            assertThat(other.page().select("h3").eachText()).contains("Tonight");
        }
    }
}
