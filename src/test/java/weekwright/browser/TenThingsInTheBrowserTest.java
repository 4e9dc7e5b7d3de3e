package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Interactive;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.Select;
import weekwright.base.Id;
import weekwright.build.HoursEntryStore;
import weekwright.build.WeekLineStore;
import weekwright.db.Table;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ShotStore;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MaterialStore;
import weekwright.notes.PhotoStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.FilledProject;
import weekwright.testkit.ServerFixture;

/** The ten things that crews do most, by what can be seen and pressed, on a desk of 1,280 pixels and on a phone of 390. */
class TenThingsInTheBrowserTest {
    private static final int DESK = 0;
    private static final int PHONE = 390;
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private static ServerFixture server;
    private static BrowserFixture browser;

    @BeforeAll
    static void open() {
        server = ServerFixture.of(FilledProject::fill).drawn();
        browser = BrowserFixture.at(server, "ilse");
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
        server.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {DESK, PHONE})
    void ten_things(int width) throws Exception {
        try (ServerFixture mine = ServerFixture.of(FilledProject::fill)) {
            browser.device(false, width);
            browser.moveTo(mine, "ilse");
            logHours(mine);
            enterACost(mine);
            tickAShot(mine);
            planALineOfTheWeek(mine);
            moveAnEpisode(mine);
            receiveAPurchase(mine);
            writeANoteWithAPicture(mine);
            publishAnEpisode(mine);
            readTheForecast();
            tryALever();
            assertThat(browser.complaints()).isEmpty();
        }
    }

    private static void logHours(ServerFixture mine) {
        browser.open("/log");
        type("hours", "2,25");
        browser.send(By.cssSelector("[data-save]"));
        assertThat(mine.db().read(HoursEntryStore.TABLE::values))
                .anyMatch(one -> one.date().equals(TODAY) && one.hours().minutes() == 135);
    }

    private static void enterACost(ServerFixture mine) {
        browser.open("/funds/costs/new");
        type("amount", "41,50");
        type("payee", "Iron yard");
        browser.send(By.cssSelector("main form button.main"));
        assertThat(mine.db().read(LedgerEntryStore.TABLE::values))
                .anyMatch(one -> one.amount().minor() == -4150 && one.payee().equals("Iron yard"));
    }

    private static void tickAShot(ServerFixture mine) {
        browser.open("/week/shots");
        long row = Long.parseLong(browser.driver()
                .findElement(By.cssSelector("form[data-keep] [name=shot]"))
                .getDomAttribute("value"));
        browser.send(By.cssSelector("form[data-keep] button"));
        assertThat(mine.db()
                        .read(read -> ShotStore.TABLE.find(read, row))
                        .orElseThrow()
                        .value()
                        .captured())
                .contains(TODAY);
    }

    private static void planALineOfTheWeek(ServerFixture mine) {
        browser.open("/week/lines/new?date=2026-11-26");
        choose("crew", "bram");
        choose("task", "weir.2");
        type("hours", "3");
        browser.send(By.cssSelector("main form button.main"));
        assertThat(mine.db().read(WeekLineStore.TABLE::values))
                .anyMatch(one -> one.date().equals(LocalDate.of(2026, 11, 26))
                        && one.task().equals(Optional.of(new Id("weir.2"))));
    }

    private static void moveAnEpisode(ServerFixture mine) {
        browser.open("/episodes/ep.12/slot");
        choose("slot", "2026-12-11");
        browser.send(By.cssSelector("main form.form button.main"));
        browser.send(By.cssSelector("main button[value=move]"));
        assertThat(episode(mine, "ep.12").slot()).contains(LocalDate.of(2026, 12, 11));
    }

    private static void receiveAPurchase(ServerFixture mine) {
        browser.open("/build/materials/mat.9");
        browser.send(By.cssSelector("main button[value=receive]"));
        assertThat(mine.db()
                        .read(read -> MaterialStore.TABLE.find(read, new Id("mat.9")))
                        .orElseThrow()
                        .value()
                        .received())
                .contains(TODAY);
    }

    private static void writeANoteWithAPicture(ServerFixture mine) throws Exception {
        browser.open("/notes/new");
        type("title", "Frost on the sill");
        type("text", "Ice by nine.");
        browser.send(By.xpath("//button[text()='Keep the note']"));
        String note = browser.driver().getCurrentUrl().replaceFirst(".*(/notes/[^?#]+).*", "$1");
        browser.open(note + "/pictures/new");
        Path picture = mine.beside().resolve("sill.jpg");
        Files.write(picture, CameraPicture.jpeg(64, 48, "2026:11:25 09:00:00"));
        browser.driver().findElement(By.cssSelector("main input[type=file]")).sendKeys(picture.toString());
        type("shows", "Ice on the sill");
        browser.send(By.cssSelector("main form.form button.main"));
        assertThat(browser.driver().findElements(By.cssSelector("article figure img[alt='Ice on the sill']")))
                .hasSize(1);
        assertThat(mine.db().read(PhotoStore.TABLE::values)).hasSize(2);
    }

    private static void publishAnEpisode(ServerFixture mine) {
        browser.open("/episodes/ep.11");
        choose("step", "published");
        browser.send(By.cssSelector("main button[value=mark]"));
        assertThat(episode(mine, "ep.11").published()).contains(TODAY);
    }

    private static void readTheForecast() {
        browser.open("/ahead");
        browser.until(d -> d.findElements(By.cssSelector("[data-moving=false]")).size() == 1);
        assertThat(browser.driver().findElement(By.cssSelector("main h1")).getText())
                .matches("(?s).+ is done about \\d.+");
        assertThat(browser.driver().findElements(By.cssSelector("[data-picture] svg")).stream()
                        .filter(WebElement::isDisplayed))
                .isNotEmpty();
    }

    private static void tryALever() {
        browser.open("/ahead/levers");
        type("supporters", "-12");
        browser.until(d -> d.findElement(By.cssSelector("[data-answer] .lead"))
                .getText()
                .equals("With 12 in a hundred fewer supporters."));
    }

    @Test
    void the_picture_ahead_is_gone_through_by_keys_tells_each_sentence_and_leads_to_its_page() {
        browser.device(false, DESK);
        browser.moveTo(server, "ilse");
        browser.open("/ahead");
        browser.until(d -> d.findElements(By.cssSelector("[data-moving=false]")).size() == 1);
        List<WebElement> stops = browser.driver().findElements(By.cssSelector("svg.ahead-wide .thing[tabindex='0']"));
        assertThat(stops).hasSize(1);
        browser.script("arguments[0].focus()", stops.get(0));
        String first = told();
        assertThat(first).startsWith(stops.get(0).getDomAttribute("aria-label"));
        key(Keys.ARROW_DOWN);
        WebElement second = browser.driver().switchTo().activeElement();
        assertThat(told()).isNotEqualTo(first).isEqualTo(second.getDomAttribute("aria-label") + " Look at it");
        String from = browser.driver().findElement(By.id("from")).getDomProperty("value");
        key(Keys.ARROW_RIGHT);
        browser.until(d -> !d.findElement(By.id("from")).getDomProperty("value").equals(from));
        assertThat(browser.driver().getCurrentUrl()).contains("/ahead?");
        // the focus went to the link of what was done, in the picture still
        key("-");
        browser.until(
                d -> !d.findElement(By.id("weeks")).getDomProperty("value").equals("24"));
        browser.open("/ahead");
        browser.script("document.querySelector('svg.ahead-wide .thing').focus()");
        String leads = browser.driver().switchTo().activeElement().getDomAttribute("href");
        browser.leaving(() -> browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER));
        assertThat(browser.driver().getCurrentUrl()).contains(leads);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void on_a_phone_the_first_touch_tells_and_the_second_leads() {
        browser.device(false, PHONE);
        browser.moveTo(server, "ilse");
        browser.open("/ahead");
        browser.until(d -> d.findElements(By.cssSelector("[data-moving=false]")).size() == 1);
        WebElement thing = browser.driver().findElements(By.cssSelector("svg.ahead-upright .thing")).stream()
                .filter(one -> one.getDomAttribute("href").startsWith("/build/stages/"))
                .findFirst()
                .orElseThrow();
        touch(thing);
        assertThat(told()).isEqualTo(thing.getDomAttribute("aria-label") + " Look at it");
        assertThat(browser.driver().getCurrentUrl()).endsWith("/ahead");
        String leads = thing.getDomAttribute("href");
        browser.leaving(() -> touch(thing));
        assertThat(browser.driver().getCurrentUrl()).contains(leads);
    }

    private static String told() {
        return browser.driver()
                .findElement(By.cssSelector("[data-told]:not([hidden])"))
                .getDomProperty("textContent");
    }

    private static void key(CharSequence key) {
        browser.driver().switchTo().activeElement().sendKeys(key);
    }

    private static void touch(WebElement thing) {
        browser.script("arguments[0].scrollIntoView({ block: 'center' })", thing);
        PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger");
        Sequence taps = new Sequence(finger, 0)
                .addAction(finger.createPointerMove(Duration.ZERO, PointerInput.Origin.fromElement(thing), 0, 0))
                .addAction(finger.createPointerDown(0))
                .addAction(finger.createPointerUp(0));
        ((Interactive) browser.driver()).perform(List.of(taps));
    }

    @Test
    void what_a_drawing_shows_is_given_as_a_file_for_a_spreadsheet() {
        browser.device(false, DESK);
        browser.moveTo(server, "ilse");
        browser.open("/log/week?of=2026-11-12");
        assertThat(fileOf("hours-by-week").lines().limit(2))
                .containsExactly(
                        "\uFEFF\"Week from\",\"Ilse, logged\",\"Ilse, stated\",\"Bram, logged\",\"Bram,"
                                + " stated\",\"Noor, logged\",\"Noor, stated\"",
                        "\"9 Nov\",\"13.5\",\"36\",\"0\",\"30\",\"0\",\"4\"");
        assertThat(browser.script("return window.name")).isEqualTo("hours-by-week-2026-11-25.csv");
        for (String page : new String[] {"/funds/ladder", "/funds/supporters", "/episodes", "/build/stages/weir"}) {
            browser.open(page);
            assertThat(browser.driver()
                            .findElements(By.cssSelector("[data-figures] .as-csv, [data-figures] + .as-csv")))
                    .as(page)
                    .isNotEmpty();
        }
    }

    /** RFC 4180: lines end with CR LF, quotes are doubled, every line has as many fields; ASVS 5.0.0, 1.2.10: no formulas. */
    @Test
    void a_file_of_figures_keeps_to_the_standard_and_runs_nothing() {
        browser.device(false, DESK);
        browser.moveTo(server, "ilse");
        browser.open("/log/week?of=2026-11-12");
        browser.script(
                "document.querySelector('[data-figures] table').innerHTML = arguments[0]",
                "<caption>=A1</caption><tr><th>Head, \"one\"</th><th>Drawn</th><th>Two</th></tr>"
                        + "<tr><th>=1+1</th><td><svg><title>t</title></svg></td><td>-5</td></tr>"
                        + "<tr><th>@sum</th><td></td><td>\u22121,250.50</td></tr>"
                        + "<tr><th>+1 day</th><td></td><td>1,831\u00bd</td></tr>"
                        + "<tr><th>-x\u20ac</th><td></td><td>\u00be h</td></tr>"
                        + "<tr><td colspan=2>wide</td><td>=5</td></tr>");
        assertThat(fileOf("hours-by-week"))
                .isEqualTo("\uFEFF\"'=A1\",\"\"\r\n"
                        + "\"Head, \"\"one\"\"\",\"Two\"\r\n"
                        + "\"'=1+1\",\"-5\"\r\n"
                        + "\"'@sum\",\"-1,250.50\"\r\n"
                        + "\"'+1 day\",\"1831.5\"\r\n"
                        + "\"'-x\u20ac\",\"0.75\"\r\n"
                        + "\"wide\",\"'=5\"\r\n");
    }

    /** What the button under the figures of that name gives, as the browser would save it; the driver would lose CR before LF. */
    private static String fileOf(String figures) {
        browser.script("window.made = null; URL.createObjectURL = (made) => { made.arrayBuffer().then((all) => {"
                + " window.made = new TextDecoder('utf-8', {ignoreBOM: true}).decode(all); }); return '#'; };"
                + " HTMLAnchorElement.prototype.click = function() { window.name = this.download; };");
        browser.driver()
                .findElement(By.cssSelector("[data-figures=" + figures + "] .as-csv"))
                .click();
        return browser.until(
                        d -> (String) browser.script("return window.made && window.made.replaceAll('\\r', '\\u240d')"))
                .replace('\u240d', '\r');
    }

    @Test
    void the_field_that_was_refused_takes_the_focus_and_what_is_wrong_leads_to_it() {
        browser.device(false, DESK);
        browser.moveTo(server, "ilse");
        browser.open("/build/tasks/weir.2/edit");
        type("likely", "many");
        browser.send(By.cssSelector("main form[method=post] button.main"));
        leadsTo("likely");
        browser.open("/funds/costs/new");
        type("amount", "a lot");
        browser.send(By.cssSelector("main form button.main"));
        leadsTo("amount");
        assertThat(browser.complaints()).allMatch(line -> line.contains("422"));
    }

    private static void leadsTo(String field) {
        browser.until(ExpectedConditions.attributeToBe(By.cssSelector(":focus"), "id", field));
        WebElement said = browser.driver().findElement(By.cssSelector("main [role=alert]"));
        assertThat(said.getText()).startsWith("Not saved yet. Nothing you typed is lost.");
        said.findElement(By.cssSelector("a[href='#" + field + "']")).click();
        browser.until(ExpectedConditions.attributeToBe(By.cssSelector(":focus"), "id", field));
        WebElement focused = browser.driver().switchTo().activeElement();
        assertThat(focused.getDomAttribute("aria-invalid")).isEqualTo("true");
        assertThat(browser.driver()
                        .findElement(By.id(
                                focused.getDomAttribute("aria-describedby").split(" ")[0]))
                        .getText())
                .isNotEmpty();
    }

    private static void type(String id, String text) {
        WebElement field = browser.driver().findElement(By.id(id));
        field.clear();
        field.sendKeys(text);
    }

    private static void choose(String id, String value) {
        new Select(browser.driver().findElement(By.id(id))).selectByValue(value);
    }

    private static Episode episode(ServerFixture mine, String id) {
        Table<Episode> episodes = EpisodeStore.TABLE;
        return mine.db()
                .read(read -> episodes.find(read, new Id(id)))
                .orElseThrow()
                .value();
    }
}
