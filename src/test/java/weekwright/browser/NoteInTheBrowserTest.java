package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.PhotoStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

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

    @Test
    void pictures_that_are_dropped_and_pasted_join_those_chosen_and_are_kept() throws Exception {
        server.db().write("ilse", write -> {
            NoteStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            Note.class, "id", "n.drop", "title", "Stones", "date", "2026-11-09", "visible", "crew"));
            return null;
        });
        browser.open("/notes/n.drop/pictures/new");
        send("new DragEvent('drop', {dataTransfer: data, bubbles: true, cancelable: true})", "first.png");
        send("new ClipboardEvent('paste', {clipboardData: data, bubbles: true, cancelable: true})", "second.png");
        assertThat(browser.driver().findElement(By.cssSelector("[data-chosen]")).getText())
                .isEqualTo("In this order: first.png, second.png.");
        browser.driver().findElement(By.id("shows")).sendKeys("One stone", Keys.ENTER, "Two stones");
        browser.send(By.cssSelector("main form.form button.main"));
        assertThat(browser.driver().findElements(By.cssSelector("article figure img")))
                .hasSize(2);
        assertThat(server.db().read(read -> PhotoStore.TABLE.where(read, "note", "n.drop")).stream()
                        .map(photo -> photo.value().alternative()))
                .containsExactly("One stone", "Two stones");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void pictures_dropped_and_pasted_into_the_text_are_sent_and_stand_at_the_caret() throws Exception {
        browser.open("/notes/new");
        WebElement text = browser.driver().findElement(By.id("text"));
        text.sendKeys("Two lie.");
        send("text", "new DragEvent('drop', {dataTransfer: data, bubbles: true, cancelable: true})", "first.png");
        browser.until(driver -> text.getAttribute("value").contains("![](photos/"));
        browser.until(driver -> driver.findElement(By.cssSelector("[data-sent]"))
                .getText()
                .equals("It stands in the text; write between [ and ] what is seen."));
        text.sendKeys("Two stones");
        assertThat(text.getAttribute("value"))
                .matches("Two lie\\.\n\n!\\[Two stones\\]\\(photos/2026-11-25-[0-9]+\\.png\\)\n\n");
        browser.until(driver -> driver.findElements(By.cssSelector("[data-page-view] img[alt='Two stones']"))
                        .size()
                == 1);
        browser.script("const t = document.getElementById('text'); t.setSelectionRange(0, 3);");
        text.sendKeys(Keys.chord(Keys.CONTROL, "i"));
        assertThat(text.getAttribute("value")).startsWith("*Two* lie.");
        text.sendKeys(Keys.chord(Keys.CONTROL, Keys.ENTER));
        browser.until(driver -> driver.findElements(By.cssSelector("[data-page-view] em")).stream()
                .anyMatch(em -> em.getText().equals("Two")));
        browser.script("const data = new DataTransfer();"
                + "data.items.add(new File(['no picture'], 'plan.png', {type: 'image/png'}));"
                + "document.getElementById('text').dispatchEvent(new ClipboardEvent('paste',"
                + " {clipboardData: data, bubbles: true, cancelable: true}));");
        browser.until(driver -> driver.findElement(By.cssSelector("[data-refused]"))
                .getText()
                .equals("\"plan.png\" is no JPEG, PNG or WebP inside; save it as one of these."));
        assertThat(browser.complaints()).singleElement().asString().contains("422");
    }

    @Test
    void several_chosen_at_once_stand_in_the_text_in_their_order_but_for_one_that_is_refused(@TempDir Path folder)
            throws Exception {
        Path sill = Files.write(
                folder.resolve("sill.png"),
                CameraPicture.bytes(new BufferedImage(50, 30, BufferedImage.TYPE_INT_RGB), "png"));
        Path plan = Files.writeString(folder.resolve("plan.png"), "no picture");
        Path pit = Files.write(
                folder.resolve("pit.png"),
                CameraPicture.bytes(new BufferedImage(60, 30, BufferedImage.TYPE_INT_RGB), "png"));
        browser.open("/notes/new");
        browser.driver().findElement(By.id("text-pictures")).sendKeys(sill + "\n" + plan + "\n" + pit);
        browser.until(driver -> driver.findElement(By.cssSelector("[data-sent]"))
                .getText()
                .equals("They stand in the text; write between [ and ] what is seen."));
        assertThat(browser.driver()
                        .findElement(By.cssSelector("[data-refused]"))
                        .getText())
                .isEqualTo("\"plan.png\" is no JPEG, PNG or WebP inside; save it as one of these.");
        assertThat(browser.driver().findElement(By.id("text")).getAttribute("value"))
                .matches("(!\\[]\\(photos/2026-11-25-[0-9]+\\.png\\)\n\n){2}");
        browser.until(driver -> driver.findElements(By.cssSelector("[data-page-view] img")).stream()
                .map(image -> image.getDomProperty("naturalWidth"))
                .toList()
                .equals(List.of("50", "60")));
        assertThat(browser.complaints()).singleElement().asString().contains("422");
    }

    private static void send(String event, String name) throws Exception {
        send("shows", event, name);
    }

    private static void send(String id, String event, String name) throws Exception {
        byte[] png = CameraPicture.bytes(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png");
        browser.script(
                "const data = new DataTransfer();"
                        + "const bytes = Uint8Array.from(atob(arguments[0]), (c) => c.charCodeAt(0));"
                        + "data.items.add(new File([bytes], arguments[1], {type: 'image/png'}));"
                        + "document.getElementById(arguments[2]).dispatchEvent(" + event + ");",
                Base64.getEncoder().encodeToString(png),
                name,
                id);
    }
}
