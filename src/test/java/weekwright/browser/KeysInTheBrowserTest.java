package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/** The keys of every sheet, and what a thumb presses on a phone. */
class KeysInTheBrowserTest {
    private static void press(BrowserFixture browser, CharSequence... keys) {
        browser.driver().switchTo().activeElement().sendKeys(keys);
    }

    private static boolean open(BrowserFixture browser) {
        return (Boolean) browser.script("return document.querySelector('[data-keys]').open");
    }

    @Test
    void a_question_mark_shows_the_keys_escape_closes_them_and_the_focus_is_where_it_was() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/week/shots");
            press(browser, Keys.TAB);
            assertThat(browser.driver().switchTo().activeElement().getText()).isEqualTo("Skip to the sheet");
            press(browser, "?");
            assertThat(open(browser)).isTrue();
            assertThat(browser.driver()
                            .findElement(By.cssSelector("[data-keys] a"))
                            .getDomAttribute("href"))
                    .isEqualTo("/help?of=week");
            for (int i = 0; i < 6; i++) {
                press(browser, Keys.TAB);
                assertThat((Boolean) browser.script("return document.activeElement === document.body"
                                + " || document.querySelector('[data-keys]').contains(document.activeElement)"))
                        .isTrue();
            }
            browser.driver().findElement(By.cssSelector("[data-keys-off]")).sendKeys(Keys.ESCAPE);
            assertThat(open(browser)).isFalse();
            assertThat(browser.driver().switchTo().activeElement().getText()).isEqualTo("Skip to the sheet");
            browser.leaving(() -> press(browser, "3"));
            assertThat(browser.driver().getCurrentUrl()).endsWith("/log");
            press(browser, "f");
            WebElement hours = browser.driver().findElement(By.id("hours"));
            hours.sendKeys("3");
            press(browser, "?");
            assertThat(open(browser)).isFalse();
            assertThat(hours.getDomProperty("value")).isEqualTo("3?");
            hours.clear();
            browser.open("/week");
            press(browser, "?");
            browser.driver().findElement(By.cssSelector("[data-keys-off]")).click();
            press(browser, Keys.ESCAPE);
            browser.open("/week");
            press(browser, "?");
            assertThat(open(browser)).isFalse();
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void on_a_phone_nothing_to_press_is_lower_than_48_pixels_and_figures_bring_the_keyboard_of_figures() {
        // not a name of the machine itself, so that no service worker is set up beside
        try (ServerFixture server = ServerFixture.smallNamed("mill.example");
                BrowserFixture browser = BrowserFixture.at(server, "mill.example", "ilse")) {
            List<String> low = new ArrayList<>();
            Set<String> letters = new TreeSet<>();
            for (String page : List.of(
                    "/log",
                    "/week",
                    "/week/shots",
                    "/week/sheet",
                    "/week/lines/new",
                    "/week/shots/new",
                    "/notes/new")) {
                browser.device(false, 390);
                browser.open(page);
                low.addAll(((List<?>)
                                browser.script("return [...document.querySelectorAll('main :is(button, summary, select,"
                                        + " .button, input:not([type=hidden], [type=radio], [type=checkbox],"
                                        + " [type=range]), .pressed label, .choices label, .tick"
                                        + " label)')].filter((one) => one.checkVisibility() &&"
                                        + " one.getBoundingClientRect().height < 47.5).map((one) =>"
                                        + " one.outerHTML.slice(0, 90) + ' ' +"
                                        + " one.getBoundingClientRect().height)"))
                        .stream().map(one -> page + ": " + one).toList());
                ((List<?>) browser.script("return [...document.querySelectorAll('main input[type=text]')].filter("
                                + "(one) => !/^(decimal|numeric)$/.test(one.inputMode)).map((one) =>"
                                + " one.name)"))
                        .forEach(name -> letters.add(name.toString()));
            }
            assertThat(low).isEmpty();
            // words, and times by the clock, whose colon a keyboard of figures has not
            assertThat(letters).containsExactly("found", "from", "note", "payee", "title", "to", "what");
        }
    }
}
