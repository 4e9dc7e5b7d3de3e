package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;
import weekwright.web.kit.Guard;

/**
 * The header set and the answers before any page. What each header is for: OWASP ASVS 5.0.0, 3.4.3 to 3.4.6, 3.2.1, 4.1.1;
 * the names of the host: no ASVS number, common practice against DNS rebinding.
 */
class GuardTest {
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.small();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    /** Sends bytes as they are and reads until the server closes. */
    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            socket.getOutputStream().flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String get(String host) throws IOException {
        return raw("GET /account HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    }

    private static void assertHeaders(String answer) {
        for (Map.Entry<String, String> header : Guard.HEADERS.entrySet()) {
            assertThat(answer).containsOnlyOnce(header.getKey() + ": " + header.getValue() + "\r\n");
        }
        assertThat(answer).doesNotContain("Server:", "X-Powered-By:", "Access-Control-");
        assertThat(answer).containsIgnoringCase("Content-Type: text/").containsIgnoringCase("charset=utf-8");
        assertThat(answer).containsIgnoringCase("Cache-Control: no-store");
    }

    @Test
    @Requirement({"3.4.3", "3.4.6"})
    void the_content_policy_lets_nothing_in_from_elsewhere() {
        assertThat(Guard.HEADERS.get("Content-Security-Policy"))
                .isEqualTo("default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:; connect-src"
                        + " 'self'; font-src 'self'; media-src blob:; manifest-src 'self'; worker-src 'self';"
                        + " form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
    }

    @Test
    @Requirement({"3.2.1", "3.4.4", "3.4.5", "14.3.2"})
    void every_answer_of_a_page_carries_the_header_set() throws IOException {
        assertThat(get("localhost")).startsWith("HTTP/1.1 200 OK");
        assertHeaders(get("localhost"));
    }

    @Test
    void only_this_machines_own_names_are_answered() throws IOException {
        for (String host : List.of("localhost", "127.0.0.1", "[::1]", "localhost:99", "LOCALHOST.", "[::1]:8347")) {
            assertThat(get(host)).as(host).startsWith("HTTP/1.1 200 OK");
        }
        for (String host : List.of(
                "evil.example", "127.0.0.1.evil.example", "127.1", "0.0.0.0", "[::ffff:127.0.0.1]", "localhost.evil")) {
            assertThat(get(host)).as(host).startsWith("HTTP/1.1 421 Misdirected Request");
        }
        assertHeaders(get("evil.example"));
        assertThat(get("evil.example"))
                .endsWith("\r\n\r\nThis server answers to localhost, 127.0.0.1 and [::1] alone.\n");
    }

    @Test
    void a_request_without_a_host_is_refused() throws IOException {
        assertThat(raw("GET /account HTTP/1.0\r\n\r\n")).startsWith("HTTP/1.1 421 ");
        assertThat(raw("GET /account HTTP/1.1\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 400 ");
    }

    @Test
    @Requirement({"4.2.1", "3.4.3"})
    void the_web_servers_own_refusals_carry_the_header_set_too() throws IOException {
        String twoHosts = raw("GET / HTTP/1.1\r\nHost: localhost\r\nHost: x\r\n\r\n");
        assertThat(twoHosts).startsWith("HTTP/1.1 400 ").endsWith("This request cannot be read (400).\n");
        assertHeaders(twoHosts);
        String smuggled = raw("POST /account HTTP/1.1\r\nHost: localhost\r\nContent-Length: 3\r\n"
                + "Transfer-Encoding: chunked\r\n\r\n");
        assertThat(smuggled).startsWith("HTTP/1.1 400 ");
        assertHeaders(smuggled);
        String tooLong = raw("GET /" + "a".repeat(9_000) + " HTTP/1.0\r\nHost: localhost\r\n\r\n");
        assertThat(tooLong).startsWith("HTTP/1.1 414 ").endsWith("This address is too long.\n");
        assertHeaders(tooLong);
        String largeHead = raw("GET / HTTP/1.1\r\nHost: localhost\r\nX-Long: " + "a".repeat(70_000) + "\r\n\r\n");
        assertThat(largeHead).startsWith("HTTP/1.1 431 ").endsWith("The head of this request is too large.\n");
        assertHeaders(largeHead);
    }

    @Test
    @Requirement({"3.4.2", "13.4.4"})
    void an_address_that_nobody_has_and_a_method_that_nobody_takes_are_told_in_words() throws IOException {
        Visitor visitor = server.stranger();
        Visitor.Reply unknown = visitor.get("/nowhere");
        assertThat(unknown.status()).isEqualTo(404);
        assertThat(unknown.text())
                .isEqualTo("Nothing stands here No sheet has this address. The sheets are named above.");
        for (String method : List.of("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE")) {
            Visitor.Reply refused = visitor.method(method, "/account", "Origin", "http://evil.example");
            assertThat(refused.status()).as(method).isEqualTo(405);
            assertThat(refused.header("Allow")).isEqualTo("GET, POST");
            assertThat(refused.header("Access-Control-Allow-Origin")).isEmpty();
        }
        assertHeaders(raw("PUT /account HTTP/1.0\r\nHost: localhost\r\n\r\n"));
        assertHeaders(raw("GET /nowhere HTTP/1.0\r\nHost: localhost\r\n\r\n"));
    }

    @Test
    @Requirement({"13.4.1", "13.4.2", "13.4.3", "13.4.5", "13.4.6", "5.3.2"})
    void nothing_of_the_folder_and_of_the_program_lies_open() {
        Visitor visitor = server.stranger();
        for (String path : List.of(
                "/build.db",
                "/.git/HEAD",
                "/templates/",
                "/static/",
                "/static/..%2fmigrations%2f0001_start.sql",
                "/static/%2e%2e/migrations/0001_start.sql",
                "/static/fonts",
                "/css/../base.css",
                "/css/nowhere.css")) {
            assertThat(visitor.get(path).status()).as(path).isIn(400, 404);
        }
    }

    @Test
    @Requirement({"4.1.1"})
    void styles_scripts_and_fonts_have_their_type() {
        Visitor visitor = server.stranger();
        assertThat(visitor.get("/css/base.css").header("Content-Type")).isEqualTo("text/css; charset=utf-8");
        assertThat(visitor.get("/static/sheet.js").header("Content-Type")).isEqualTo("text/javascript; charset=utf-8");
        assertThat(visitor.get("/static/fonts/besley-latin-wght-normal.woff2").header("Content-Type"))
                .startsWith("font/woff2");
        assertThat(visitor.cookie("w")).isEmpty();
    }

    @Test
    void pages_are_packed_for_browsers_that_can_unpack() {
        Visitor.Reply packed = server.stranger().get("/css/base.css", "Accept-Encoding", "gzip");
        assertThat(packed.header("Content-Encoding")).isEqualTo("gzip");
        assertThat(packed.header("Vary")).isEqualTo("Accept-Encoding");
    }

    @Test
    @Requirement({"3.3.2", "3.3.4"})
    void cookies_are_kept_from_scripts_and_other_sites() {
        Visitor visitor = server.stranger();
        assertThat(visitor.get("/account").header("Set-Cookie"))
                .matches("w=[A-Za-z0-9_-]{43}; Path=/; Expires=[^;]+; Max-Age=31536000; HttpOnly; SameSite=Lax");
    }
}
