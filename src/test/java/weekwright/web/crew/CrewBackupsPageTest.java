package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.App;
import weekwright.db.Folder;
import weekwright.render.Templates;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;
import weekwright.web.Server;

class CrewBackupsPageTest {
    @TempDir
    private Path temp;

    @Test
    void one_is_made_at_a_press_and_listed() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply empty = ilse.get("/crew/backups");
            assertThat(empty.page().select("h1").text()).isEqualTo("No backup yet");
            assertThat(empty.page().select(".trouble")).isEmpty();
            Visitor.Reply made = ilse.follow(ilse.form(empty).press("make"));
            assertThat(made.page().select(".flash p").text())
                    .isEqualTo("Backed up and checked: 2026-11-25-080000.zip.");
            assertThat(made.page().select("h1").text()).startsWith("Last good backup: ");
            assertThat(made.page().select("tbody td:nth-child(2)").eachText()).containsExactly("2026-11-25-080000.zip");
            Path file = server.app().folder().path().resolve("backups/2026-11-25-080000.zip");
            assertThat(file).exists();
        }
    }

    @Test
    void a_second_one_in_the_same_second_is_refused_with_words() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/crew/backups")).press("make");
            Visitor.Reply again = ilse.form(ilse.get("/crew/backups")).press("make");
            assertThat(again.status()).isEqualTo(422);
            Path file = server.app().folder().path().resolve("backups/2026-11-25-080000.zip");
            assertThat(again.troubles())
                    .containsExactly(file + " is there already, and a backup overwrites nothing. Name a file that is"
                            + " not there yet; then make it again");
        }
    }

    @Test
    void here_and_on_ahead_the_crew_is_warned_when_the_last_one_is_older_than_two_days() {
        SettableClock clock = new SettableClock(ServerFixture.CLOCK);
        try (ServerFixture server = ServerFixture.under(clock, SmallProject::fill)) {
            Visitor ilse = server.as("ilse");
            assertThat(ilse.get("/ahead").page().select("a[href=/crew/backups]"))
                    .isEmpty();
            clock.step(Duration.ofDays(3));
            assertThat(ilse.get("/ahead")
                            .page()
                            .select("p:has(a[href=/crew/backups])")
                            .eachText())
                    .containsExactly("There is no backup of this project yet. Backups");
            ilse.form(ilse.get("/crew/backups")).press("make");
            assertThat(ilse.get("/ahead").page().select("a[href=/crew/backups]"))
                    .isEmpty();
            clock.step(Duration.ofDays(3));
            assertThat(ilse.get("/crew/backups").page().select(".trouble").text())
                    .isEqualTo("The last good backup is 3 days old. Make one now. If that fails, look after the disk.");
        }
    }

    @Test
    void a_place_that_takes_none_is_told_and_a_helper_makes_none() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Path place = server.app().folder().path().resolve("backups");
            Files.writeString(place, "in the way");
            Visitor.Reply refused = ilse.form(ilse.get("/crew/backups")).press("make");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly("The backup " + place.resolve("2026-11-25-080000.zip") + " cannot be written: "
                            + place + ". Nothing was left there. Look after the disk and the right to write there;"
                            + " then make it again");
            assertThat(server.as("noor").get("/crew/backups").status()).isEqualTo(403);
        }
    }

    @Test
    void they_are_made_and_listed_in_a_folder_of_choice() throws Exception {
        Path project = temp.resolve("mill");
        Path other = temp.resolve("other disk/mill");
        try (App app = new App(new Folder(project, other), ServerFixture.CLOCK, Templates.packed(), false)) {
            SmallProject.fill(app.create());
            try (Server server = Server.start(app, "127.0.0.1", 0)) {
                Visitor ilse = new Visitor("http://127.0.0.1:" + server.port());
                ilse.setCookie("who", "ilse");
                Visitor.Reply made =
                        ilse.follow(ilse.form(ilse.get("/crew/backups")).press("make"));
                assertThat(made.page().select("table tbody tr td").get(0).text())
                        .isEqualTo("2026-11-25-080000.zip");
                assertThat(made.page().select("p.calendars-foot").text())
                        .startsWith(
                                "They lie in " + other + "; keep that place as safe as the project. To get one back");
            }
        }
        assertThat(other.resolve("2026-11-25-080000.zip")).isNotEmptyFile();
        assertThat(project.resolve("backups")).doesNotExist();
    }
}
