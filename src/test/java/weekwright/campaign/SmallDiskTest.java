package weekwright.campaign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.App;
import weekwright.db.FolderRefused;
import weekwright.render.Templates;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;
import weekwright.web.Server;

/** A real disk of 12 MB, filled while the program serves from it, and set read-only. Needs the right to mount one. */
class SmallDiskTest {
    private static final String HOW =
            "a small disk needs Linux and the right to mount: run the tests as root, in a container with CAP_SYS_ADMIN";
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

    @TempDir
    Path temp;

    private Path disk;
    private App app;
    private Server server;

    @BeforeEach
    void mount() throws Exception {
        disk = Files.createDirectory(temp.resolve("disk"));
        assumeTrue(Commands.did("mount", "-t", "tmpfs", "-o", "size=12m", "tmpfs", disk.toString()), HOW);
    }

    @AfterEach
    void unmount() throws Exception {
        if (server != null) {
            server.close();
            app.close();
        }
        Commands.did("umount", disk.toString());
    }

    private Visitor serve() throws Exception {
        app = new App(disk.resolve("project"), ServerFixture.CLOCK, Templates.packed(), false);
        SmallProject.fill(app.create());
        app.forecasts().orElseThrow().await();
        server = Server.start(app, "127.0.0.1", 0);
        Visitor ilse = new Visitor("http://127.0.0.1:" + server.port());
        ilse.setCookie("who", "ilse");
        return ilse;
    }

    private static Visitor.Form note(Visitor ilse) {
        return ilse.form(ilse.get("/notes/new"))
                .with("title", "Stones")
                .with("date", "2026-11-24")
                .with("text", "The third stone lies in lime. ".repeat(6_000));
    }

    /** Takes all the room there is. */
    private Path fill() throws IOException {
        Path filler = disk.resolve("filler");
        try (OutputStream out = Files.newOutputStream(filler)) {
            byte[] block = new byte[4_096];
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            return filler;
        }
    }

    @Test
    void a_full_disk_is_told_reading_goes_on_and_with_room_again_the_same_server_saves() throws Exception {
        Visitor ilse = serve();
        assertThat(ilse.get("/week").page().select("aside.sample-notice").text())
                .isEqualTo("The disk has less than 200 MB left. Entries are still taken, files are not. Free some room"
                        + " soon.");
        Visitor.Reply receipt = ilse.form(ilse.get("/funds/costs/new"))
                .with("amount", "12.50")
                .with("kind", "other-cost")
                .attach("receipt", "slip.jpg", JPEG)
                .send();
        assertThat(receipt.status()).isEqualTo(507);
        assertThat(receipt.troubles())
                .containsExactly("The disk has less than 200 MB left, so no more files are taken. Nothing of this entry"
                        + " was saved. Free some room, or send it without a file.");
        Path filler = fill();
        Visitor.Form form = note(ilse);
        long version = app.project().orElseThrow().version();
        Visitor.Reply refused = form.send();
        assertThat(refused.status()).isEqualTo(507);
        assertThat(refused.troubles())
                .containsExactly("The disk is full. Nothing of this entry was saved. Free at least 200 MB and send it"
                        + " again.");
        assertThat(ilse.form(refused).value("title")).isEqualTo("Stones");
        assertThat(app.project().orElseThrow().version()).isEqualTo(version);
        Visitor.Reply backup = ilse.form(ilse.get("/crew/backups")).press("make");
        assertThat(backup.status()).isIn(422, 507);
        for (String path : List.of("/week", "/log", "/build", "/funds", "/crew/backups")) {
            assertThat(ilse.get(path).status()).as(path).isEqualTo(200);
        }
        Files.delete(filler);
        assertThat(form.send().status()).isEqualTo(303);
        assertThat(app.project().orElseThrow().version()).isEqualTo(version + 1);
        Path place = disk.resolve("project/backups");
        if (Files.exists(place)) {
            try (var left = Files.list(place)) {
                assertThat(left).isEmpty();
            }
        }
    }

    @Test
    void a_folder_that_cannot_be_written_is_refused_at_the_start() throws Exception {
        serve();
        server.close();
        app.close();
        server = null;
        assumeTrue(Commands.did("mount", "-o", "remount,ro", disk.toString()), HOW);
        Path project = disk.resolve("project");
        assertThatThrownBy(() -> new App(project, ServerFixture.CLOCK, Templates.packed(), false))
                .isInstanceOf(FolderRefused.class)
                .hasMessage(project + " cannot be written. Give this program the right to write there, or name another"
                        + " folder.");
    }
}
