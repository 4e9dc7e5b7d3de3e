package weekwright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
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

    /** A page of another site whose name was made to point here. */
    private static void underAnotherName(int port) throws Exception {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            OutputStream out = socket.getOutputStream();
            out.write("GET /week HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
            socket.getInputStream().readAllBytes();
        }
    }

    @Test
    @Requirement({"16.3.2", "16.3.3"})
    void what_was_refused_and_what_opens_doors_is_written_down_on_a_line_each() throws Exception {
        Path project = folder.resolve("project");
        CampaignProject.in(project, 1);
        Path log = folder.resolve("server.log");
        int port = ServerProcess.port();
        try (ServerProcess server = ServerProcess.serve("weekwright.Main", project, port, log, Map.of())) {
            Visitor ilse = new Visitor("http://127.0.0.1:" + port);
            ilse.setCookie("who", "ilse");
            Visitor.Form calendars = ilse.form(ilse.get("/crew/calendars"));
            assertThat(ilse.post(
                                    "/crew/calendars",
                                    calendars.body(),
                                    "Content-Type",
                                    "application/x-www-form-urlencoded",
                                    "Origin",
                                    "http://evil.example")
                            .status())
                    .isEqualTo(403);
            assertThat(calendars.press("renew").status()).isEqualTo(303);
            assertThat(ilse.get("/calendars/guessed-secret/week.ics").status()).isEqualTo(404);
            underAnotherName(port);
            assertThat(server.stop()).isEqualTo(143);
        }
        assertThat(Files.readAllLines(log).stream()
                        .map(line -> line.replaceFirst("^\\S+ ", ""))
                        .filter(line -> line.startsWith("INFO"))
                        .toList())
                .containsExactly(
                        "INFO web - POST /crew/calendars refused with 403: no form of ours",
                        "INFO account - a calendar's address was made",
                        "INFO account - a calendar's address that leads nowhere was asked for",
                        "INFO web - a request under a name that is not ours refused with 421");
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
