package weekwright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.account.LogInStore;
import weekwright.base.Id;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** What the server writes down while it serves, read from its standard error. */
class LogLinesTest {
    private static final String RIGHT = "oak pegs and tallow";

    @TempDir
    Path folder;

    private static int tried(Visitor visitor, String name, String passphrase) {
        return visitor.form(visitor.get("/account/log-in"))
                .with("name", name)
                .with("passphrase", passphrase)
                .send()
                .status();
    }

    @Test
    @Requirement({"16.2.1", "16.2.2", "16.2.4", "16.2.5", "16.3.1", "16.4.1"})
    void log_ins_are_written_down_in_utc_on_a_line_each_without_names_passphrases_addresses_and_what_was_typed()
            throws Exception {
        Path project = folder.resolve("project");
        CampaignProject.in(project, 1);
        try (Db db = new Folder(project).open(Clock.systemUTC())) {
            db.write("crew", write -> {
                LogInStore.set(write, new Id("ilse"), ServerFixture.PASSPHRASES.hash(RIGHT));
                return null;
            });
        }
        Path log = folder.resolve("server.log");
        int port = ServerProcess.port();
        try (ServerProcess server = ServerProcess.serve("weekwright.Main", project, port, log, Map.of())) {
            Visitor visitor = new Visitor("http://127.0.0.1:" + port);
            assertThat(tried(visitor, "ilse\r\nFORGED line", "wrong felt hats")).isEqualTo(401);
            assertThat(tried(visitor, "ilse", RIGHT)).isEqualTo(303);
            Visitor.Form form = visitor.form(visitor.get("/notes/new"))
                    .with("title", "Marker word")
                    .with("date", "no day at all");
            assertThat(form.send().status()).isEqualTo(422);
            assertThat(server.stop()).isEqualTo(143);
        }
        List<String> lines = Files.readAllLines(log);
        assertThat(lines)
                .allMatch(line -> line.matches(
                        "\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{3}(Z|[+-]\\d\\d:\\d\\d) (INFO|WARN)"
                                + " [A-Za-z.]+ - .+"));
        assertThat(lines)
                .filteredOn(line -> line.endsWith("account - log-in refused"))
                .hasSize(1);
        assertThat(lines)
                .filteredOn(line -> line.endsWith("account - log-in accepted"))
                .hasSize(1);
        assertThat(String.join("\n", lines))
                .doesNotContainIgnoringCase("ilse", "FORGED", RIGHT, "felt hats", "Marker", "127.0.0.1", "session=");
    }
}
