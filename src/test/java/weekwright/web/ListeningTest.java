package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;

/** How the server is reached: names, a proxy before it, no log-in. No source: common practice against DNS rebinding. */
class ListeningTest {
    private ServerFixture project;

    @BeforeEach
    void start() {
        project = ServerFixture.small();
    }

    @AfterEach
    void stop() {
        project.close();
    }

    private String get(Listening listening, String path, String... headers) throws Exception {
        try (Server server = Server.start(project.app(), listening)) {
            return raw(server.port(), path, headers);
        }
    }

    private static String raw(int port, String path, String... headers) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(20_000);
            String request =
                    "GET " + path + " HTTP/1.1\r\n" + String.join("\r\n", headers) + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void a_name_that_was_given_is_answered_and_no_other() throws Exception {
        project.giveLogIn("ilse", "oak pegs and tallow");
        Listening named = new Listening("127.0.0.1", 0, List.of("Mill.example"), false);
        assertThat(get(named, "/account/log-in", "Host: mill.example")).startsWith("HTTP/1.1 200 ");
        assertThat(get(named, "/account/log-in", "Host: other.example"))
                .startsWith("HTTP/1.1 421 ")
                .endsWith("\r\n\r\nThis server does not answer to that name. Open it by its address, or start it with"
                        + " --name and that name.\n");
    }

    @Test
    @Requirement({"3.3.1", "3.3.3", "4.1.3", "15.3.4"})
    void what_a_proxy_says_counts_only_where_one_was_announced() throws Exception {
        project.giveLogIn("ilse", "oak pegs and tallow");
        String[] said = {"Host: 127.0.0.1", "X-Forwarded-Proto: https", "X-Forwarded-Host: mill.example"};
        Listening alone = new Listening("127.0.0.1", 0, List.of("mill.example"), false);
        assertThat(get(alone, "/account/log-in", said))
                .containsPattern("Set-Cookie: w=[^;]{43}; Path=/;")
                .doesNotContain("Secure");
        Listening behind = new Listening("127.0.0.1", 0, List.of("mill.example"), true);
        assertThat(get(behind, "/account/log-in", said))
                .containsPattern("Set-Cookie: __Host-w=[^;]{43}; Path=/; Expires=[^;]+; Max-Age=31536000; Secure;"
                        + " HttpOnly; SameSite=Lax");
        assertThat(get(behind, "/account/log-in", "Host: 127.0.0.1", "X-Forwarded-Host: evil.example"))
                .startsWith("HTTP/1.1 421 ");
    }

    @Test
    void other_devices_get_no_sheet_while_nobody_has_a_log_in() throws Exception {
        Listening behind = new Listening("127.0.0.1", 0, List.of(), true);
        for (String path : List.of("/week", "/start", "/ahead")) {
            assertThat(get(behind, path, "Host: localhost"))
                    .as(path)
                    .startsWith("HTTP/1.1 403 ")
                    .contains("This server can be reached from other devices, and nobody has a log-in.");
        }
        assertThat(new Listening("0.0.0.0", 0, List.of(), false).beyond()).isTrue();
        assertThat(new Listening("127.0.0.1", 0, List.of(), false).beyond()).isFalse();
    }
}
