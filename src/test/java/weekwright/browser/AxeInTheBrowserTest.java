package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.JavascriptExecutor;
import weekwright.notes.NoteStore;
import weekwright.site.SupportersLinkStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/**
 * Every kind of page of the build log, and those of the crew on which it is written, against the rules of WCAG 2.1 A and AA
 * (W3C Recommendation of 5 June 2018) as far as axe-core tries them: by day on a desk and by night on a phone of
 * 390 pixels; nothing may scroll sideways.
 */
class AxeInTheBrowserTest {
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "best-practice");

    @Test
    void the_build_log_keeps_the_rules_of_accessibility() {
        try (ServerFixture server = ServerFixture.sample().drawn();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            server.db().write("ilse", write -> {
                SupportersLinkStore.renew(write);
                return null;
            });
            String token = server.db().read(SupportersLinkStore::find).orElseThrow();
            assertThat(faults(
                            browser,
                            "/public/index.html",
                            "/public/notes/note.44.html",
                            "/public/stages/wheel.html",
                            "/public/years/2026.html",
                            "/public/episodes.html",
                            "/public/supporters/" + token + "/index.html"))
                    .isEmpty();
        }
    }

    @Test
    void the_pages_on_which_notes_are_written_keep_the_rules_of_accessibility() {
        try (ServerFixture server = ServerFixture.sample();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            String note = "/notes/"
                    + server.db().read(NoteStore.TABLE::list).get(0).value().id();
            assertThat(faults(
                            browser,
                            "/notes",
                            "/notes/new",
                            note,
                            note + "/edit",
                            note + "/pictures/new",
                            "/notes/pictures",
                            "/notes/book",
                            "/notes/public",
                            "/notes/files/new"))
                    .isEmpty();
        }
    }

    @Test
    void a_page_that_breaks_a_rule_is_found() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/notes/new");
            ((JavascriptExecutor) browser.driver())
                    .executeScript("document.querySelector('label[for=title]').remove()");
            assertThat(axe(browser, ""))
                    .singleElement()
                    .asString()
                    .startsWith("label, Form elements must have labels: <input ")
                    .contains(" id=\"title\"");
        }
    }

    private static List<String> faults(BrowserFixture browser, String... pages) {
        List<String> faults = new ArrayList<>();
        for (String page : pages) {
            for (boolean night : new boolean[] {false, true}) {
                browser.device(night, night ? 390 : 0);
                browser.open(page);
                String at = page + (night ? " by night on a phone: " : ": ");
                if (number(browser, "performance.getEntriesByType('navigation')[0].responseStatus") != 200) {
                    faults.add(at + "is not there");
                }
                faults.addAll(axe(browser, at));
                int over = number(browser, "document.documentElement.scrollWidth - innerWidth");
                if (over > 0) {
                    faults.add(at + "is " + over + " pixels too wide");
                }
            }
        }
        return faults;
    }

    private static List<String> axe(BrowserFixture browser, String at) {
        return new AxeBuilder()
                .withTags(RULES).analyze(browser.driver()).getViolations().stream()
                        .map(rule -> at + rule.getId() + ", " + rule.getHelp() + ": "
                                + rule.getNodes().get(0).getHtml())
                        .toList();
    }

    private static int number(BrowserFixture browser, String asked) {
        return ((Number) ((JavascriptExecutor) browser.driver()).executeScript("return " + asked)).intValue();
    }
}
