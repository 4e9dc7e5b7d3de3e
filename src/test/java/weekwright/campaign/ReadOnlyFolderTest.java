package weekwright.campaign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/**
 * A folder that takes no writing any more while it is served, as a disk does that the system set read-only after a fault. Rights
 * hold nobody up who runs as root, and files that are open for writing keep a disk from being mounted anew; so all that lies there
 * is made immutable (Linux, {@code chattr +i}), which refuses each write, also to files that are open.
 */
class ReadOnlyFolderTest {
    private static final String HOW =
            "an immutable folder needs Linux, a disk such as ext4 for temporary files, and root (CAP_LINUX_IMMUTABLE)";

    private ServerFixture server;
    private Path project;

    @BeforeEach
    void start() {
        server = ServerFixture.small().drawn();
        project = server.app().folder().path();
    }

    @AfterEach
    void stop() throws Exception {
        attributes("-i");
        server.close();
    }

    private boolean attributes(String change) throws InterruptedException {
        return Commands.did("chattr", "-R", change, project.toString());
    }

    private static Visitor.Form hours(Visitor ilse) {
        return ilse.form(ilse.get("/log"), "form[data-log]").with("hours", "2");
    }

    @Test
    void what_cannot_be_written_is_told_reading_goes_on_and_the_same_server_saves_when_it_can_again() throws Exception {
        Visitor ilse = server.as("ilse");
        Visitor.Form entry = hours(ilse);
        Visitor.Form receipt = ilse.form(ilse.get("/funds/costs/new"))
                .with("amount", "12.50")
                .with("kind", "other-cost")
                .attach(
                        "receipt",
                        "slip.jpg",
                        CameraPicture.bytes(new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB), "jpg"));
        Visitor.Form backup = ilse.form(ilse.get("/crew/backups"));
        long version = server.db().version();
        assumeTrue(attributes("+i"), HOW);
        Visitor.Reply refused = entry.send();
        assertThat(refused.status()).isEqualTo(507);
        assertThat(refused.troubles())
                .containsExactly("The disk did not take the entry. Nothing of it was saved. Look after the disk, then"
                        + " send it again.");
        assertThat(ilse.form(refused, "form[data-log]").value("hours")).isEqualTo("2");
        Visitor.Reply slip = receipt.send();
        assertThat(slip.status()).isEqualTo(507);
        assertThat(slip.troubles())
                .containsExactly("The project folder cannot be written. Nothing of this entry was saved. Give this"
                        + " program the right to write there and send it again.");
        assertThat(backup.press("make").status()).isIn(422, 507);
        for (String path : List.of("/week", "/log", "/build", "/funds", "/ahead", "/crew/backups")) {
            assertThat(ilse.get(path).status()).as(path).isEqualTo(200);
        }
        assertThat(server.db().version()).isEqualTo(version);
        assertThat(attributes("-i")).isTrue();
        assertThat(entry.send().status()).isEqualTo(303);
        assertThat(receipt.send().status()).isEqualTo(303);
        assertThat(backup.press("make").status()).isEqualTo(303);
        assertThat(server.db().version()).isEqualTo(version + 2);
    }
}
