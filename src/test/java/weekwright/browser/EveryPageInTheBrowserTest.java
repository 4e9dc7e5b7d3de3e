package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.EveryPage;
import weekwright.testkit.ServerFixture;

/**
 * One page of every kind, in one browser, against the rules of WCAG 2.2 A and AA (W3C Recommendation of 5 October 2023) as far as
 * axe-core tries them: all of them by day on a desk; by night on a phone of 390 pixels those that colour and width can change.
 * Nothing may scroll sideways at 320 pixels, which is also a desk of 640 pixels at 200 % (WCAG 2.2, 1.4.10 and 1.4.4).
 */
class EveryPageInTheBrowserTest {
    private static final String ALL =
            "{runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], resultTypes:"
                    + " ['violations'], preload: false, iframes: false, elementRef: false}";
    private static final String COLOUR_AND_WIDTH = "{runOnly: {type: 'rule', values: ['color-contrast', 'target-size',"
            + " 'link-in-text-block', 'scrollable-region-focusable', 'link-name', 'button-name']}, resultTypes:"
            + " ['violations'], preload: false, iframes: false, elementRef: false}";

    private static ServerFixture server;
    private static BrowserFixture browser;
    private static Map<String, String> pages;

    @BeforeAll
    static void start() {
        server = ServerFixture.small().drawn();
        browser = BrowserFixture.at(server, "ilse");
        browser.withAxe();
        pages = EveryPage.of(server, "ilse");
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
        Map<String, List<String>> faults = new TreeMap<>();
        pages.forEach((kind, page) -> {
            List<String> here = new ArrayList<>();
            browser.device(false, 0);
            browser.open(page);
            here.addAll(browser.axe(ALL));
            browser.device(true, 390);
            browser.axe(COLOUR_AND_WIDTH).forEach(fault -> here.add("by night on a phone: " + fault));
            browser.device(true, 320);
            long over = (Long) browser.script("return document.documentElement.scrollWidth - innerWidth");
            if (over > 0) {
                here.add("at 320 pixels it is " + over + " too wide: " + browser.script(WIDEST));
            }
            if (!here.isEmpty()) {
                faults.put(kind, here);
            }
        });
        assertThat(new LinkedHashMap<>(faults)).isEmpty();
    }

    private static final String WIDEST = "const wide = [...document.querySelectorAll('main *')].filter((one) =>"
            + " one.getBoundingClientRect().right > innerWidth + 1);"
            + " return wide.length ? wide[wide.length - 1].outerHTML.slice(0, 160) : ''";
}
