package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import weekwright.base.Id;
import weekwright.build.TaskStore;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Segment;
import weekwright.episodes.SegmentStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class InTheBrowserTest {
    /** Where everything of the page begins and how wide it is, but for the lines themselves. */
    private static final String PLACES = "return Array.from(document.querySelectorAll('body *'))"
            + ".filter((one) => !one.closest('.typed-lines')).map((one) => [one, one.getBoundingClientRect()])"
            + ".map(([one, at]) => [one.tagName, at.x, at.y, at.width].join()).join('\\n')";

    @Test
    void a_part_of_the_running_order_goes_up_and_down_by_alt_and_the_arrows_and_keeps_the_focus() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            server.db().write("ilse", write -> {
                int place = 0;
                for (String title : List.of("Sill", "Pegs", "Frost")) {
                    SegmentStore.TABLE.insert(write, new Segment(new Id("ep.11"), ++place, title, Optional.empty()));
                }
                return null;
            });
            browser.open("/episodes/ep.11/order");
            browser.driver().findElement(By.name("parts.2.title")).sendKeys(Keys.chord(Keys.ALT, Keys.ARROW_UP));
            browser.until(d -> titles(browser).equals(List.of("Sill", "Frost", "Pegs")));
            browser.until(d -> "up-1".equals(browser.script("return document.activeElement.id")));
            browser.driver().switchTo().activeElement().sendKeys(Keys.chord(Keys.ALT, Keys.ARROW_UP));
            browser.until(d -> titles(browser).equals(List.of("Frost", "Sill", "Pegs")));
            browser.driver().findElement(By.name("parts.0.title")).sendKeys(Keys.chord(Keys.ALT, Keys.ARROW_DOWN));
            browser.until(d -> titles(browser).equals(List.of("Sill", "Frost", "Pegs")));
            browser.send(By.cssSelector("main .buttons button.main"));
            assertThat(server.db().read(read -> SegmentStore.ofEpisode(read, new Id("ep.11"))).stream()
                            .map(part -> part.value().title()))
                    .containsExactly("Sill", "Frost", "Pegs");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static List<?> titles(BrowserFixture browser) {
        return (List<?>)
                browser.script("return Array.from(document.querySelectorAll('.part-row input[name$=\".title\"]'),"
                        + " (field) => field.value).filter((text) => text)");
    }

    @Test
    void hours_that_are_logged_bring_a_new_forecast_to_the_open_page() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/ahead");
            browser.until(
                    d -> d.findElements(By.cssSelector("[data-moving=false]")).size() == 1);
            String before = browser.driver()
                    .findElement(By.cssSelector("[data-forecast]"))
                    .getAttribute("data-forecast");
            browser.open("/log");
            browser.driver().findElement(By.name("hours")).clear();
            browser.driver().findElement(By.name("hours")).sendKeys("3,5");
            browser.send(By.cssSelector("main form[method=post] button.main"));
            browser.open("/ahead");
            browser.until(
                    d -> d.findElements(By.cssSelector("[data-moving=false]")).size() == 1);
            String after = browser.driver()
                    .findElement(By.cssSelector("[data-forecast]"))
                    .getAttribute("data-forecast");
            assertThat(after).isNotEqualTo(before);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void an_episode_is_marked_published() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "bram")) {
            browser.open("/episodes/ep.11");
            new Select(browser.driver().findElement(By.id("step"))).selectByValue("published");
            browser.send(By.cssSelector("main button[value=mark]"));
            assertThat(server.db()
                            .read(read -> EpisodeStore.TABLE.find(read, new Id("ep.11")))
                            .orElseThrow()
                            .value()
                            .published())
                    .contains(LocalDate.of(2026, 11, 25));
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void a_block_of_200_rows_is_pasted_into_the_cells_and_enter_goes_down() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/build/stages/gate/tasks/edit");
            WebElement cell = browser.driver().findElement(By.id("title.3"));
            browser.script(
                    "const data = new DataTransfer();"
                            + "data.setData('text/plain', Array.from({length: 200}, (_, i) =>"
                            + " `Cog ${i + 1}\\t0.75`).join('\\r\\n') + '\\r\\n');"
                            + "arguments[0].dispatchEvent(new ClipboardEvent('paste',"
                            + " {clipboardData: data, bubbles: true, cancelable: true}));",
                    cell);
            assertThat(browser.driver().findElement(By.id("likely.202")).getDomProperty("value"))
                    .isEqualTo("0.75");
            cell.sendKeys(Keys.ENTER);
            assertThat(browser.driver().switchTo().activeElement().getDomAttribute("id"))
                    .isEqualTo("title.4");
            browser.send(By.cssSelector("main button.main"));
            assertThat(server.db().read(TaskStore.TABLE::count)).isEqualTo(206);
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void a_small_project_is_built_from_an_empty_folder_to_a_forecast_by_clicks_alone() {
        try (ServerFixture server = ServerFixture.empty();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            // the fixture looked for a person at /account, which is not there before a project is
            assertThat(browser.complaints()).allMatch(line -> line.contains("/account") && line.contains("404"));
            browser.open("/");
            browser.send(By.linkText("Start a new project"));
            type(browser, "name", "The dovecote");
            type(browser, "crew", "Ilse");
            type(browser, "cash", "1200");
            browser.driver().findElement(By.id("zone")).clear();
            type(browser, "zone", "Europe/Berlin");
            browser.send(By.cssSelector("main form button.main"));
            browser.until(d -> d.getTitle().startsWith("What is built"));
            type(browser, "stage1", "Walls");
            type(browser, "stage1_hours", "120");
            type(browser, "stage2", "Roof");
            type(browser, "stage2_hours", "80");
            type(browser, "task1", "Dig the footing");
            type(browser, "task1_hours", "16");
            type(browser, "task2", "Lay the sill");
            type(browser, "task3", "Raise the walls");
            browser.send(By.cssSelector("main form button.main"));
            browser.until(d -> d.getTitle().startsWith("What supporters pledge"));
            type(browser, "level1", "Perch");
            type(browser, "level1_amount", "5");
            type(browser, "level1_supporters", "40");
            type(browser, "winter", "9");
            browser.send(By.cssSelector("main form button.main"));
            browser.until(
                    d -> d.findElements(By.cssSelector("[data-moving=false]")).size() == 1);
            assertThat(browser.driver().findElement(By.cssSelector("main h1")).getText())
                    .startsWith("Walls is done about ");
            assertThat(browser.driver().findElement(By.cssSelector(".guessed")).getText())
                    .matches("Rough: 2 tasks and 1 stage are guessed, about [0-9]+ hours of work\\.");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void type(BrowserFixture browser, String id, String text) {
        browser.driver().findElement(By.id(id)).sendKeys(text);
    }

    @Test
    void what_is_typed_stays_on_the_device_until_it_is_saved() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/build/tasks/weir.2/edit");
            WebElement title = browser.driver().findElement(By.id("title"));
            String before = title.getDomProperty("value");
            title.clear();
            title.sendKeys("Set the sill stones dry");
            // another page, and back
            browser.open("/week");
            browser.driver().navigate().back();
            browser.until(
                    d -> d.findElement(By.id("title")).getDomProperty("value").equals("Set the sill stones dry"));

            // opened anew it is offered, put back or thrown away
            browser.open("/build/tasks/weir.2/edit");
            assertThat(browser.driver().findElement(By.id("title")).getDomProperty("value"))
                    .isEqualTo(before);
            WebElement line = browser.driver().findElement(By.cssSelector(".typed-before"));
            assertThat(line.getText())
                    .startsWith("You had typed something here at ")
                    .contains("and not saved it.");
            line.findElement(By.xpath(".//button[text()='Put it back']")).click();
            assertThat(browser.driver().findElement(By.id("title")).getDomProperty("value"))
                    .isEqualTo("Set the sill stones dry");
            // another page of its own does not see it, other forms neither
            browser.open("/build/tasks/weir.1/edit");
            assertThat(browser.driver().findElements(By.cssSelector(".typed-before")))
                    .isEmpty();

            // refused, it is still kept; saved, it is gone
            browser.open("/build/tasks/weir.2/edit");
            browser.driver()
                    .findElement(By.xpath("//button[text()='Put it back']"))
                    .click();
            browser.driver().findElement(By.id("likely")).clear();
            browser.driver().findElement(By.id("likely")).sendKeys("many");
            browser.send(By.cssSelector("main form[method=post] button.main"));
            browser.open("/build/tasks/weir.2/edit");
            browser.driver()
                    .findElement(By.xpath("//button[text()='Put it back']"))
                    .click();
            assertThat(browser.driver().findElement(By.id("likely")).getDomProperty("value"))
                    .isEqualTo("many");
            browser.driver().findElement(By.id("likely")).clear();
            browser.driver().findElement(By.id("likely")).sendKeys("32");
            browser.send(By.cssSelector("main form[method=post] button.main"));
            browser.open("/build/tasks/weir.2/edit");
            assertThat(browser.driver().findElements(By.cssSelector(".typed-before")))
                    .isEmpty();
            assertThat(browser.driver().findElement(By.id("title")).getDomProperty("value"))
                    .isEqualTo("Set the sill stones dry");
        }
    }

    /** At the width of a phone too, where the line is three lines high. */
    @Test
    void the_line_that_offers_what_was_typed_moves_nothing_and_the_sheet_can_be_scrolled_free_of_it() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            for (int width : new int[] {0, 390}) {
                browser.device(false, width);
                browser.open("/funds/costs/new");
                Object before = browser.script(PLACES);
                browser.driver().findElement(By.id("payee")).sendKeys("Sawyer");
                browser.open("/funds/costs/new");
                WebElement line = browser.driver().findElement(By.cssSelector(".typed-before"));
                assertThat(line.isDisplayed()).isTrue();
                assertThat(browser.script(PLACES)).isEqualTo(before);
                assertThat(browser.script("scrollTo(0, document.documentElement.scrollHeight); return"
                                + " document.querySelector('main form button.main').getBoundingClientRect().bottom"
                                + " < document.querySelector('.typed-lines').getBoundingClientRect().top"))
                        .isEqualTo(true);
                line.findElement(By.xpath(".//button[text()='Throw it away']")).click();
                assertThat(browser.driver().findElements(By.cssSelector(".typed-lines")))
                        .isEmpty();
            }
        }
    }

    @Test
    void what_is_thrown_away_does_not_come_back_and_nothing_is_kept_of_passphrases() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/funds/costs/new");
            browser.driver().findElement(By.id("payee")).sendKeys("Sawyer");
            browser.driver().findElement(By.id("amount")).sendKeys("40");
            browser.open("/funds/costs/new");
            browser.driver()
                    .findElement(By.xpath("//button[text()='Throw it away']"))
                    .click();
            browser.open("/funds/costs/new");
            assertThat(browser.driver().findElements(By.cssSelector(".typed-before")))
                    .isEmpty();
            browser.open("/account/passphrase");
            browser.driver()
                    .findElements(By.cssSelector("main input[type=password]"))
                    .forEach(field -> field.sendKeys("seven brass cogs turn"));
            browser.open("/ahead");
            Object kept = browser.script("return Object.keys(localStorage).map(k => localStorage.getItem(k)).join()");
            assertThat(String.valueOf(kept)).doesNotContain("brass", "Sawyer");
        }
    }

    /** The tab is turned to: the script asks at once instead of within 20 seconds. */
    @Test
    void a_page_open_elsewhere_notices_newer_data_and_leaves_what_is_being_typed() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.open("/log");
            WebElement hours = browser.driver().findElement(By.name("hours"));
            hours.clear();
            hours.sendKeys("2,25");
            Visitor bram = server.as("bram");
            Visitor.Form his = bram.form(bram.get("/log"), "form[data-log]");
            assertThat(his.with("hours", "1").send().status()).isEqualTo(303);
            browser.script("document.dispatchEvent(new Event('visibilitychange'))");
            String said = browser.until(d -> {
                String text = d.findElement(By.cssSelector("[data-newer]")).getText();
                return text.isEmpty() ? null : text;
            });
            assertThat(said).isEqualTo("Something was changed since this was opened. Show it beside this");
            assertThat(hours.getAttribute("value")).isEqualTo("2,25");
            assertThat(browser.driver()
                            .findElement(By.cssSelector("[data-newer] a"))
                            .getAttribute("target"))
                    .isEqualTo("_blank");
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void the_hours_of_a_stage_or_task_stand_beside_its_name_when_a_build_is_begun() {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            browser.size(1280, 900);
            browser.open("/start/build");
            assertThat(browser.script("const top = (name) =>"
                            + " document.querySelector(`.field:has([name=${name}])`).getBoundingClientRect().top;"
                            + " return ['stage1', 'stage2', 'stage3', 'stage4', 'task1', 'task2', 'task3']"
                            + ".filter((name) => top(name) !== top(name + '_hours')).join(' ')"))
                    .isEqualTo("");
        }
    }
}
