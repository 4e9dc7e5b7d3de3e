package weekwright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.openqa.selenium.By;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real browser before a server. Where no Chromium or no driver is found on the path the test is skipped with words that
 * say how to get them; with {@code -Dbrowser=required} it fails instead.
 */
public final class BrowserFixture implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Duration AGAIN = Duration.ofMillis(50);

    private final ChromeDriver driver;
    private final Browsers.One browser;
    private final Set<String> origins = new HashSet<>();
    private String origin;
    private boolean dark;
    private int phoneWidth;

    private BrowserFixture(Browsers.One browser, String origin, String crew) {
        this.browser = browser;
        this.origin = origin;
        driver = browser.driver();
        size(1280, 900);
        choose(crew);
    }

    /** A browser at which this person of the crew was chosen. */
    public static BrowserFixture at(ServerFixture server, String crew) {
        return at(server.origin(), crew);
    }

    /** As above, for whom the server has this name: in the workshop's network, without TLS. */
    public static BrowserFixture at(ServerFixture server, String name, String crew) {
        return at("http://" + name + ":" + server.port(), crew);
    }

    private static BrowserFixture at(String origin, String crew) {
        return new BrowserFixture(Browsers.take(), origin, crew);
    }

    /** As above under TLS, with trust in this one certificate that nobody else vouches for. */
    public static BrowserFixture underTls(ServerFixture server, String name, OwnCertificate certificate, String crew) {
        return new BrowserFixture(
                Browsers.start("--ignore-certificate-errors-spki-list=" + certificate.fingerprint()),
                "https://" + name + ":" + server.port(),
                crew);
    }

    private void choose(String crew) {
        origins.add(origin);
        open("/account");
        boolean tls = origin.startsWith("https:");
        driver.manage()
                .addCookie(new Cookie.Builder((tls ? "__Host-" : "") + "who", crew)
                        .path("/")
                        .isSecure(tls)
                        .build());
    }

    /** The same browser before another server; what it stored for another port stays with that one. */
    public void moveTo(ServerFixture server, String crew) {
        moveTo(server.origin(), crew);
    }

    /** As above, for whom the server has this name; the browser was opened with it. */
    public void moveTo(ServerFixture server, String name, String crew) {
        moveTo("http://" + name + ":" + server.port(), crew);
    }

    private void moveTo(String to, String crew) {
        origin = to;
        choose(crew);
        complaints();
    }

    public WebDriver driver() {
        return driver;
    }

    public void size(int width, int height) {
        driver.manage().window().setSize(new Dimension(width, height));
    }

    /** Opens a page and waits until it is there with all that it is drawn with; fails after a minute. */
    public void open(String path) {
        leaving(() -> driver.get(origin + path));
    }

    /**
     * Does what leads to another page, and waits until that is there with all that it is drawn with; fails after a minute. The
     * document is marked rather than asked after: the driver, busy, has called a page open while the one before still stood, and
     * what it says of a thing whose page is just going has no one name.
     */
    public void leaving(Runnable act) {
        driver.executeScript("window.before = true");
        act.run();
        waiting()
                .ignoring(WebDriverException.class)
                .withMessage(() -> "no other page came after " + driver.getCurrentUrl() + ", which says: "
                        + driver.executeScript("return document.body.innerText"))
                .until(d -> Boolean.TRUE.equals(
                        driver.executeScript("return !window.before && document.readyState === 'complete'")));
    }

    private WebDriverWait waiting() {
        return new WebDriverWait(driver, PATIENCE, AGAIN);
    }

    /** Waits until something is so, over pages that come and go; fails after a minute. */
    public <T> T until(Function<WebDriver, T> so) {
        return waiting().ignoring(StaleElementReferenceException.class).until(so::apply);
    }

    /** Presses the button of a form and waits for the page that answers it; fails after a minute. */
    public void send(By button) {
        WebElement pressed = driver.findElement(button);
        // what lies behind the foot of a phone is scrolled free, as a person does
        driver.executeScript("arguments[0].scrollIntoView({block: 'center'})", pressed);
        leaving(pressed::click);
    }

    /** From the next page on {@link #rules} can be asked. */
    public void withRules() {
        onEveryPage("/axe.min.js", "/page-rules.js");
    }

    /** From the next page on {@link #sight} can be asked. */
    public void withSight() {
        onEveryPage("/page-sight.js");
    }

    /** From the next page on scripts and pictures come after it was painted in its letters: the order in which most can move. */
    public void withLateThings() {
        onEveryPage("/late-things.js");
    }

    /** The scripts come from the test's class path, past the content policy. */
    private void onEveryPage(String... scripts) {
        for (String name : scripts) {
            try (InputStream in = BrowserFixture.class.getResourceAsStream(name)) {
                driver.executeCdpCommand(
                        "Page.addScriptToEvaluateOnNewDocument",
                        Map.of("source", new String(in.readAllBytes(), StandardCharsets.UTF_8)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** What one of the functions of page-rules.js says of the page as it stands. */
    @SuppressWarnings("unchecked")
    public List<String> rules(String function) {
        return (List<String>) asked("pageRules." + function, "['the rules could not be tried: ' + failed]");
    }

    /** What one of the functions of page-sight.js says of the page as it was loaded. */
    public Object sight(String function) {
        return asked("pageSight." + function, "'it could not be seen: ' + failed");
    }

    private Object asked(String function, String failed) {
        return driver.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + " Promise.resolve().then(() => " + function + "()).then(done, (failed) => done(" + failed + "));");
    }

    /** Runs a script that returns something. */
    public Object script(String text, Object... arguments) {
        return driver.executeScript(text, arguments);
    }

    /** What the console has said since it was last asked: breaches of the content policy and errors of scripts. */
    public List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                .toList();
    }

    /** A paper of ISO 216 or of ANSI/ASME Y14.1, upright; in inches, as the browser wants it. */
    public enum Paper {
        A4(8.27, 11.69),
        LETTER(8.5, 11);

        private final double width;
        private final double height;

        Paper(double width, double height) {
            this.width = width;
            this.height = height;
        }
    }

    /** The page as it is printed, on A4. */
    public byte[] pdf() {
        return pdf(Paper.A4);
    }

    /** The page as it is printed. */
    public byte[] pdf(Paper paper) {
        Map<String, Object> answer = driver.executeCdpCommand(
                "Page.printToPDF",
                Map.of(
                        "paperWidth",
                        paper.width,
                        "paperHeight",
                        paper.height,
                        "preferCSSPageSize",
                        false,
                        "printBackground",
                        true));
        return Base64.getDecoder().decode((String) answer.get("data"));
    }

    /** The page as a picture, for a person to look at. */
    public void picture(Path file) {
        try {
            Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Sets the device's wish for dark pages and, where not 0, the width of a phone. */
    public void device(boolean dark, int phoneWidth) {
        if (this.dark != dark) {
            driver.executeCdpCommand(
                    "Emulation.setEmulatedMedia",
                    Map.of(
                            "features",
                            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
            this.dark = dark;
        }
        if (this.phoneWidth != phoneWidth) {
            if (phoneWidth > 0) {
                driver.executeCdpCommand(
                        "Emulation.setDeviceMetricsOverride",
                        Map.of("width", phoneWidth, "height", 844, "deviceScaleFactor", 1, "mobile", true));
            } else {
                driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
            }
            this.phoneWidth = phoneWidth;
        }
    }

    /** The processor as so many times slower, for scripts, styles and drawing; 1 as it is. */
    public void slowed(int times) {
        driver.executeCdpCommand("Emulation.setCPUThrottlingRate", Map.of("rate", times));
    }

    /** From the next page on nothing is taken from what earlier pages left, as on somebody's first visit. */
    public void withoutCache() {
        // else the browser goes on taking letters and scripts from what earlier pages left
        driver.executeCdpCommand("Network.enable", Map.of());
        driver.executeCdpCommand("Network.setCacheDisabled", Map.of("cacheDisabled", true));
    }

    /** From now on pages of this server find room for so many bytes on the device. */
    public void roomFor(ServerFixture server, long bytes) {
        driver.executeCdpCommand(
                "Storage.overrideQuotaForOrigin", Map.of("origin", server.origin(), "quotaSize", bytes));
    }

    /** What keeps the browser from offering to install the page as a program of its own; nothing where it does. */
    public List<?> whyNotInstalled() {
        return (List<?>) driver.executeCdpCommand("Page.getInstallabilityErrors", Map.of())
                .get("installabilityErrors");
    }

    /** From the next page on no script runs, as where somebody has switched them off. */
    public void withoutScript() {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    }

    @Override
    public void close() {
        Browsers.giveBack(browser, origins);
    }
}
