package weekwright.web.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class NotePageTest {
    private static final ServerFixture SERVER = ServerFixture.of(SmallProject::fillWithNotes);

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_note_shows_its_markdown_its_picture_and_that_day_s_hours() {
        Visitor.Reply page = SERVER.as("ilse").get("/notes/n1");
        assertThat(page.page().select("article h1").text()).isEqualTo("Sill stones");
        assertThat(page.page().select("article em").text()).isEqualTo("nine");
        assertThat(page.page().select("article script")).isEmpty();
        assertThat(page.page().select("article").text()).contains("<script>alert(1)</script>");
        assertThat(page.page().select("article img").attr("src")).isEqualTo("/photos/sill.png");
        assertThat(page.page().select("article img").attr("alt")).isEqualTo("Two dressed stones in a row");
        assertThat(page.page().select("aside table tr").eachText())
                .containsExactly("Ilse Set the sill stones 7", "Hours 7");
    }

    @Test
    @Requirement({"5.3.1", "5.3.2", "5.4.1"})
    void pictures_come_from_the_project_s_folder_alone() throws Exception {
        Path photos = SERVER.app().folder().photos();
        Files.createDirectories(photos);
        Files.write(photos.resolve("sill.png"), CameraPicture.bytes(CameraPicture.quarters(9, 9, 1, 2, 3, 4), "png"));
        Files.write(photos.resolve("words.png"), "no picture at all".getBytes(StandardCharsets.UTF_8));
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply picture = ilse.get("/photos/sill.png");
        assertThat(picture.status()).isEqualTo(200);
        assertThat(picture.header("content-type")).startsWith("image/png");
        for (String other : new String[] {
            "/photos/..%2Fbuild.db", "/photos/build.db", "/photos/none.png", "/photos/.png", "/photos/words.png"
        }) {
            assertThat(ilse.get(other).status()).as(other).isIn(400, 404);
        }
        assertThat(SERVER.as("noor").get("/photos/sill.png").status()).isEqualTo(403);
    }

    @Test
    void a_note_that_is_not_there_is_said() {
        Visitor.Reply page = SERVER.as("ilse").get("/notes/n9");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.text()).contains("There is no note n9.");
    }
}
