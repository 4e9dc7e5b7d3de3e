package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.site.PublicProject;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/**
 * Who may use which address: OWASP ASVS 5.0.0, 8.1.1, 8.2.1, 8.3.1. Every address is asked as everybody; what stands in neither
 * list here must be the crew's alone.
 */
class RoutesRulesTest {
    /** Open to everybody: the door, and the beginning of a project. */
    private static final Set<String> PUBLIC = Set.of(
            "GET /",
            "GET /account",
            "POST /account",
            "GET /account/log-in",
            "POST /account/log-in",
            "GET /account/start",
            "POST /account/start",
            "GET /calendars/{secret}/{feed}",
            "GET /come/{code}",
            "POST /come/{code}",
            "GET /css/{name}",
            "GET /public",
            "GET /public/<file>",
            "GET /reach",
            "GET /start",
            "POST /start",
            "GET /start/files",
            "POST /start/files",
            "GET /start/new",
            "POST /start/new",
            "GET /static/<file>");

    /** A helper's besides: the week, own hours and shots, the build to look at, the help with these, taking back what was their own just now. */
    private static final Set<String> HELPER = Set.of(
            "GET /account/confirm",
            "POST /account/confirm",
            "GET /account/passphrase",
            "POST /account/passphrase",
            "POST /crew/history",
            "GET /build",
            "GET /build/stages/{id}",
            "GET /build/tasks/{id}",
            "GET /help",
            "GET /help/words",
            "GET /log",
            "POST /log",
            "GET /log/again",
            "POST /log/again",
            "GET /log/week",
            "GET /log/entries/{row}/edit",
            "POST /log/entries/{row}/edit",
            "GET /newer",
            "GET /public",
            "GET /public/<file>",
            "GET /search",
            "GET /week",
            "GET /week/shots",
            "GET /week/shots/{row}",
            "POST /week/shots",
            "POST /week/shots/{row}",
            "GET /week/state");

    private static ServerFixture open;
    private static ServerFixture locked;

    @BeforeAll
    static void start() {
        open = ServerFixture.small();
        locked = ServerFixture.small();
        locked.giveLogIn("ilse", "oak pegs and tallow");
        locked.giveLogIn("noor", "three wet felt hats");
    }

    @AfterAll
    static void stop() {
        open.close();
        locked.close();
    }

    private static Set<String> addresses() {
        Routes routes = new Routes(open.app());
        Set<String> all = new TreeSet<>();
        routes.pages().forEach(line -> {
            all.add("GET " + line.path());
            if (line.posts()) {
                all.add("POST " + line.path());
            }
        });
        routes.others().forEach(other -> all.add("GET " + other.path()));
        return all;
    }

    /** Asks with an id that nothing has: who may not learns nothing of that. */
    private static Visitor.Reply ask(Visitor visitor, String csrf, String address) {
        String path = address.replaceFirst("^[A-Z]+ ", "")
                .replace("{row}", "987654")
                .replaceAll("[{<][a-z]+[}>]", "none.such");
        return address.startsWith("GET")
                ? visitor.get(path)
                : visitor.post(
                        path,
                        "answer=0123456789abcdefghij&csrf=" + csrf,
                        "Content-Type",
                        "application/x-www-form-urlencoded",
                        "Origin",
                        visitor.origin());
    }

    private static String csrf(Visitor visitor) {
        return visitor.form(visitor.get("/account/start")).value("csrf");
    }

    /** The addresses that this visitor is let through to; sent to the door and refused are not. */
    private static List<String> letThrough(Visitor visitor) {
        String csrf = csrf(visitor);
        List<String> through = new ArrayList<>();
        for (String address : addresses()) {
            Visitor.Reply reply = ask(visitor, csrf, address);
            boolean toTheDoor = reply.status() == 303 && reply.to().matches("/account(/log-in)?([?].*)?");
            boolean refused = reply.status() == 403 || reply.status() == 401;
            assertThat(reply.status()).as(address).isLessThan(500);
            boolean ofTheDoor = address.contains(" /account");
            if (ofTheDoor && !address.matches(".*/(passphrase|confirm)") || !toTheDoor && !refused) {
                through.add(address);
            }
        }
        return through;
    }

    private static List<String> sorted(Set<String> some, Set<String> more) {
        Set<String> all = new TreeSet<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    @Test
    @Requirement({"8.1.1", "8.1.2"})
    void rule_118_every_address_says_who_may_use_it() {
        Routes routes = new Routes(open.app());
        assertThat(routes.pages()).isNotEmpty().allMatch(line -> line.access() != null && line.submitting() != null);
        assertThat(routes.others()).isNotEmpty().allMatch(other -> other.access() != null);
        assertThat(addresses()).containsAll(PUBLIC).containsAll(HELPER);
    }

    @Test
    @Requirement({"8.2.1", "8.3.1"})
    void rule_118_a_stranger_is_let_through_to_the_door_alone() {
        List<String> door = sorted(PUBLIC, Set.of());
        assertThat(letThrough(open.stranger())).isEqualTo(door);
        assertThat(letThrough(locked.stranger())).isEqualTo(door);
        assertThat(letThrough(locked.as("ilse"))).isEqualTo(door);
    }

    @Test
    @Requirement({"8.2.1", "8.3.1"})
    void rule_118_a_helper_is_let_through_to_week_log_and_build_alone() {
        List<String> helpers = sorted(PUBLIC, HELPER);
        assertThat(letThrough(open.as("noor"))).isEqualTo(helpers);
        assertThat(letThrough(locked.loggedIn("noor", "three wet felt hats"))).isEqualTo(helpers);
    }

    @Test
    void rule_118_the_supporters_link_opens_what_is_public_and_nothing_more() {
        try (ServerFixture server = ServerFixture.of(PublicProject::fill)) {
            PublicProject.switches(server.db(), "open", "yes");
            Visitor ilse = server.as("ilse");
            String link = ilse.follow(ilse.form(ilse.get("/notes/public")).send())
                    .page()
                    .select("section[aria-labelledby=link] a")
                    .attr("href");
            Visitor supporter = server.stranger();
            assertThat(supporter.get(link).status()).isEqualTo(200);
            assertThat(letThrough(supporter)).isEqualTo(sorted(PUBLIC, Set.of()));
        }
    }

    /** A question is no change: all that can be asked is asked, and the project stands as it stood. */
    @Test
    @Requirement({"3.5.3"})
    void asking_for_every_address_changes_nothing() {
        Visitor ilse = open.as("ilse");
        long version = open.db().version();
        for (String address : addresses()) {
            if (address.startsWith("GET ")) {
                ask(ilse, "", address);
            }
        }
        assertThat(open.db().version()).isEqualTo(version);
    }

    @Test
    void rule_118_the_crew_is_let_through_everywhere() {
        List<String> all = List.copyOf(addresses());
        assertThat(letThrough(open.as("ilse"))).isEqualTo(all);
        assertThat(letThrough(locked.loggedIn("ilse", "oak pegs and tallow")))
                .containsAll(all.stream()
                        .filter(address -> !address.contains(" /account"))
                        .toList());
    }

    @Test
    @Requirement({"3.5.1", "3.5.2"})
    void every_post_without_its_key_from_elsewhere_or_of_another_kind_is_refused() {
        Visitor ilse = locked.loggedIn("ilse", "oak pegs and tallow");
        String csrf = csrf(ilse);
        String others = csrf(locked.stranger());
        String form = "application/x-www-form-urlencoded";
        for (String address : addresses()) {
            if (!address.startsWith("POST ")) {
                continue;
            }
            String path = address.substring(5).replace("{row}", "987654").replaceAll("[{<][a-z]+[}>]", "none.such");
            String body = "answer=0123456789abcdefghij&csrf=";
            assertThat(ilse.post(path, "answer=0123456789abcdefghij", "Content-Type", form, "Origin", ilse.origin())
                            .status())
                    .as(address)
                    .isEqualTo(403);
            assertThat(ilse.post(path, body + others, "Content-Type", form, "Origin", ilse.origin())
                            .status())
                    .isEqualTo(403);
            assertThat(ilse.post(path, body + csrf, "Content-Type", form, "Origin", "http://evil.example")
                            .status())
                    .isEqualTo(403);
            assertThat(ilse.post(path, body + csrf, "Content-Type", form, "Origin", "null")
                            .status())
                    .isEqualTo(403);
            assertThat(ilse.post(path, body + csrf, "Content-Type", form, "Sec-Fetch-Site", "cross-site")
                            .status())
                    .isEqualTo(403);
            assertThat(ilse.post(path, body + csrf, "Content-Type", "text/plain", "Origin", ilse.origin())
                            .status())
                    .isEqualTo(415);
        }
    }

    @Test
    void a_helper_sees_the_build_without_money_and_without_what_only_the_crew_may_do() {
        Visitor ilse = open.as("ilse");
        Visitor noor = open.as("noor");
        List<String> pages = new ArrayList<>(List.of("/build", "/week", "/log"));
        for (String link : noor.get("/build").page().select("main a[href]").eachAttr("href")) {
            pages.add(link);
            pages.addAll(noor.get(link).page().select("main a[href^=/build]").eachAttr("href"));
        }
        assertThat(ilse.get("/build").text()).contains("Spent", "\u20ac");
        assertThat(pages).anyMatch(path -> path.startsWith("/build/tasks/"));
        for (String path : new TreeSet<>(pages)) {
            Visitor.Reply page = noor.get(path);
            assertThat(page.status()).as(path).isEqualTo(200);
            assertThat(page.text()).as(path).doesNotContain("\u20ac", "EUR", "Spent", "money");
            if (path.startsWith("/build")) {
                assertThat(page.page().select("main form:not([action=/log])"))
                        .as(path)
                        .isEmpty();
            }
            assertThat(page.page().select("nav.sheets li").eachText()).containsExactly("Week", "Log", "Build");
        }
    }

    @Test
    void the_version_of_the_project_is_the_one_that_pages_carry_and_rises_with_a_change() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor noor = server.as("noor");
            String carried = noor.get("/week").page().select("main").attr("data-version");
            assertThat(noor.get("/newer").body()).isEqualTo("{\"version\": " + carried + "}");
            assertThat(noor.get("/newer").header("content-type")).startsWith("application/json");
            noor.form(noor.get("/log"), "form[data-log]").with("hours", "1").send();
            assertThat(noor.get("/newer").body()).isEqualTo("{\"version\": " + (Long.parseLong(carried) + 1) + "}");
            assertThat(server.stranger().get("/newer").status()).isEqualTo(303);
        }
    }
}
