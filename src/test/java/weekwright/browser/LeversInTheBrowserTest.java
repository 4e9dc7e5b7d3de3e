package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import weekwright.forecast.KeptLeversStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/** Levers moved by sliders; {@code web/ahead/AheadLeversPageTest} tries what they do. */
class LeversInTheBrowserTest {
    private static final String NOTHING_PULLED = "Change something and see what the forecast makes of it";

    private static WebElement number(BrowserFixture browser, String name) {
        return browser.driver().findElement(By.id(name));
    }

    private static WebElement slider(BrowserFixture browser, String name) {
        return browser.driver()
                .findElement(By.xpath(
                        "//input[@id='" + name + "']/ancestor::div[contains(@class, 'lever')]/input[@type='range']"));
    }

    /** Read in one go: the answer may be replaced by a better one at any time. */
    private static String answer(BrowserFixture browser, String part) {
        return (String)
                browser.script("return document.querySelector('[data-answer] " + part + "').textContent.trim()");
    }

    private static void untilAnswered(BrowserFixture browser, String address) {
        browser.until(d -> !d.findElements(By.cssSelector("[data-answer][data-address='" + address + "']"))
                .isEmpty());
    }

    private static void press(WebElement field, Keys key, int times) {
        field.sendKeys(key.toString().repeat(times));
    }

    @Test
    void a_slider_moved_by_keys_takes_its_number_and_the_answer_along_without_a_reload() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/ahead/levers");
            assertThat(answer(browser, "h1")).isEqualTo(NOTHING_PULLED);
            browser.script("window.stayed = true");
            WebElement slider = slider(browser, "supporters");
            assertThat(slider.getDomAttribute("aria-label")).isEqualTo("Supporters, more or fewer");
            press(slider, Keys.ARROW_LEFT, 12);
            assertThat(number(browser, "supporters").getDomProperty("value")).isEqualTo("-12");
            untilAnswered(browser, "supporters=-12");
            assertThat(answer(browser, ".lead")).isEqualTo("With 12 in a hundred fewer supporters.");
            assertThat(answer(browser, "h1")).isNotEqualTo(NOTHING_PULLED);
            assertThat(browser.driver().getCurrentUrl()).endsWith("/ahead/levers?supporters=-12");

            // the number moves the slider as the slider moves the number, and levers add up
            number(browser, "prices").sendKeys("30");
            assertThat(slider(browser, "prices").getDomProperty("value")).isEqualTo("30");
            untilAnswered(browser, "supporters=-12&prices=30");
            assertThat(answer(browser, ".lead"))
                    .isEqualTo("With 12 in a hundred fewer supporters and prices 30 in a hundred higher.");

            // back where it stands, a lever is not pulled any more
            press(slider, Keys.ARROW_RIGHT, 12);
            assertThat(number(browser, "supporters").getDomProperty("value")).isEmpty();
            untilAnswered(browser, "prices=30");
            assertThat(browser.script("return window.stayed")).isEqualTo(true);

            // the first answer is followed by the whole one
            browser.until(d -> !d.findElements(By.cssSelector("[data-answer][data-settling=false]"))
                    .isEmpty());
            assertThat(answer(browser, ".caption"))
                    .contains("10,000 futures of each")
                    .doesNotContain("More are being drawn");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void what_stands_on_the_sliders_is_kept_under_a_name_and_tried_again() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/ahead/levers");
            press(slider(browser, "films"), Keys.ARROW_LEFT, 10);
            untilAnswered(browser, "films=90");
            browser.driver().findElement(By.id("name")).sendKeys("Shorter films");
            browser.send(By.xpath("//button[text()='Keep them']"));
            assertThat(browser.driver().findElement(By.cssSelector(".flash")).getText())
                    .contains("“Shorter films” is kept.");
            assertThat(server.db().read(KeptLeversStore.TABLE::values))
                    .filteredOn(one -> one.name().equals("Shorter films"))
                    .singleElement()
                    .satisfies(one -> assertThat(one.pulled().list()).containsExactly("films=90"));
            browser.open("/ahead/levers");
            browser.driver().findElement(By.linkText("Shorter films")).click();
            untilAnswered(browser, "films=90");
            assertThat(number(browser, "films").getDomProperty("value")).isEqualTo("90");
            assertThat(slider(browser, "films").getDomProperty("value")).isEqualTo("90");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void where_no_script_runs_the_numbers_and_the_button_do_the_same() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.withoutScript();
            browser.open("/ahead/levers");
            assertThat(browser.driver().findElements(By.cssSelector("input[type=range]")))
                    .isEmpty();
            number(browser, "supporters").sendKeys("-12");
            browser.driver().findElement(By.xpath("//button[text()='Try it']")).click();
            untilAnswered(browser, "supporters=-12");
            assertThat(browser.driver()
                            .findElement(By.cssSelector("[data-answer] .lead"))
                            .getText())
                    .isEqualTo("With 12 in a hundred fewer supporters.");
            assertThat(number(browser, "supporters").getDomProperty("value")).isEqualTo("-12");
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
