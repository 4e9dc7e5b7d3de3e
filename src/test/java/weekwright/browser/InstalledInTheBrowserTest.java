package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import weekwright.build.HoursEntryStore;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.OwnCertificate;
import weekwright.testkit.ServerFixture;

/** Under TLS, by the name that the workshop's network knows: a phone installs the sheets and opens them without the server. */
class InstalledInTheBrowserTest {
    private static final String NAME = "mill.example";
    private static final By KEPT = By.cssSelector("[data-kept] > p");

    @TempDir
    Path folder;

    private static List<Integer> logged(ServerFixture server) {
        return server.db().read(HoursEntryStore.TABLE::values).stream()
                .filter(entry -> entry.date().toString().equals("2026-11-25"))
                .map(entry -> entry.hours().minutes())
                .toList();
    }

    private static void awaits(BrowserFixture phone, String begins) {
        phone.until(d -> d.findElement(KEPT).getText().startsWith(begins));
    }

    /** That it is drawn as ever: the sheet's own letters are there, and its scripts have run. */
    private static void drawn(BrowserFixture phone) {
        phone.until(d -> Boolean.TRUE.equals(
                phone.script("return document.readyState === 'complete' && document.fonts.check('16px Besley')")));
        assertThat(phone.script("return [...document.styleSheets].map((one) => one.cssRules.length > 0).join()"))
                .isEqualTo("true,true");
    }

    @Test
    void it_installs_opens_without_the_server_with_the_last_week_sheet_and_what_waits_is_sent_once() {
        OwnCertificate certificate = OwnCertificate.in(folder);
        try (ServerFixture server =
                        ServerFixture.smallUnderTls(NAME, certificate).drawn();
                BrowserFixture phone = BrowserFixture.underTls(server, NAME, certificate, "ilse")) {
            phone.device(false, 390);
            phone.open("/week");
            String sheet = phone.driver().findElement(By.tagName("main")).getText();
            assertThat(sheet).startsWith("Week 48");
            phone.open("/log");
            assertThat(phone.script("return isSecureContext")).isEqualTo(true);
            assertThat(phone.driver()
                            .findElement(By.cssSelector("[data-device-says]"))
                            .getDomAttribute("data-device-says"))
                    .isEqualTo("opens");
            phone.until(d -> Boolean.TRUE.equals(
                    phone.script("return caches.match('/kept-for', {cacheName: 'sheets'}).then((mark) => !!mark)")));
            assertThat(phone.whyNotInstalled()).isEmpty();

            server.stop();
            phone.open("/week");
            assertThat(phone.driver().findElement(By.tagName("main")).getText()).isEqualTo(sheet);
            drawn(phone);
            phone.open("/log");
            drawn(phone);
            phone.driver().findElement(By.id("hours")).sendKeys("2,25");
            phone.driver().findElement(By.cssSelector("[data-save]")).click();
            awaits(phone, "Kept on this device, 1 waiting. The server is out of reach;");
            // closed and opened once more, it still waits
            phone.open("/week");
            awaits(phone, "Kept on this device, 1 waiting. The server is out of reach;");
            assertThat(logged(server)).isEmpty();

            server.startAgain();
            phone.open("/week");
            awaits(phone, "All sent ");
            assertThat(logged(server)).containsExactly(135);
            phone.open("/log");
            phone.script("dispatchEvent(new Event('online'))");
            phone.open("/week");
            assertThat(logged(server)).containsExactly(135);
        }
    }
}
