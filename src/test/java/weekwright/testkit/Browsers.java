package weekwright.testkit;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.logging.Level;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** The browsers of a run: one that a test has done with is emptied and kept for the next, until the run ends. */
final class Browsers {
    private static final String HOW =
            "no browser for this test: put chromium (or google-chrome) and chromedriver on the"
                    + " path, on Debian with: apt-get install chromium chromium-driver";
    private static final AtomicBoolean TOLD = new AtomicBoolean();
    private static final Deque<One> KEPT = new ArrayDeque<>();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> KEPT.forEach(Browsers::quit)));
    }

    /** @param asEver started as every other, so that the next test may have it */
    record One(ChromeDriver driver, Path profile, boolean asEver) {}

    private Browsers() {}

    /** One that knows nothing of any server; skips the test where there is none. */
    static One take() {
        synchronized (KEPT) {
            if (!KEPT.isEmpty()) {
                return KEPT.pop();
            }
        }
        return start();
    }

    /** One of its own with these options besides. */
    static One start(String... more) {
        Optional<File> browser = onPath("chromium", "chromium-browser", "google-chrome", "chrome");
        Optional<File> chromedriver = onPath("chromedriver");
        if (browser.isEmpty() || chromedriver.isEmpty()) {
            if ("required".equals(System.getProperty("browser"))) {
                throw new AssertionError(HOW);
            }
            // of a skipped test Maven tells that it was, and not why
            if (TOLD.compareAndSet(false, true)) {
                System.out.println("Tests in a browser are skipped: " + HOW);
            }
            Assumptions.abort(HOW);
        }
        try {
            Path profile = Files.createTempDirectory("weekwright-browser");
            ChromeDriver driver = new ChromeDriver(
                    new ChromeDriverService.Builder()
                            .usingDriverExecutable(chromedriver.get())
                            .usingAnyFreePort()
                            .build(),
                    options(browser.get(), profile).addArguments(more));
            // as long as the driver waits for a page: the rules of a large one take their time on a busy machine
            driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
            return new One(driver, profile, more.length == 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ChromeOptions options(File browser, Path profile) {
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(browser);
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-gpu-rasterization",
                "--disable-software-rasterizer",
                "--disable-breakpad",
                "--disable-crash-reporter",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-dev-shm-usage",
                "--hide-scrollbars",
                "--host-resolver-rules=MAP *.example 127.0.0.1",
                "--user-data-dir=" + profile);
        options.setCapability("goog:loggingPrefs", logs);
        return options;
    }

    private static Optional<File> onPath(String... names) {
        for (String folder : System.getenv("PATH").split(File.pathSeparator)) {
            for (String name : names) {
                File file = new File(folder, name);
                if (file.canExecute()) {
                    return Optional.of(file);
                }
            }
        }
        return Optional.empty();
    }

    /**
     * A new window takes the place of those that were opened, so that nothing is left of their device, their scripts and what they
     * may do; with these origins' pages go all that they stored.
     */
    static void giveBack(One one, Iterable<String> origins) {
        if (!one.asEver()) {
            quit(one);
            return;
        }
        try {
            ChromeDriver driver = one.driver();
            List<String> before = List.copyOf(driver.getWindowHandles());
            String window = driver.switchTo().newWindow(WindowType.TAB).getWindowHandle();
            for (String old : before) {
                driver.switchTo().window(old).close();
            }
            driver.switchTo().window(window);
            driver.executeCdpCommand("Network.clearBrowserCookies", Map.of());
            driver.executeCdpCommand("Network.clearBrowserCache", Map.of());
            for (String origin : origins) {
                driver.executeCdpCommand("Storage.clearDataForOrigin", Map.of("origin", origin, "storageTypes", "all"));
            }
            driver.manage().logs().get(LogType.BROWSER);
            synchronized (KEPT) {
                KEPT.push(one);
            }
        } catch (WebDriverException e) {
            quit(one);
        }
    }

    private static void quit(One one) {
        one.driver().quit();
        try {
            for (Path file : NewStore.deepestFirst(one.profile())) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
