package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import weekwright.account.WeekLinkStore;
import weekwright.base.Id;
import weekwright.build.WeekLineStore;
import weekwright.site.PublicProject;
import weekwright.site.SupportersLinkStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.EveryPage;
import weekwright.testkit.FilledProject;
import weekwright.testkit.ServerFixture;

/**
 * One page of every kind, in one browser, against the rules of WCAG 2.2 A and AA (W3C Recommendation of 5 October 2023) as far as
 * axe-core tries them: all of them by day on a desk, on the same page by night on a phone those that colour and width can change.
 * Nothing may scroll sideways at 320 pixels, which is also a desk of 640 pixels at 200 % (WCAG 2.2, 1.4.10 and 1.4.4). Nothing
 * moves while a page loads, its scripts and pictures held back until it is painted, and scripts and styles weigh little. The name
 * is not one of the machine itself, so that no service worker is set up beside.
 */
class EveryPageInTheBrowserTest {
    /** Tried by the tests of doors and of what no link leads to. */
    private static final List<String> NOT_REACHED = List.of(
            "/account/log-in",
            "/account/passphrase",
            "/account/confirm",
            "/start",
            "/start/new",
            "/start/files",
            "/come/{code}",
            "/funds/files/{key}",
            "/funds/files/{key}/rows");

    private static final int NARROWEST = 320;

    private static final By MAIN = By.cssSelector("main form[method=post] button.main");

    /** Compressed bytes of script and style that a page may load. */
    private static final long HEAVIEST = 60 * 1024;

    private static ServerFixture server;
    private static BrowserFixture browser;
    private static boolean onPhone;

    @BeforeAll
    static void start() throws Exception {
        server = ServerFixture.named("mill.example", FilledProject::fill).drawn();
        Files.write(
                Files.createDirectories(server.app().folder().photos()).resolve("stones.jpg"),
                CameraPicture.jpeg(640, 480, "2026:11:20 09:00:00"));
        browser = BrowserFixture.at(server, "mill.example", "ilse");
        browser.withRules();
        browser.withSight();
        browser.withLateThings();
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
        server.close();
    }

    @Test
    void every_page_keeps_the_rules_of_accessibility_and_none_scrolls_sideways() {
        browser.moveTo(server, "mill.example", "ilse");
        Map<String, List<String>> faults = new TreeMap<>();
        List<String> more = List.of(
                "/week/lines/"
                        + server.db().read(WeekLineStore.TABLE::list).get(0).row() + "/edit",
                "/build/tasks/weir.2/split",
                "/build/tasks/weir.2/day-sheet",
                "/build/stages/weir/materials",
                "/build/materials/mat.9/cancel");
        List<String> notReached =
                EveryPage.walk(server, more, EveryPageInTheBrowserTest::open, kind -> put(faults, kind, all()));
        assertThat(faults).isEmpty();
        assertThat(notReached).containsExactlyInAnyOrderElementsOf(NOT_REACHED);
    }

    @Test
    void the_build_log_keeps_the_rules_of_accessibility() {
        try (ServerFixture log = ServerFixture.of(PublicProject::fill)) {
            PublicProject.switches(log.db(), "open", "yes", "stages", "yes");
            log.db().write("ilse", write -> {
                SupportersLinkStore.renew(write);
                return null;
            });
            String token = log.db().read(SupportersLinkStore::find).orElseThrow();
            browser.moveTo(log, "ilse");
            keepTheRules(
                    "/public/index.html",
                    "/public/notes/n.all.html",
                    "/public/stages/weir.html",
                    "/public/years/2026.html",
                    "/public/supporters/" + token + "/index.html");
        }
    }

    @Test
    void the_pages_before_a_project_and_at_its_door_keep_the_rules_of_accessibility() {
        try (ServerFixture none = ServerFixture.empty();
                ServerFixture locked = ServerFixture.small()) {
            browser.moveTo(none, "ilse");
            keepTheRules("/start", "/start/files", "/start/new");
            Map<String, List<String>> faults = new TreeMap<>();
            put(faults, "a new project, refused", refused());
            locked.giveLogIn("ilse", "seven brass cogs turn slowly");
            browser.moveTo(locked, "ilse");
            keepTheRules("/account/log-in");
            browser.driver().findElement(By.id("name")).sendKeys("ilse");
            browser.driver().findElement(By.id("passphrase")).sendKeys("seven brass cogs turn slowly");
            browser.send(By.cssSelector("main form button"));
            keepTheRules("/account/confirm", "/account/passphrase");
            put(faults, "a new passphrase, refused", refused());
            assertThat(faults).isEmpty();
        }
    }

    private static void keepTheRules(String... pages) {
        Map<String, List<String>> faults = new TreeMap<>();
        for (String page : pages) {
            assertThat(open(page).itself()).as(page).isTrue();
            put(faults, page, all());
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void what_no_link_leads_to_keeps_the_rules_of_accessibility() {
        browser.moveTo(server, "mill.example", "ilse");
        String code = server.db().write("ilse", write -> WeekLinkStore.renew(write, new Id("noor")));
        keepTheRules("/come/" + code);
    }

    /** On a server of its own: the file stays, and the walk over all pages would come to it or not, as the tests happen to stand. */
    @Test
    void a_file_of_the_bank_that_is_being_read_keeps_the_rules_of_accessibility() {
        try (ServerFixture books = ServerFixture.small()) {
            browser.moveTo(books, "ilse");
            browser.open("/funds/files/new");
            browser.driver()
                    .findElement(By.id("text"))
                    .sendKeys("Date;Name;Amount\n2026-11-03;Nails;-5,00\n2019-11-04;Oak;-6,00\nTotal;;\n");
            browser.send(MAIN);
            Map<String, List<String>> faults = new TreeMap<>();
            put(faults, "how the file is read", all());
            browser.driver().findElement(By.id("name")).clear();
            put(faults, "how it is read, refused", refused());
            browser.driver().findElement(By.id("name")).sendKeys("The bank");
            browser.send(MAIN);
            assertThat(browser.driver().getCurrentUrl()).endsWith("/rows");
            put(faults, "its rows", all());
            put(faults, "its rows, refused", refused());
            assertThat(faults).isEmpty();
        }
    }

    /** A page of each group whose field holds what cannot be read. */
    @Test
    void a_refused_form_says_so_and_keeps_the_rules_of_accessibility() {
        browser.moveTo(server, "mill.example", "ilse");
        Map<String, List<String>> faults = new TreeMap<>();
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("/log", "hours");
        fields.put("/week/lines/new?date=2026-11-26", "hours");
        fields.put("/build/tasks/weir.2/edit", "likely");
        fields.put("/episodes/ep.12/edit", "minutes");
        fields.put("/funds/costs/new", "amount");
        fields.put("/notes/new", "title");
        fields.put("/crew/members/new", "mon");
        fields.forEach((page, field) -> {
            browser.open(page);
            browser.sight("settled");
            browser.driver().findElement(By.id(field)).clear();
            browser.driver().findElement(By.id(field)).sendKeys(field.equals("title") ? " " : "many");
            put(faults, page, refused());
        });
        // else it is offered on the next page of its kind, as what was typed and not saved
        browser.open("/help");
        browser.script("localStorage.clear()");
        assertThat(faults).isEmpty();
    }

    /** What is wrong with the page that answers the form, which the browser was kept from checking by itself. */
    private static List<String> refused() {
        // what comes late is there before anything is pressed, so that no button moves away from under the press
        browser.sight("settled");
        browser.script("document.querySelectorAll('form').forEach((form) => { form.noValidate = true; })");
        browser.send(MAIN);
        List<String> here = new ArrayList<>(browser.rules("announced"));
        here.addAll(all());
        return here;
    }

    /** That a page was tried before must hide nothing: each of these stands on a page whose like was found without fault. */
    @Test
    void a_page_that_breaks_a_rule_is_found() {
        browser.moveTo(server, "mill.example", "ilse");
        keepTheRules("/notes/new");
        turn(false);
        open("/notes/new");
        browser.script("document.querySelector('label[for=title]').remove()");
        assertThat(faults())
                .singleElement()
                .asString()
                .startsWith("label, Form elements must have labels: 1 times, <input ")
                .contains(" id=\"title\"");

        turn(false);
        open("/week");
        browser.script(
                "const sheet = new CSSStyleSheet(); sheet.replaceSync('@media (prefers-color-scheme: dark) { main h1 {"
                        + " color: #0f2334 } } @media (max-width: 330px) { main h1 { min-width: 400px } }');"
                        + " document.adoptedStyleSheets = [sheet];");
        assertThat(faults())
                .satisfiesExactly(
                        fault -> assertThat(fault)
                                .startsWith("by night on a phone: color-contrast, Elements must meet minimum color"
                                        + " contrast ratio thresholds: 1 times, <h1"),
                        fault -> assertThat(fault).startsWith("at 320 pixels it is "));
    }

    @Test
    void what_moves_while_a_page_loads_is_found() {
        browser.moveTo(server, "mill.example", "ilse");
        turn(false);
        open("/week/words");
        assertThat(loaded()).isEmpty();
        browser.script("document.querySelector('main h1').append(document.createElement('br'), 'late')");
        assertThat(loaded()).singleElement().asString().contains(" moved: ").contains(" to ");
    }

    private static EveryPage.Shown open(String page) {
        browser.open(page);
        return new EveryPage.Shown(
                browser.script("return performance.getEntriesByType('navigation')[0].responseStatus")
                                .equals(200L)
                        && browser.script("return location.pathname").equals(page.replaceFirst("\\?.*", "")),
                browser.rules("links"));
    }

    private static void put(Map<String, List<String>> faults, String page, List<String> here) {
        if (!here.isEmpty()) {
            faults.put(page, here);
        }
    }

    private static List<String> all() {
        List<String> here = loaded();
        here.addAll(faults());
        return here;
    }

    /** Both ways on the page as it was loaded; every other page is loaded on the phone, so that each turns once. */
    private static List<String> faults() {
        List<String> faults = new ArrayList<>(tried(onPhone));
        turn(!onPhone);
        faults.addAll(tried(onPhone));
        return faults;
    }

    private static List<String> loaded() {
        List<String> faults = new ArrayList<>();
        ((List<?>) browser.sight("moved")).forEach(moved -> faults.add(moved.toString()));
        long sent = (Long) browser.sight("paint");
        if (sent == 0 || sent > HEAVIEST) {
            faults.add(sent + " bytes of script and style");
        }
        return faults;
    }

    private static List<String> tried(boolean phone) {
        if (!phone) {
            return browser.rules("all");
        }
        List<String> faults = new ArrayList<>();
        browser.rules("phone").forEach(fault -> faults.add("by night on a phone: " + fault));
        faults.addAll(browser.rules("reflow"));
        return faults;
    }

    private static void turn(boolean phone) {
        browser.device(phone, phone ? NARROWEST : 0);
        onPhone = phone;
    }
}
