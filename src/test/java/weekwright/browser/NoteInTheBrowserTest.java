package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/** Writing a note with script: the page view follows, the draft is kept and offered, a mark is put round what is chosen. */
class NoteInTheBrowserTest {
    private static ServerFixture server;
    private static BrowserFixture browser;

    @BeforeAll
    static void open() {
        server = ServerFixture.small();
        browser = BrowserFixture.at(server, "ilse");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        server.close();
    }

    @Test
    void what_is_typed_shows_as_a_page_is_kept_as_a_draft_and_is_offered_on_return() {
        browser.open("/notes/new");
        WebElement text = browser.driver().findElement(By.id("text"));
        text.sendKeys("Two of nine. ");
        text.sendKeys(Keys.chord(Keys.CONTROL, "b"));
        text.sendKeys("lie");
        browser.until(driver -> driver.findElements(By.cssSelector("[data-page-view] strong")).stream()
                .anyMatch(strong -> strong.getText().equals("lie")));
        assertThat(text.getAttribute("value")).isEqualTo("Two of nine. **lie**");
        browser.until(driver -> driver.findElement(By.cssSelector("[data-draft-said]"))
                .getText()
                .equals("Draft kept."));
        browser.open("/notes/new");
        browser.until(
                driver -> driver.findElements(By.cssSelector(".remark-box")).size() == 2);
        browser.driver()
                .findElement(By.xpath("//button[text()='Put it into the text']"))
                .click();
        assertThat(browser.driver().findElement(By.id("text")).getAttribute("value"))
                .isEqualTo("Two of nine. **lie**");
        browser.driver().findElement(By.id("title")).sendKeys("Stones");
        browser.driver().findElement(By.id("text")).sendKeys(Keys.chord(Keys.CONTROL, "s"));
        browser.until(
                driver -> driver.findElements(By.cssSelector("article h1")).size() == 1);
        browser.open("/notes/new");
        assertThat(browser.driver().findElements(By.cssSelector(".remark-box"))).isEmpty();
        assertThat(browser.complaints()).isEmpty();
    }
}
