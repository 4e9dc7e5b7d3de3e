package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.WebElement;
import weekwright.account.LogInStore;
import weekwright.base.Id;
import weekwright.build.HoursEntryStore;
import weekwright.episodes.ShotStore;
import weekwright.notes.NoteStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;

/** What is typed while the server is out of reach: the real server is stopped and started again on its port. */
class KeptInTheBrowserTest {
    private static final By KEPT = By.cssSelector("[data-kept] > p");
    private static final By ENTRIES = By.cssSelector("[data-kept] li");

    private ServerFixture server = ServerFixture.small();
    private static BrowserFixture browser;

    @BeforeEach
    void open() {
        if (browser == null) {
            browser = BrowserFixture.at(server, "ilse");
        } else {
            browser.moveTo(server, "ilse");
        }
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    private String line() {
        return browser.driver().findElement(KEPT).getText();
    }

    private void awaits(String begins) {
        browser.until(d -> line().startsWith(begins));
    }

    private List<String> entries() {
        return browser.driver().findElements(ENTRIES).stream()
                .map(WebElement::getText)
                .map(text -> text.replaceAll("\\s+", " ").replaceAll("\\d{1,2}:\\d\\d", "00:00"))
                .toList();
    }

    private void press(String words) {
        browser.driver()
                .findElement(By.xpath("//section[@data-kept]//button[text()='" + words + "']"))
                .click();
    }

    private void log(String hours) {
        WebElement field = browser.driver().findElement(By.id("hours"));
        field.clear();
        field.sendKeys(hours);
        browser.driver().findElement(By.cssSelector("[data-save]")).click();
    }

    private List<Integer> logged() {
        return server.db().read(HoursEntryStore.TABLE::values).stream()
                .filter(entry -> entry.date().toString().equals("2026-11-25"))
                .map(entry -> entry.hours().minutes())
                .toList();
    }

    @Test
    void where_the_store_of_the_device_does_not_answer_hours_are_posted_as_by_any_form() {
        browser.open("/log");
        browser.script("IDBDatabase.prototype.transaction = () => ({ objectStore: () => ({ put: () => ({}) }) })");
        browser.leaving(() -> log("1,25"));
        assertThat(logged()).containsExactly(75);
    }

    @Test
    void hours_wait_in_order_are_shown_and_one_can_be_removed_and_the_rest_are_sent_once() {
        browser.open("/log");
        browser.until(d -> browser.script("return localStorage.getItem('days beside this device')") != null);
        server.stop();
        log("1,25");
        awaits(
                "Kept on this device, 1 waiting. The server is out of reach; what waits is sent when it is in reach again.");
        assertThat(browser.driver().findElement(By.id("hours")).getDomProperty("value"))
                .isEmpty();
        log("2");
        awaits("Kept on this device, 2 waiting.");
        log("0:45");
        awaits("Kept on this device, 3 waiting.");
        assertThat(entries()).hasSize(3);
        assertThat(entries().get(1)).startsWith("Log: Ilse, at the bench, ").contains("Hours 2", "typed 00:00");
        browser.driver()
                .findElements(By.xpath("//section[@data-kept]//button[text()='Remove']"))
                .get(1)
                .click();
        awaits("Kept on this device, 2 waiting.");
        assertThat(entries().get(1)).contains("removed Put it back");
        server.startAgain();
        press("Send now");
        browser.until(d -> line().startsWith("2 sent ") || line().startsWith("All sent "));
        assertThat(logged()).containsExactly(75, 45);
        browser.open("/log");
        assertThat(entries()).isEmpty();
        assertThat(logged()).containsExactly(75, 45);
    }

    @Test
    void what_was_sent_and_whose_answer_was_lost_is_not_logged_twice() {
        browser.open("/log");
        // the post arrives and is answered, the answer never reaches the page
        browser.script(
                "const real = window.fetch; let cut = true;window.fetch = (to, how) => real(to, how).then((answer) =>"
                        + " {if (how && how.method === 'POST' && cut) { cut = false; throw new TypeError('cut off'); }"
                        + " return answer; });");
        log("3");
        awaits("Kept on this device, 1 waiting.");
        assertThat(logged()).containsExactly(180);
        press("Send now");
        awaits("All sent ");
        assertThat(logged()).containsExactly(180);
    }

    @Test
    void with_the_server_in_reach_a_form_goes_on_as_ever_and_a_refused_one_is_shown_with_its_faults() {
        browser.open("/log");
        browser.driver().findElement(By.id("hours")).sendKeys("1");
        browser.send(By.cssSelector("[data-save]"));
        assertThat(browser.driver().findElement(By.cssSelector(".flash p")).getText())
                .contains("logged");
        assertThat(browser.driver().findElements(By.cssSelector(".typed-before")))
                .isEmpty();
        browser.driver().findElement(By.id("hours")).sendKeys("many");
        browser.send(By.cssSelector("[data-save]"));
        assertThat(browser.driver().findElement(By.id("hours-error")).getText())
                .isEqualTo("\"many\" is not hours; write 3.5 or 3:30");
        assertThat(browser.driver().findElement(By.id("hours")).getDomProperty("value"))
                .isEqualTo("many");
        assertThat(browser.driver().findElement(By.cssSelector("[data-kept]")).isDisplayed())
                .isFalse();
        assertThat(logged()).containsExactly(60);
        assertThat(browser.complaints())
                .allMatch(text -> text.contains("422") || text.contains("Autofocus"))
                .hasSizeLessThan(4);
    }

    @Test
    void what_is_refused_stays_with_the_reason_and_the_others_go_on() {
        browser.open("/log");
        browser.until(d -> browser.script("return localStorage.getItem('days beside this device')") != null);
        server.stop();
        log("23");
        awaits("Kept on this device, 1 waiting.");
        log("2");
        awaits("Kept on this device, 2 waiting.");
        log("0,5");
        awaits("Kept on this device, 3 waiting.");
        server.startAgain();
        press("Send now");
        awaits("Kept on this device, 1 not taken. 2 sent ");
        assertThat(entries()).singleElement().asString().contains("Hours 2", "Not taken: ", "25 h");
        assertThat(logged()).containsExactly(1380, 30);
    }

    @Test
    void a_server_that_was_set_up_anew_is_noticed_and_entries_stay_until_somebody_says_where_they_belong() {
        browser.open("/log");
        browser.until(d -> browser.script("return localStorage.getItem('days beside this device')") != null);
        int port = server.port();
        server.stop();
        log("1,5");
        awaits("Kept on this device, 1 waiting.");
        server.close();
        server = ServerFixture.smallAt(port);
        press("Send now");
        browser.until(d -> entries().toString().contains("for another project, or before this one was set up anew."));
        assertThat(logged()).isEmpty();
        browser.open("/log");
        browser.until(d -> entries().toString().contains("for another project"));
        press("It belongs here");
        awaits("All sent ");
        assertThat(logged()).containsExactly(90);
    }

    @Test
    void where_the_log_in_has_ended_entries_wait_for_it_and_for_the_same_person() {
        browser.open("/log");
        browser.until(d -> browser.script("return localStorage.getItem('days beside this device')") != null);
        server.stop();
        log("1,5");
        awaits("Kept on this device, 1 waiting.");
        server.startAgain();
        server.giveLogIn("ilse", "oak pegs and tallow");
        press("Send now");
        awaits(
                "Kept on this device, 1 waiting. Nobody is known here any more. Come in again, then what waits is sent.");
        assertThat(logged()).isEmpty();
        assertThat(browser.driver()
                        .findElement(By.cssSelector("[data-kept] > p a"))
                        .getDomAttribute("href"))
                .isEqualTo("/account/log-in?to=%2Flog");
        server.db().write("crew", write -> {
            LogInStore.remove(write, new Id("ilse"));
            return null;
        });
        browser.driver().manage().deleteCookieNamed("who");
        browser.driver().manage().addCookie(new Cookie("who", "bram"));
        browser.open("/log");
        browser.until(d -> entries().toString().contains("by ilse, who is not the one chosen here now."));
        assertThat(logged()).isEmpty();
        press("Send it all the same");
        awaits("All sent ");
        assertThat(logged()).containsExactly(90);
    }

    @Test
    void shots_ticks_notes_and_the_sheet_from_the_wall_wait_too_and_what_needs_the_server_says_so() {
        browser.open("/week/shots");
        String shot = browser.driver()
                .findElement(By.cssSelector("form[data-keep] [name=shot]"))
                .getDomAttribute("value");
        browser.until(d -> browser.script("return localStorage.getItem('days beside this device')") != null);
        server.stop();
        browser.driver().findElement(By.cssSelector("form[data-keep] button")).click();
        awaits("Kept on this device, 1 waiting.");
        assertThat(browser.driver()
                        .findElement(By.cssSelector("form[data-keep] button"))
                        .getText())
                .isEqualTo("Kept, not sent yet");
        server.startAgain();
        press("Send now");
        awaits("All sent ");
        assertThat(server.db()
                        .read(read -> ShotStore.TABLE.find(read, Long.parseLong(shot)))
                        .orElseThrow()
                        .value()
                        .captured())
                .contains(LocalDate.of(2026, 11, 25));

        browser.open("/notes/new");
        server.stop();
        browser.driver().findElement(By.id("title")).sendKeys("The weir in frost");
        browser.driver().findElement(By.id("text")).sendKeys("Ice on the sill.");
        browser.driver()
                .findElement(By.xpath("//button[text()='Keep the note']"))
                .click();
        awaits("Kept on this device, 1 waiting.");
        browser.driver()
                .findElement(By.xpath("//button[text()='Keep as a draft']"))
                .click();
        awaits("The server is out of reach, and this can be done with it alone. Nothing was lost; try again");
        server.startAgain();
        browser.script("dispatchEvent(new Event('online'))");
        awaits("All sent ");
        assertThat(server.db().read(NoteStore.TABLE::values))
                .anyMatch(note -> note.title().equals("The weir in frost"));

        browser.open("/week/sheet");
        server.stop();
        browser.driver().findElement(By.cssSelector(".wall-hours input")).sendKeys("1,75");
        browser.driver()
                .findElement(By.xpath("//button[text()='Keep the sheet']"))
                .click();
        awaits("Kept on this device, 1 waiting.");
        server.startAgain();
        press("Send now");
        awaits("All sent ");
        assertThat(server.db().read(HoursEntryStore.TABLE::values))
                .anyMatch(entry -> entry.hours().minutes() == 105);
    }

    @Test
    void on_the_machine_itself_log_and_week_open_without_the_server_and_entries_typed_there_are_sent() {
        browser.open("/week");
        browser.open("/log");
        assertThat(browser.driver()
                        .findElement(By.cssSelector("[data-device-says]"))
                        .getText())
                .isEqualTo("Without the server this sheet and the week open here all the same, and entries are kept on"
                        + " this device until they can be sent. The browser's menu can install it.");
        browser.until(d -> Boolean.TRUE.equals(
                browser.script("return caches.match('/kept-for', {cacheName: 'sheets'}).then((mark) => !!mark)")));
        browser.driver().findElement(By.id("hours")).sendKeys("1");
        browser.send(By.cssSelector("[data-save]"));
        assertThat(browser.driver().findElement(By.cssSelector(".flash p")).getText())
                .contains("logged");
        assertThat(browser.script("return caches.match('/log').then((kept) => kept.text()).then((text) =>"
                        + " text.includes('class=\"flash\"'))"))
                .isEqualTo(false);
        server.stop();
        browser.open("/week");
        assertThat(browser.driver().findElement(By.tagName("h1")).getText()).startsWith("Week 48");
        browser.open("/log");
        log("2,5");
        awaits("Kept on this device, 1 waiting.");
        browser.open("/funds");
        assertThat(browser.driver().findElement(By.tagName("h1")).getText()).isEqualTo("The server is out of reach");
        server.startAgain();
        browser.open("/log");
        awaits("All sent ");
        assertThat(logged()).containsExactly(60, 150);
    }

    /** A device that is full: nothing can be kept, and every page and what it is drawn with comes from the server all the same. */
    @Test
    void where_nothing_can_be_kept_what_the_server_answers_is_shown() {
        browser.open("/log");
        browser.script("return navigator.serviceWorker.ready.then(() => true)");
        browser.roomFor(server, 1);
        for (String page : List.of("/week", "/log", "/week/shots", "/week/sheet")) {
            browser.open(page);
            assertThat(browser.script("return !!navigator.serviceWorker.controller"))
                    .isEqualTo(true);
            assertThat(
                            browser.script(
                                    "return [...document.styleSheets].every((one) => one.cssRules.length > 0)"
                                            + " && document.querySelectorAll('link[rel=stylesheet]').length === document.styleSheets.length"))
                    .as(page)
                    .isEqualTo(true);
            assertThat(browser.driver().findElement(By.tagName("h1")).getText())
                    .isNotEqualTo("The server is out of reach");
        }
        assertThat(browser.script(
                        "return caches.open('room').then((cache) => cache.put('/', new Response('a'.repeat(9999))))"
                                + ".then(() => 'kept', (e) => e.name)"))
                .isEqualTo("QuotaExceededError");
    }

    @Test
    void on_plain_http_in_the_workshop_the_open_page_carries_on_alone_and_says_so() {
        try (ServerFixture named = ServerFixture.smallNamed("mill.example");
                BrowserFixture phone = BrowserFixture.at(named, "mill.example", "ilse")) {
            phone.open("/log");
            assertThat(phone.script("return isSecureContext")).isEqualTo(false);
            assertThat(phone.driver()
                            .findElement(By.cssSelector("[data-device-says]"))
                            .getText())
                    .isEqualTo("Without the server this sheet carries on while it stays open, and entries are kept on"
                            + " this device until they can be sent. It cannot be opened anew without the server:"
                            + " browsers allow that under https alone.");
            named.stop();
            phone.driver().findElement(By.id("hours")).sendKeys("1");
            phone.driver().findElement(By.cssSelector("[data-save]")).click();
            phone.until(d -> d.findElement(KEPT).getText().startsWith("Kept on this device, 1 waiting."));
            named.startAgain();
            phone.driver()
                    .findElement(By.xpath("//section[@data-kept]//button[text()='Send now']"))
                    .click();
            phone.until(d -> d.findElement(KEPT).getText().startsWith("All sent "));
            assertThat(named.db().read(HoursEntryStore.TABLE::values).stream()
                            .filter(entry -> entry.date().toString().equals("2026-11-25"))
                            .map(entry -> entry.hours().minutes()))
                    .containsExactly(60);
        }
    }

    private void logIn(String passphrase) {
        browser.open("/account/log-in");
        browser.driver().findElement(By.id("name")).sendKeys("ilse");
        browser.driver().findElement(By.id("passphrase")).sendKeys(passphrase);
        browser.send(By.cssSelector("main form button.main"));
    }

    private Object draft() {
        return browser.script("return localStorage.getItem('draft')");
    }

    @Test
    void logging_out_leaves_nothing_on_the_device_but_what_is_ticked_to_stay() {
        String passphrase = "nine wet stones on the sill";
        server.giveLogIn("ilse", passphrase);
        By unsaved = By.cssSelector("[data-unsaved]");
        By logOut = By.cssSelector("button[value=log-out]");
        logIn(passphrase);
        browser.script("localStorage.setItem('draft', 'half a note'); return 1;");
        browser.open("/account");
        browser.until(d -> d.findElement(unsaved).isDisplayed());
        browser.driver().findElement(By.name("keep")).click();
        browser.send(logOut);
        assertThat(browser.driver().getCurrentUrl()).endsWith("/account/log-in");
        assertThat(draft()).isEqualTo("half a note");
        logIn(passphrase);
        browser.open("/account");
        browser.until(d -> d.findElement(unsaved).isDisplayed());
        browser.send(logOut);
        assertThat(draft()).isNull();
    }
}
